import type { CornerModel } from '../corner/corner-model.ts'
import { LEFT_BUMP, Meetings } from '../ride/meetings.ts'
import { HISTOGRAM_BARS } from '../ride/results.ts'
import { TimeIn } from '../ride/time-in.ts'
import type { EvenRun } from './evenly.ts'
import { Stillness } from './still.ts'
import { type RunHit, StopInRun } from './stop-in-run.ts'
import { movementAt } from './wheel-travel.ts'

/** A place of the ledger: how far a load takes the wheel. */
export interface LoadPlace {
  readonly id: string
  readonly label: string
  /** m from ride height. */
  readonly wheel: number
}

/** What one corner did in a recorded run. SI; wheel positions in m from ride height. */
export interface RunFigures {
  /** Recorded time without gaps, s. */
  readonly duration: number
  /** Shares of that time: the zones by wheel position, `onStop` while pad and stop touch. */
  readonly share: {
    readonly droop: number
    readonly coilover: number
    readonly engagement: number
    readonly onStop: number
  }
  /** Counted as in a ride: see core/ride/meetings.ts. */
  readonly hits: number
  readonly bottoms: number
  readonly wheelMax: number
  readonly wheelMin: number
  readonly wheelMean: number
  /** Fastest meeting, along the stop, m/s. */
  readonly stopSpeedMax: number
  /** Share of the time in each bar, from full droop to full bump; what lies past the ends is in the end bars. */
  readonly histogram: readonly number[]
  /** Share of the time at each speed of the shock shaft, from −3 m/s up in 60 bars, faster in the end bars; closing is positive. */
  readonly shaftSpeeds: readonly number[]
  /** Share of the time past where each load takes the wheel. */
  readonly beyond: readonly (LoadPlace & { readonly share: number })[]
  /** Wheel position of the longest time it stood still, not hanging at full droop, m; null when it never did. */
  readonly still: number | null
  /** Each meeting of pad and stop. */
  readonly events: readonly RunHit[]
}

/** The shaft speeds told apart, m/s; faster is in the end bars. */
export const SHAFT_SPEED_MOST = 3
const SHAFT_SPEED_BARS = 60

/**
 * What a corner did in a run, between rows taken as going straight.
 * @param run wheel travel from ride height, m, at even times; @param places of the axle's ledger
 */
export function runFigures(model: CornerModel, run: EvenRun, places: readonly LoadPlace[]): RunFigures {
  const { droop, bump, engagement } = model
  const { step, stretches } = run
  const width = (bump - droop) / HISTOGRAM_BARS
  const zones = new TimeIn([0, Math.max(0, engagement ?? Infinity)])
  const bars = new TimeIn(Array.from({ length: HISTOGRAM_BARS - 1 }, (_, i) => droop + width * (i + 1)))
  const beyond = places.map(({ wheel }) => new TimeIn([wheel]))
  const stop = new StopInRun(model, step)
  const bottoms = new Meetings(LEFT_BUMP)
  const still = new Stillness(step, droop)
  const shaftSpeeds = new Float64Array(SHAFT_SPEED_BARS)
  const shaftAt = movementAt(model, 'shock')
  let [most, least, sum, count, steps] = [-Infinity, Infinity, 0, 0, 0]
  for (const { start, values } of stretches) {
    stop.begin(values[0]!)
    bottoms.begin(values[0]! >= bump)
    still.begin()
    let shaft = shaftAt(values[0]!)
    for (let i = 0; i < values.length; i += 1) {
      const wheel = values[i]!
      if (wheel > most) most = wheel
      if (wheel < least) least = wheel
      sum += wheel
      count += 1
      still.take(wheel)
      if (i === 0) continue
      const before = values[i - 1]!
      zones.pass(before, wheel, step)
      bars.pass(before, wheel, step)
      for (const each of beyond) each.pass(before, wheel, step)
      stop.take(start + i * step, wheel)
      bottoms.apart(bump - wheel)
      if (wheel >= bump) bottoms.meet()
      const shaftNow = shaftAt(wheel)
      const bar = Math.floor(((shaftNow - shaft) / step / SHAFT_SPEED_MOST + 1) * (SHAFT_SPEED_BARS / 2))
      shaftSpeeds[Math.min(SHAFT_SPEED_BARS - 1, Math.max(0, bar))]! += 1
      shaft = shaftNow
      steps += 1
    }
    stop.end()
  }
  const duration = steps * step
  const [inDroop, inCoilover, inEngagement] = Array.from(zones.seconds, seconds => seconds / duration)
  return {
    duration,
    share: { droop: inDroop!, coilover: inCoilover!, engagement: inEngagement!, onStop: stop.touched / duration },
    hits: stop.hits.length,
    bottoms: bottoms.count,
    wheelMax: most,
    wheelMin: least,
    wheelMean: sum / count,
    stopSpeedMax: stop.hits.reduce((most, { speed }) => Math.max(most, speed), 0),
    histogram: Array.from(bars.seconds, seconds => seconds / duration),
    shaftSpeeds: Array.from(shaftSpeeds, each => each / steps),
    beyond: places.map((place, i) => ({ ...place, share: beyond[i]!.seconds[1]! / duration })),
    still: still.wheel,
    events: stop.hits,
  }
}
