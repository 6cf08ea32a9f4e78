import type { CornerModel } from '../corner/corner-model.ts'
import { seededRandom } from '../numerics/random.ts'
import type { EvenRun } from './evenly.ts'
import { HIGHEST_CUTOFF, lowPass } from './low-pass.ts'
import { StepScan } from './step-scan.ts'

/** Where a run itself shows pad and stop meet, or why it does not show it. */
export type SeenEngagement =
  | {
      readonly seen: true
      /** Wheel position, m from ride height, and the half-width of the 95 % interval about it, m. */
      readonly wheel: number
      readonly within: number
      /** Upward strokes through that place that it was told from. */
      readonly strokes: number
    }
  | {
      readonly seen: false
      readonly why: 'no travel' | 'too few rows a second' | 'too few strokes' | 'nothing stands out'
    }

/** What is faster is sensor noise rather than a wheel, Hz. It blurs a place by what a wheel does in 1/(2π·60) s, at about 1 m/s, m. */
const CUTOFF = 60
const BLUR = 3e-3
/** Slower strokes tell little, m/s. */
const SLOWEST = 0.15
/** Places tried, m apart; and how far from steel at either end of the travel, m: more than a fit reaches. */
const APART = 2e-3
const FROM_ENDS = 3.2e-2
/** A step is as deep as it goes below the mean of what is this far on either side, m: springs, dampers and the road change slower than that. */
const BESIDE = 1.6e-2
/** Strokes through a place, and places to compare it with, below which nothing is said; and most that are looked at, to save time. */
const FEWEST = 8
const FEWEST_PLACES = 15
const MOST = 8000
/**
 * What stands out: so many standard errors below what is beside it, so many times as deep as the deepest elsewhere, and found again
 * within `AGAIN` m in so much of the samples drawn anew from the strokes. Found by trial on rides of the demo cars over five minutes of
 * rough ground, with and without a stop in reach: what was no stop came to 4.
 */
const DEEP = 5
const BEYOND_OTHERS = 1.4
const AGAIN = 1e-2
const FOUND_AGAIN = 0.8
const DRAWN = 100

/** Upward strokes of the wheel as [first, last] places in a list that hold more than SLOWEST, in rising order. */
function strokesIn(values: Float64Array, step: number): [number, number][] {
  const strokes: [number, number][] = []
  const rise = SLOWEST * 2 * step
  for (let i = 1, from = -1; i < values.length; i += 1) {
    const rises = i < values.length - 1 && values[i + 1]! - values[i - 1]! > rise
    if (rises && from < 0) from = i
    if (!rises && from >= 0) {
      strokes.push([from, i - 1])
      from = -1
    }
  }
  return strokes
}

/** How deep each place is below those beside it, in standard errors, negative; NaN where it cannot be said. */
function depths(scores: Float64Array): Float64Array {
  const away = Math.round(BESIDE / APART)
  return scores.map((score, i) => {
    const [below, above] = [scores[i - away] ?? Number.NaN, scores[i + away] ?? Number.NaN]
    return score - (below + above) / 2
  })
}

const deepest = (list: Float64Array): number =>
  list.reduce((best, value, i) => (value < (best < 0 ? Infinity : list[best]!) ? i : best), -1)

/**
 * Where a recorded wheel meets a stop, told from the wheel alone: pad and stop that meet push back at once, so that on its way up the wheel
 * speeds up less from one place on, in stroke after stroke. Each stroke is fitted about each place with what changes smoothly in time
 * taken away (a constant, a line and a parabola), and the step left over is summed with its standard error (W. G. Cochran's sum over its own
 * squares). Springs, dampers and the road change smoothly; a stop without a charge begins smoothly too, and does not show. Derived here.
 * @param run wheel travel from ride height, m, as it was recorded: not filtered
 */
export function seeEngagement(model: Pick<CornerModel, 'droop' | 'bump'>, run: EvenRun): SeenEngagement {
  const { step } = run
  if (CUTOFF * step > HIGHEST_CUTOFF) return { seen: false, why: 'too few rows a second' }
  const smooth = run.stretches.map(({ values }) => lowPass(values, CUTOFF, step))
  const strokes = smooth.flatMap(values => strokesIn(values, step).map(([from, to]) => ({ values, from, to })))
  const places = Math.floor((model.bump - model.droop - 2 * FROM_ENDS) / APART) + 1
  if (places < FEWEST_PLACES) return { seen: false, why: 'no travel' }
  const scan = new StepScan(model.droop + FROM_ENDS, APART, places, step)
  const every = Math.max(1, Math.ceil(strokes.length / MOST))
  for (const [i, { values, from, to }] of strokes.entries()) if (i % every === 0) scan.stroke(values, from, to)
  const found = depths(scan.scores(FEWEST))
  const best = deepest(found)
  const away = Math.round((1.5 * BESIDE) / APART)
  const others = found.filter((depth, i) => !Number.isNaN(depth) && Math.abs(i - best) > away)
  if (best < 0 || others.length < FEWEST_PLACES) return { seen: false, why: 'too few strokes' }
  if (found[best]! > -DEEP || found[best]! > BEYOND_OTHERS * Math.min(0, ...others))
    return { seen: false, why: 'nothing stands out' }
  const again = Float64Array.from(drawnAnew(scan))
    .sort()
    .map(place => Math.abs(place - best) * APART)
  if (again.filter(off => off <= AGAIN).length < FOUND_AGAIN * DRAWN) return { seen: false, why: 'nothing stands out' }
  const off = again.sort()[Math.ceil(0.95 * again.length) - 1]!
  return {
    seen: true,
    wheel: model.droop + FROM_ENDS + best * APART,
    within: Math.min(off, AGAIN) + BLUR + APART,
    strokes: scan.strokesAt(best),
  }
}

/** The place found from strokes drawn anew from those there are, as often as DRAWN (B. Efron's bootstrap), the same way each time. */
function drawnAnew(scan: StepScan): number[] {
  const random = seededRandom(1)
  return Array.from({ length: DRAWN }, () => {
    const times = new Float64Array(scan.strokes)
    for (let i = 0; i < scan.strokes; i += 1) times[Math.floor(random() * scan.strokes)]! += 1
    return deepest(depths(scan.scores(FEWEST, times)))
  })
}
