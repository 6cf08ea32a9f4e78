import type { TargetId } from '../../../core/changes/targets.ts'
import type { Targets } from '../../../core/plan/schema.ts'
import { INCH, PSI } from '../../../core/units/constants.ts'
import { formatMeasure } from '../../../core/units/format.ts'
import type { Quantity, System } from '../../../core/units/quantity.ts'
import { NumberField } from '../../fields/NumberField.tsx'
import { edit } from '../../state/edit.ts'
import type { Store } from '../../state/store.ts'
import { useStore } from '../../window-context.ts'

interface TargetRow {
  readonly id: TargetId
  readonly label: string
  readonly quantity: Quantity
  /** Where it begins when it is taken up, the far end of its slider, and a step of it, SI. */
  readonly usual: number
  readonly most: number
  readonly step: Readonly<Record<System, number>>
}

const TAPE = { inch: INCH / 8, metric: 2e-3 } as const

const ROWS: readonly TargetRow[] = [
  {
    id: 'coiloverShare',
    label: 'Share on the coilover, least',
    quantity: 'share',
    usual: 0.45,
    most: 1,
    step: { inch: 0.01, metric: 0.01 },
  },
  {
    id: 'coiloverTravel',
    label: 'Travel on the coilover, least',
    quantity: 'length',
    usual: 4 * INCH,
    most: 16 * INCH,
    step: TAPE,
  },
  {
    id: 'landingDrop',
    label: 'Landing height, least',
    quantity: 'length',
    usual: 12 * INCH,
    most: 72 * INCH,
    step: { inch: INCH / 2, metric: 1e-2 },
  },
  {
    id: 'shockLeft',
    label: 'Shock shaft left, least',
    quantity: 'length',
    usual: INCH / 2,
    most: 4 * INCH,
    step: { inch: INCH / 16, metric: 1e-3 },
  },
  {
    id: 'stopPressure',
    label: 'Pressure in the stop, most',
    quantity: 'pressure',
    usual: 1500 * PSI,
    most: 3000 * PSI,
    step: { inch: 10 * PSI, metric: 1e5 },
  },
]

/** Sets one target of the plan, or takes it out. Steps of one drag share a gesture. */
export function setTarget(store: Store, id: TargetId, value: number | null, gesture: string | null = null) {
  const row = ROWS.find(each => each.id === id)!
  const { units } = store.read().plan
  const label =
    value === null
      ? `target ${row.label.toLowerCase()} taken out`
      : `target ${row.label.toLowerCase()} ${formatMeasure(value, row.quantity, units, { unit: true })}`
  return edit(
    store,
    label,
    plan => {
      const targets = { ...plan.targets }
      if (value === null) delete targets[id]
      else targets[id] = value
      if (Object.keys(targets).length === 0) delete plan.targets
      else plan.targets = targets
    },
    gesture,
  )
}

/** What is aimed at: taken up or left out, by a slider or to the sixteenth in a field. */
export function TargetFields({ targets, usual, system }: { targets: Targets; usual: boolean; system: System }) {
  const store = useStore()
  return (
    <section className="targets" aria-labelledby="targets-title">
      <h3 id="targets-title">Aimed at</h3>
      {usual ? <p>The plan names no targets: the usual share is aimed at. Set your own.</p> : null}
      {ROWS.map(({ id, label, quantity, usual: first, most, step }) => {
        const value = targets[id]
        return (
          <div key={id} className="target">
            <label className="aimed">
              <input
                type="checkbox"
                checked={value !== undefined}
                onChange={event => setTarget(store, id, event.currentTarget.checked ? first : null)}
              />
              {label}
            </label>
            {value === undefined ? null : (
              <>
                <input
                  type="range"
                  aria-label={label}
                  min={0}
                  max={Math.max(most, value)}
                  step={step[system]}
                  value={value}
                  aria-valuetext={formatMeasure(value, quantity, system, { unit: true })}
                  onChange={event => setTarget(store, id, event.currentTarget.valueAsNumber, `target-${id}`)}
                />
                <NumberField
                  label="exactly"
                  value={value}
                  quantity={quantity}
                  system={system}
                  refuses={wanted => (wanted < 0 ? 'Less than nothing. Enter 0 or more.' : null)}
                  onChange={wanted => setTarget(store, id, wanted)}
                />
              </>
            )}
          </div>
        )
      })}
    </section>
  )
}
