import { formatMeasure } from '../../../core/units/format.ts'
import { likelyEntry } from '../../../core/units/parse.ts'
import { HowPicture } from '../../charts/measuring/HowPicture.tsx'
import { type FieldSpec, plainName } from '../../fields/field-spec.ts'
import { specOf } from '../../fields/field-table.ts'
import { copyTo, elsewhere } from '../../state/copying.ts'
import { markAssumed } from '../../state/edit.ts'
import { assumedList, isAssumed } from '../../state/place.ts'
import { placeOf, shownAxle } from '../../state/selectors.ts'
import { useSelect, useStore } from '../../window-context.ts'

const demanded = /^(loads|terrains|targets)\./

/** How the field in use is measured: always in the same place, so that nothing jumps. */
export function HowToMeasure() {
  const field = useSelect(state => {
    const { field } = state.view
    // What is not in the plan any more is not measured.
    return field?.startsWith('corner.stop.') && shownAxle(state).axle.corner.stop === null ? null : field
  })
  const spec = field === null ? null : specOf(field)
  const system = useSelect(state => state.plan.units)
  return (
    <section className="how" id="how" aria-label="How to measure">
      {field === null || spec === null ? (
        <div>
          <h4>How to measure</h4>
          <p>Pick a field above: how to take it stands here.</p>
          <p>Enter {likelyEntry('length', system)}, as your tape has it.</p>
        </div>
      ) : (
        <>
          <div>
            <h4>
              {demanded.test(field) ? 'About' : 'How to measure'} {spec.named}
            </h4>
            <p>{spec.how}</p>
            {spec.more === undefined ? null : <p className="more">{spec.more}</p>}
          </div>
          <HowPicture field={field} />
          <Marks field={field} spec={spec} />
        </>
      )}
    </section>
  )
}

function Marks({ field, spec }: { field: string; spec: FieldSpec }) {
  const store = useStore()
  const markable = useSelect(state => assumedList(state.plan, placeOf(state, field)) !== null)
  const assumed = useSelect(state => isAssumed(state.plan, placeOf(state, field)))
  const system = useSelect(state => state.plan.units)
  const others = useSelect(state => elsewhere(state, field), sameList)
  const name = plainName(spec)
  return (
    <p className="steps">
      {markable ? (
        <button type="button" className="step" onClick={() => markAssumed(store, name, field, !assumed)}>
          {assumed ? 'Mark as measured' : 'Mark as assumed'}
        </button>
      ) : null}
      {others.slice(0, 1).map(({ setup, name: called, value }) => (
        <button
          key={setup}
          type="button"
          className="step"
          title={`${called} has ${said(value, spec, system)}`}
          onClick={() => copyTo(store, name, field, setup)}
        >
          {called} has {said(value, spec, system)}: use this there
        </button>
      ))}
    </p>
  )
}

const said = (value: unknown, { quantity }: FieldSpec, system: 'inch' | 'metric'): string =>
  typeof value === 'number' ? formatMeasure(value, quantity, system, { unit: true }) : 'none'

const sameList = (a: readonly object[], b: readonly object[]): boolean =>
  a.length === b.length && JSON.stringify(a) === JSON.stringify(b)
