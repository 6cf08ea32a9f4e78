import type { CornerModel } from '../corner/corner-model.ts'
import { Meetings, PARTED } from '../ride/meetings.ts'
import { StopFollower } from '../ride/stop-follower.ts'
import { StopInMotion } from '../ride/stop-in-motion.ts'
import { movementAt } from './wheel-travel.ts'

/** One meeting of pad and stop in a recorded run, as a ride has them; lengths along the stop, m. */
export interface RunHit {
  /** Of the run, s. */
  readonly time: number
  /** When they last touched in it. */
  readonly until: number
  /** Of the pad, along the stop, m/s. */
  readonly speed: number
  /** How far in the stop still was, by the plan's own stop. */
  readonly stillIn: number
  readonly deepest: number
}

/** Drives the plan's stop with the recorded wheel, and keeps each meeting. */
export class StopInRun {
  readonly hits: RunHit[] = []
  /** Time pad and stop touched, s. */
  touched = 0
  private readonly follower: StopFollower | null
  private readonly padAt: (wheel: number) => number
  private readonly gap: number
  private readonly meetings = new Meetings(PARTED)
  private open: { -readonly [Key in keyof RunHit]: RunHit[Key] } | null = null
  private pad = 0

  constructor(
    model: CornerModel,
    private readonly step: number,
  ) {
    const { stop } = model.corner
    this.follower = stop === null ? null : new StopFollower(new StopInMotion(stop))
    this.gap = stop?.gap ?? 0
    this.padAt = stop === null ? () => 0 : movementAt(model, 'stop')
  }

  /** A stretch begins: what happened before is not known. */
  begin(wheel: number): void {
    this.pad = this.padAt(wheel) - this.gap
    this.follower?.begin(this.pad)
    this.meetings.begin(this.follower?.touching ?? false)
  }

  /** The wheel's place one step later. */
  take(time: number, wheel: number): void {
    const { follower, step, meetings } = this
    if (follower === null) return
    const pad = this.padAt(wheel) - this.gap
    const touched = follower.follow(pad, step)
    this.touched += touched
    if (follower.touching && meetings.meet()) {
      const speed = (pad - this.pad) / step
      this.open = { time: time - touched, until: time, speed, stillIn: follower.stillIn, deepest: follower.stillIn }
      this.hits.push(this.open)
    }
    meetings.apart(follower.gap)
    if (this.open !== null && follower.touching) {
      this.open.until = time
      this.open.deepest = Math.max(this.open.deepest, pad)
    }
    this.pad = pad
  }

  end(): void {
    this.open = null
  }
}
