import type { CornerModel } from '../corner/corner-model.ts'
import { HISTOGRAM_BARS } from '../ride/results.ts'
import { TimeIn } from '../ride/time-in.ts'
import type { EvenRun } from './evenly.ts'

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
  /** Shares of that time, by wheel position; `onStop` from engagement up. */
  readonly share: {
    readonly droop: number
    readonly coilover: number
    readonly engagement: number
    readonly onStop: number
  }
  /** Meetings of pad and stop by wheel position: whether a slow stop was still in cannot be seen. */
  readonly hits: number
  /** Arrivals at full bump; bounces there of less than 5 mm are one with what they follow. */
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
  /** Wheel position of the longest time it kept still, m; null when it never did. */
  readonly still: number | null
}

/** The shaft speeds told apart, m/s; faster is in the end bars. */
const SHAFT_SPEED_MOST = 3
const SHAFT_SPEED_BARS = 60

/** Pad and stop have parted when the wheel is this far below engagement: less than that is the sensor's noise, m. */
const PARTED = 1e-3
/** The wheel is at full bump when it is this near, m: a tape's sixteenth. */
const AT_BUMP = 1.5e-3
/** And away from it again from here, m. */
const AWAY = 5e-3
/** A car keeps still when its wheels move less than this about where they were, m, for at least this long, s. */
const STILL = { within: 2e-3, seconds: 1 } as const

/** Keeps count of how often a place is passed upwards; counted again once it was left by so much. */
class Passings {
  count = 0
  private inside = false

  constructor(
    private readonly place: number,
    private readonly left: number,
  ) {}

  /** True when this is a new meeting. */
  pass(wheel: number): boolean {
    if (this.inside) {
      if (wheel < this.place - this.left) this.inside = false
      return false
    }
    if (wheel < this.place) return false
    this.inside = true
    this.count += 1
    return true
  }

  /** A stretch begins: what happened before is not known. */
  begin(wheel: number): void {
    this.inside = wheel >= this.place
  }
}

/** Longest time the wheel stayed in place. */
class Stillness {
  longest = 0
  wheel: number | null = null
  private low = 0
  private high = 0
  private sum = 0
  private count = 0

  constructor(private readonly step: number) {}

  begin(): void {
    this.count = 0
  }

  take(wheel: number): void {
    const [low, high] = this.count === 0 ? [wheel, wheel] : [Math.min(this.low, wheel), Math.max(this.high, wheel)]
    if (high - low > 2 * STILL.within) {
      this.begin()
      this.take(wheel)
      return
    }
    this.low = low
    this.high = high
    this.sum = this.count === 0 ? wheel : this.sum + wheel
    this.count += 1
    const seconds = (this.count - 1) * this.step
    if (seconds < STILL.seconds || seconds <= this.longest) return
    this.longest = seconds
    this.wheel = this.sum / this.count
  }
}

/**
 * What a corner did in a run, between rows taken as going straight.
 * @param run wheel travel from ride height, m, at even times; @param places of the axle's ledger
 */
export function runFigures(model: CornerModel, run: EvenRun, places: readonly LoadPlace[]): RunFigures {
  const { droop, bump, engagement, linkage } = model
  const { step, stretches } = run
  const width = (bump - droop) / HISTOGRAM_BARS
  const zones = new TimeIn([0, Math.max(0, engagement ?? Infinity)])
  const onStop = new TimeIn([engagement ?? Infinity])
  const bars = new TimeIn(Array.from({ length: HISTOGRAM_BARS - 1 }, (_, i) => droop + width * (i + 1)))
  const beyond = places.map(({ wheel }) => new TimeIn([wheel]))
  const hits = new Passings(engagement ?? Infinity, PARTED)
  const bottoms = new Passings(bump - AT_BUMP, AWAY)
  const still = new Stillness(step)
  const shaftSpeeds = new Float64Array(SHAFT_SPEED_BARS)
  let [most, least, sum, count, speed, steps] = [-Infinity, Infinity, 0, 0, 0, 0]
  const stopRatio = engagement === null ? 0 : linkage.at(engagement).stopRatio
  for (const { values } of stretches) {
    hits.begin(values[0]!)
    bottoms.begin(values[0]!)
    still.begin()
    let shaft = linkage.at(values[0]!).shock
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
      onStop.pass(before, wheel, step)
      bars.pass(before, wheel, step)
      for (const each of beyond) each.pass(before, wheel, step)
      if (hits.pass(wheel)) speed = Math.max(speed, ((wheel - before) / step) * stopRatio)
      bottoms.pass(wheel)
      const shaftNow = linkage.at(wheel).shock
      const bar = Math.floor(((shaftNow - shaft) / step / SHAFT_SPEED_MOST + 1) * (SHAFT_SPEED_BARS / 2))
      shaftSpeeds[Math.min(SHAFT_SPEED_BARS - 1, Math.max(0, bar))]! += 1
      shaft = shaftNow
      steps += 1
    }
  }
  const duration = steps * step
  const [inDroop, inCoilover, inEngagement] = Array.from(zones.seconds, seconds => seconds / duration)
  return {
    duration,
    share: {
      droop: inDroop!,
      coilover: inCoilover!,
      engagement: inEngagement!,
      onStop: onStop.seconds[1]! / duration,
    },
    hits: hits.count,
    bottoms: bottoms.count,
    wheelMax: most,
    wheelMin: least,
    wheelMean: sum / count,
    stopSpeedMax: speed,
    histogram: Array.from(bars.seconds, seconds => seconds / duration),
    shaftSpeeds: Array.from(shaftSpeeds, each => each / steps),
    beyond: places.map((place, i) => ({ ...place, share: beyond[i]!.seconds[1]! / duration })),
    still: still.wheel,
  }
}
