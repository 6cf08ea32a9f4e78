import type { RunFigures } from '../../../core/runs/figures.ts'
import { formatMeasure } from '../../../core/units/format.ts'
import type { System } from '../../../core/units/quantity.ts'
import { onTape } from '../../charts/text/length-spans.ts'

interface Props {
  readonly figures: RunFigures
  /** Static position and full bump by the plan, m. */
  readonly rest: number
  readonly bump: number
  readonly system: System
  /** Puts what the run asked of the wheel among the demands of the plan, m. */
  readonly onDemand: (amplitude: number) => void
}

/** A wheel at full bump may have been asked for more, m: a tape's sixteenth. */
const AT_BUMP = 1.5e-3

/** What of a run may go into the plan, and what it cannot tell. */
export function NotTold({ figures, rest, bump, system, onDemand }: Props) {
  const amplitude = figures.wheelMax - rest
  const length = formatMeasure(onTape(amplitude, system), 'length', system, {
    unit: true,
    digits: system === 'metric' ? 0 : undefined,
  })
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls in a small window must scroll by the keys as well
    <section className="not-told" aria-label="What the run tells, and what it cannot" tabIndex={0}>
      <h3>What it asked of the wheel</h3>
      <p>
        The wheel was sent {length} above where it rests
        {figures.wheelMax >= bump - AT_BUMP ? ', and would have gone further had it not met full bump.' : '.'}{' '}
        {amplitude > 0 ? (
          <button type="button" className="step" onClick={() => onDemand(amplitude)}>
            Count it among the demands
          </button>
        ) : null}
      </p>
      <h3>What it cannot tell</h3>
      <ul className="plain-list">
        <li>The forces in springs, stop and dampers: it knows positions only.</li>
        <li>
          The road: many roads move a wheel alike, and the body moved as well. It cannot be driven again as a terrain.
        </li>
        <li>Whether a slow stop had come all the way out before the next hit.</li>
        <li>Whether the tire was on the ground.</li>
        <li>The other side of the axle, where one sensor stands for both.</li>
      </ul>
    </section>
  )
}
