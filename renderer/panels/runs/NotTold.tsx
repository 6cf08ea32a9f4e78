import { NOT_TOLD } from '../../../core/runs/demand.ts'
import { formatMeasure } from '../../../core/units/format.ts'
import type { System } from '../../../core/units/quantity.ts'
import { onTape } from '../../charts/text/length-spans.ts'
import type { LaidWheel, SeenBeside } from '../../workers/run-messages.ts'
import { unbroken } from '../findings/unbroken.ts'

interface Props {
  readonly demand: LaidWheel['demand']
  /** Of pad and stop meeting; null while it is looked for. */
  readonly seen: SeenBeside | null
  readonly system: System
  /** Puts what the run asked of the wheel among the demands of the plan, m. */
  readonly onDemand: (amplitude: number) => void
}

/** What the run itself shows of engagement, what of it may go into the plan, and what it cannot tell. */
export const NotTold = ({ demand, seen, system, onDemand }: Props) => (
  // biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls in a small window must scroll by the keys as well
  <section className="not-told" aria-label="What the run tells, and what it cannot" tabIndex={0}>
    <h3>Engagement in the data</h3>
    <p>{seen === null ? 'Being looked for.' : unbroken(seen.words)}</p>
    <h3>What it asked of the wheel</h3>
    {demand === null ? (
      <p>The wheel never came above where it rests.</p>
    ) : (
      <p>
        All but a hundredth of the time it took no more than {demandWords(demand.amplitude, system)} above static
        {demand.atLeast ? '; the stop was in by then, so the ground asked for more.' : '.'}{' '}
        <button type="button" className="step" onClick={() => onDemand(demand.amplitude)}>
          Count it among the demands
        </button>
      </p>
    )}
    <h3>What it cannot tell</h3>
    <ul className="plain-list">
      {NOT_TOLD.map(says => (
        <li key={says}>{says}</li>
      ))}
    </ul>
  </section>
)

const demandWords = (amplitude: number, system: System): string =>
  unbroken(
    formatMeasure(onTape(amplitude, system), 'length', system, {
      unit: true,
      digits: system === 'metric' ? 0 : undefined,
    }),
  )
