import type { CornerInMotion } from './corner-in-motion.ts'
import { Hits } from './hits.ts'
import { LEFT_BUMP, Meetings } from './meetings.ts'
import { Peaks } from './peaks.ts'
import { type CornerRide, HISTOGRAM_BARS, type RideTrace, TRACES } from './results.ts'
import { TimeIn } from './time-in.ts'
import { CARRIED, CARRIES, STATE, STATES } from './vehicle.ts'

/** Keeps what one corner of a vehicle does while it is driven. */
export class CornerLog {
  private readonly bottoms = new Meetings(LEFT_BUMP)
  private readonly hits = new Hits()
  private readonly trace: RideTrace
  private samples = 0
  private readonly zones: TimeIn
  private readonly bars: TimeIn
  private readonly peaks = new Peaks()
  private onStop = 0
  private air = 0
  private time = 0
  private wheel = 0

  /**
   * @param index of the corner in its vehicle; @param steered numbers before those carried
   * @param samples even ones to come, at most
   */
  constructor(
    private readonly corner: CornerInMotion,
    private readonly index: number,
    private readonly steered: number,
    samples: number,
  ) {
    const { model, modes } = corner
    const width = (model.bump - model.droop) / HISTOGRAM_BARS
    this.zones = new TimeIn([0, Math.max(0, model.engagement ?? Infinity)])
    this.bars = new TimeIn(Array.from({ length: HISTOGRAM_BARS - 1 }, (_, i) => model.droop + width * (i + 1)))
    this.trace = Object.fromEntries(TRACES.map(name => [name, new Float64Array(samples)])) as unknown as RideTrace
    if (modes.end === 'bump') this.bottoms.meet()
  }

  /** A moment later than the last one; the corner has been looked at. */
  moment(time: number, state: Float64Array, sample: boolean): void {
    const { corner } = this
    const { wheel, modes } = corner
    const passed = time - this.time
    if (passed > 0) {
      this.zones.pass(this.wheel, wheel, passed)
      this.bars.pass(this.wheel, wheel, passed)
      if (modes.stop === 'touching' || modes.stop === 'resting') this.onStop += passed
      if (!modes.ground) this.air += passed
    }
    this.time = time
    this.wheel = wheel
    this.peaks.take(corner)
    this.bottoms.apart(corner.model.bump - wheel)
    const out = modes.stop === 'apart' ? Math.max(0, state[STATES * this.index + STATE.stop]!) : 0
    this.hits.moment(time, corner.pad, out - corner.pad, modes.end === 'bump')
    if (sample) this.sample(time, state[STATES * this.index + STATE.chassis]!)
  }

  private sample(time: number, chassis: number): void {
    const { corner, trace, samples: i } = this
    trace.time[i] = time
    trace.wheel[i] = corner.wheel
    trace.road[i] = corner.road
    trace.chassis[i] = chassis
    trace.suspensionForce[i] = corner.suspension
    trace.stopForce[i] = corner.stopForce
    trace.tireForce[i] = corner.tire
    trace.chassisAcceleration[i] = corner.chassisAcceleration
    this.samples += 1
  }

  private carried(name: keyof typeof CARRIED, state: Float64Array): number {
    return state[this.steered + CARRIES * this.index + CARRIED[name]]!
  }

  /** Pad meets stop, still in by so much; the corner has been looked at. */
  touch(time: number, pushedIn: number, state: Float64Array): void {
    this.hits.begin(time, this.corner.padSpeed, pushedIn, this.carried('stop', state))
  }

  part(): void {
    this.hits.end()
  }

  /** The wheel comes past full bump. */
  bottom(): void {
    this.bottoms.meet()
  }

  /** Told where the works done are known: at the ends of steps. */
  worked(state: Float64Array): void {
    this.hits.worked(this.carried('stop', state))
  }

  /** @param state at the end; @param duration s */
  result(state: Float64Array, duration: number): CornerRide {
    const [droop, coilover, engagement] = this.zones.seconds
    const { trace, samples, hits, peaks, corner } = this
    const work = (name: keyof typeof CARRIED): number => this.carried(name, state)
    return {
      duration,
      share: {
        droop: droop! / duration,
        coilover: coilover! / duration,
        engagement: engagement! / duration,
        onStop: this.onStop / duration,
        air: this.air / duration,
      },
      hits: hits.list.length,
      bottoms: this.bottoms.count,
      ...peaks.most(),
      stopSpeedMax: hits.list.reduce((most, hit) => Math.max(most, hit.speed), 0),
      chassisAccelRms: Math.sqrt(Math.max(0, work('squares')) / duration),
      trace: Object.fromEntries(TRACES.map(name => [name, trace[name].subarray(0, samples)])) as unknown as RideTrace,
      histogram: Array.from(this.bars.seconds, seconds => seconds / duration),
      events: hits.list,
      work: {
        damper: work('damper'),
        springs: work('springs'),
        stop: work('stop'),
        tire: work('tire'),
        ends: work('ends'),
        road: work('road'),
      },
      contactDependent: peaks.onSteel(),
      dampingAssumed: corner.dampingAssumed,
    }
  }
}
