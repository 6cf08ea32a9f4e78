import type { CornerModel } from '../corner/corner-model.ts'
import type { EvenRun } from './evenly.ts'

/** What a travel sensor does not tell, however well it is laid over a plan. */
export const NOT_TOLD: readonly string[] = [
  'The forces: of springs, dampers and stop a run shows only what they let the wheel do.',
  'The road: the same wheel travel comes of many roads at many speeds, so a recorded run is not driven again as terrain. What it may set is how much travel it asked for.',
  'Whether a slow stop had come all the way out: it is taken to come out as the plan’s own stop does.',
  'The other wheel of a solid axle, where one shaft is taken as both.',
]

/** How much wheel travel above static a run asked for: the size of a terrain load. */
export interface RunDemand {
  /** m above static; the wheel was higher for a hundredth of the time. */
  readonly amplitude: number
  /** The stop was in by then, so that without it the wheel would have gone further. */
  readonly atLeast: boolean
}

/** Of the time, the share in which it asked for more. */
const HIGHER = 0.01
/** Places the travel is told apart in, m. */
const FINE = 5e-4

/** The travel above static that a run asked for all but a hundredth of the time; null when it never came above static. @param rest static position, m */
export function demandOfRun(model: CornerModel, rest: number, { stretches }: EvenRun): RunDemand | null {
  const counts = new Map<number, number>()
  let all = 0
  for (const { values } of stretches)
    for (const wheel of values) {
      all += 1
      if (wheel <= rest) continue
      const place = Math.floor((wheel - rest) / FINE)
      counts.set(place, (counts.get(place) ?? 0) + 1)
    }
  let above = 0
  for (const [place, count] of [...counts].sort((a, b) => b[0] - a[0])) {
    above += count
    if (above < HIGHER * all) continue
    const amplitude = (place + 0.5) * FINE
    return { amplitude, atLeast: model.engagement !== null && rest + amplitude > model.engagement }
  }
  return null
}
