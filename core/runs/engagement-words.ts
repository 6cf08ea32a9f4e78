import type { Say } from '../units/saying.ts'
import type { RunFinding } from './findings.ts'
import type { SeenEngagement } from './seen-engagement.ts'

const WHY: Readonly<Record<(SeenEngagement & { seen: false })['why'], string>> = {
  'no travel': 'there is too little travel to look in',
  'too few rows a second': 'that takes 200 rows a second or more',
  'too few strokes': 'too few strokes go through enough of the travel',
  'nothing stands out':
    'no place stands out from the road and the sensor’s noise. A stop without a charge begins too softly to show, and one that is hardly met is not met often enough',
}

/** What a run tells of engagement beside what the plan computes, in a sentence or two; that it tells nothing is said too. */
export function engagementWords(seen: SeenEngagement, computed: number | null, say: Say): string {
  const plan =
    computed === null
      ? 'The plan has no stop in the travel.'
      : `The plan computes ${say(computed, 'length', { sign: true })}.`
  if (!seen.seen) return `Where pad and stop meet cannot be told from this run: ${WHY[seen.why]}. ${plan}`
  const { wheel, within, strokes } = seen
  return `The run itself shows pad and stop meet at ${say(wheel, 'length', { sign: true })} of wheel travel, give or take ${say(within, 'length')} (95 %, from ${strokes} strokes). ${plan}`
}

/** Seen and computed engagement are this far apart before it is said, m, beyond what the run itself leaves open: a tape's reading at each end. */
export const ENGAGEMENT_OFF = 4e-3

/** That the run shows engagement elsewhere than the plan computes it; null where they agree, or it shows none. */
export function engagementFinding(seen: SeenEngagement, computed: number | null, say: Say): RunFinding | null {
  if (!seen.seen) return null
  const { wheel, within, strokes } = seen
  if (computed !== null && Math.abs(wheel - computed) <= within + ENGAGEMENT_OFF) return null
  const plan =
    computed === null ? 'the plan has no stop there' : `the plan computes ${say(computed, 'length', { sign: true })}`
  return {
    id: 'run-engagement-off',
    severity: 'caution',
    message: `The run shows pad and stop meet at ${say(wheel, 'length', { sign: true })} of wheel travel, give or take ${say(within, 'length')}; ${plan}.`,
    remedy:
      'Measure the gap at ride height again, and the sensor’s zero; a stop that does not come all the way out is met later.',
    values: { seen: wheel, within, strokes, ...(computed === null ? {} : { computed }) },
  }
}
