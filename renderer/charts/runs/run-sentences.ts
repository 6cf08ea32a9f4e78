import { formatMeasure } from '../../../core/units/format.ts'
import { shownShare } from '../terrain/shown-share.ts'
import { onTape, spokenPosition } from '../text/length-spans.ts'
import type { RunScene } from './run-scene.ts'

/** What each chart of a recorded run says, for someone who hears the page instead of seeing it. */

export function runTraceSentence({ view: { shown, system }, duration }: RunScene): string {
  const { laid, name } = shown
  if (laid === null) return 'Wheel position over time: not worked out yet.'
  const { wheelMin, wheelMax, share, hits, bottoms } = laid.figures
  const bottom = bottoms === 0 ? 'never bottoms' : bottoms === 1 ? 'bottoms once' : `bottoms ${bottoms} times`
  const position = (wheel: number): string => spokenPosition(onTape(wheel, system), system)
  return `Wheel position over ${duration.toFixed(1)} recorded seconds of ${name}: from ${position(wheelMin)} to ${position(wheelMax)}, ${shownShare(share.onStop)} of the time on the stop, ${hits} ${hits === 1 ? 'hit' : 'hits'}, ${bottom}.`
}

/** Shares of the time below which the shaft moves slower than so much, either way. */
export function speedSentence({ view: { shown, system }, shown: drawing }: RunScene): string {
  if (shown.laid === null || drawing === null) return 'Speed of the shock’s shaft over time: not worked out yet.'
  const slow = 0.1
  const share = drawing.speedBars
    .filter(({ from, to }) => from >= -slow - 1e-9 && to <= slow + 1e-9)
    .reduce((sum, bar) => sum + bar.share, 0)
  return `Speed of the shock’s shaft over the same time, and how much of the time at each speed: ${shownShare(share)} slower than ${formatMeasure(slow, 'shaftSpeed', system, { unit: true })} either way.`
}
