import { MOST_VALUES } from '../../../core/changes/ranges.ts'
import { type Kept, type Shelf, toHand, tubeOf } from '../../../core/changes/shelf.ts'
import { isHydraulic } from '../../../core/changes/stop-in-corner.ts'
import { CHARGES } from '../../../core/changes/usual-ranges.ts'
import type { ChosenRanges, Corner, Span } from '../../../core/plan/schema.ts'
import { formatMeasure } from '../../../core/units/format.ts'
import type { Quantity, System } from '../../../core/units/quantity.ts'
import { STEPS } from '../../../core/units/steps.ts'
import { NumberField } from '../../fields/NumberField.tsx'

interface Props {
  readonly corner: Corner
  readonly chosen: ChosenRanges
  /** Chosen by somebody and kept in the plan; else what is usual. */
  readonly kept: boolean
  readonly shelf: Shelf
  readonly system: System
  /** All there are, that of no change among them. */
  readonly combinations: number
  /** @param label what was chosen, in a few words; null goes back to what is usual */
  readonly onChange: (chosen: ChosenRanges | null, label: string) => void
}

type SpanKey = 'spacers' | 'charges' | 'shims' | 'oils'

/** Steps a range that is switched on begins with. */
const BEGIN_WITH = { spacers: 8, oils: 4, shims: 4 } as const

/** What may be changed: each range switched on or off, and set by hand. */
export function RangeFields({ corner, chosen, kept, shelf, system, combinations, onChange }: Props) {
  const steps = STEPS[system]
  const changed = Math.max(0, combinations - 1)
  const hydraulic = isHydraulic(corner)
  const begin = (step: number, count: number): Span => ({ from: step, to: count * step, step })
  const span = (key: SpanKey, title: string, quantity: Quantity, first: Span) => (
    <SpanFields
      title={title}
      quantity={quantity}
      system={system}
      span={chosen[key]}
      first={first}
      onChange={value => onChange({ ...chosen, [key]: value }, title.toLowerCase())}
    />
  )
  const parts = (key: 'stops' | 'springs', title: string) => (
    <ShelfChoice
      title={title}
      kept={toHand(shelf)[key]}
      ids={chosen[key]}
      onChange={ids => onChange({ ...chosen, [key]: [...ids] }, title.toLowerCase())}
    />
  )
  return (
    <section className="ranges" aria-labelledby="ranges-title">
      <h3 id="ranges-title">May be changed</h3>
      <p>
        {changed.toLocaleString('en-US')} {changed === 1 ? 'combination' : 'combinations'}.{' '}
        {kept ? (
          <>
            Your own ranges, kept in the plan.{' '}
            <button type="button" className="step" onClick={() => onChange(null, 'what is usual')}>
              Back to the usual
            </button>
          </>
        ) : (
          'The usual ranges. What you set here is kept in the plan.'
        )}
      </p>
      {hydraulic ? (
        <>
          {span('spacers', 'Spacer inside the stop', 'length', begin(steps.spacer, BEGIN_WITH.spacers))}
          {tubeOf(corner, shelf) !== null ? null : (
            <p>No tube on the shelf goes over its shaft, so no spacer is looked at: put one that does on the shelf.</p>
          )}
          {span('charges', 'Charge', 'pressure', {
            from: CHARGES[system].least,
            to: CHARGES[system].most,
            step: steps.charge,
          })}
          {span('oils', 'Oil left out', 'volume', begin(steps.oil, BEGIN_WITH.oils))}
        </>
      ) : (
        <p>{corner.stop === null ? 'There is no stop here' : 'An elastomer stop has no charge and takes no spacer'}.</p>
      )}
      {corner.stop === null ? null : span('shims', 'Shim on the pad', 'length', begin(steps.shim, BEGIN_WITH.shims))}
      <label className="aimed">
        <input
          type="checkbox"
          checked={chosen.preload}
          onChange={event => onChange({ ...chosen, preload: event.currentTarget.checked }, 'preload')}
        />
        Preload, to hold the ride height
      </label>
      {corner.stop === null ? null : parts('stops', 'Another stop')}
      {parts('springs', 'Another main spring')}
    </section>
  )
}

interface SpanProps {
  readonly title: string
  readonly quantity: Quantity
  readonly system: System
  readonly span: Span | null
  readonly first: Span
  readonly onChange: (span: Span | null) => void
}

function SpanFields({ title, quantity, system, span, first, onChange }: SpanProps) {
  const say = (value: number) => formatMeasure(value, quantity, system, { unit: true })
  return (
    <fieldset className="span">
      <label className="aimed">
        <input
          type="checkbox"
          checked={span !== null}
          onChange={event => onChange(event.currentTarget.checked ? first : null)}
        />
        {title}
      </label>
      {span === null ? null : (
        <>
          <NumberField
            label="from"
            value={span.from}
            quantity={quantity}
            system={system}
            refuses={from => (from < 0 || from > span.to ? `Enter 0 to ${say(span.to)}.` : null)}
            onChange={from => onChange({ ...span, from })}
          />
          <NumberField
            label="to"
            value={span.to}
            quantity={quantity}
            system={system}
            refuses={to => (to < span.from ? `Enter ${say(span.from)} or more.` : null)}
            onChange={to => onChange({ ...span, to })}
          />
          <NumberField
            label="in steps of"
            value={span.step}
            quantity={quantity}
            system={system}
            refuses={step =>
              step <= 0 || (span.to - span.from) / step > MOST_VALUES
                ? `A step of more than 0, and no more than ${MOST_VALUES} steps.`
                : null
            }
            onChange={step => onChange({ ...span, step })}
          />
        </>
      )}
    </fieldset>
  )
}

interface ChoiceProps {
  readonly title: string
  readonly kept: readonly Kept<unknown>[]
  readonly ids: readonly string[]
  readonly onChange: (ids: readonly string[]) => void
}

function ShelfChoice({ title, kept, ids, onChange }: ChoiceProps) {
  if (kept.length === 0) return <p>{title}: nothing on the shelf.</p>
  const chosen = kept.filter(({ id }) => ids.includes(id)).length
  return (
    <details className="shelf-choice">
      <summary>
        {title} {chosen === 0 ? '' : `(${chosen} of ${kept.length})`}
      </summary>
      {kept.map(({ id, name, generic }) => (
        <label key={id} className="aimed">
          <input
            type="checkbox"
            checked={ids.includes(id)}
            onChange={event => onChange(event.currentTarget.checked ? [...ids, id] : ids.filter(each => each !== id))}
          />
          {name} {generic ? <i className="as">generic, assumed</i> : null}
        </label>
      ))}
    </details>
  )
}
