import type { Kept, Shelf } from '../../../core/changes/shelf.ts'
import { isHydraulic } from '../../../core/changes/stop-in-corner.ts'
import type { Corner } from '../../../core/plan/schema.ts'
import { INCH, PSI } from '../../../core/units/constants.ts'
import { formatMeasure } from '../../../core/units/format.ts'
import type { Quantity, System } from '../../../core/units/quantity.ts'
import { NumberField } from './NumberField.tsx'
import { type Chosen, MOST_VALUES, type Span, STEPS } from './ranges-chosen.ts'

interface Props {
  readonly corner: Corner
  readonly chosen: Chosen
  readonly shelf: Shelf
  readonly system: System
  readonly combinations: number
  readonly onChange: (chosen: Chosen) => void
}

type SpanKey = 'spacers' | 'charges' | 'shims' | 'oils'

/** What may be changed: each range switched on or off, and set by hand. */
export function RangeFields({ corner, chosen, shelf, system, combinations, onChange }: Props) {
  const steps = STEPS[system]
  const hydraulic = isHydraulic(corner)
  const span = (key: SpanKey, title: string, quantity: Quantity, first: Span) => (
    <SpanFields
      title={title}
      quantity={quantity}
      system={system}
      span={chosen[key]}
      first={first}
      onChange={value => onChange({ ...chosen, [key]: value })}
    />
  )
  return (
    <section className="ranges" aria-labelledby="ranges-title">
      <h3 id="ranges-title">May be changed</h3>
      <p>{combinations.toLocaleString('en-US')} combinations.</p>
      {hydraulic ? (
        <>
          {span('spacers', 'Spacer inside the stop', 'length', { from: steps.spacer, to: INCH, step: steps.spacer })}
          {span('charges', 'Charge', 'pressure', { from: 100 * PSI, to: 300 * PSI, step: steps.charge })}
          {span('oils', 'Oil left out', 'volume', { from: steps.oil, to: 4 * steps.oil, step: steps.oil })}
        </>
      ) : (
        <p>{corner.stop === null ? 'There is no stop here' : 'An elastomer stop has no charge and takes no spacer'}.</p>
      )}
      {corner.stop === null
        ? null
        : span('shims', 'Shim on the pad', 'length', { from: steps.shim, to: 4 * steps.shim, step: steps.shim })}
      <label className="aimed">
        <input
          type="checkbox"
          checked={chosen.preload}
          onChange={event => onChange({ ...chosen, preload: event.currentTarget.checked })}
        />
        Preload, to hold the ride height
      </label>
      {corner.stop === null ? null : (
        <ShelfChoice
          title="Another stop"
          kept={shelf.stops}
          ids={chosen.stops}
          onChange={stops => onChange({ ...chosen, stops })}
        />
      )}
      <ShelfChoice
        title="Another main spring"
        kept={shelf.springs}
        ids={chosen.springs}
        onChange={springs => onChange({ ...chosen, springs })}
      />
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
  return (
    <details className="shelf-choice">
      <summary>
        {title} {ids.length === 0 ? '' : `(${ids.length})`}
      </summary>
      {kept.map(({ id, name, generic }) => (
        <label key={id} className="aimed">
          <input
            type="checkbox"
            checked={ids.includes(id)}
            onChange={event => onChange(event.currentTarget.checked ? [...ids, id] : ids.filter(each => each !== id))}
          />
          {name} {generic ? <i className="as">generic</i> : null}
        </label>
      ))}
    </details>
  )
}
