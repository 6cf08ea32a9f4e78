import type { StopInMotion } from './stop-in-motion.ts'

/**
 * The stop under a pad whose way is known: pushed in with it, and on the way out no faster than its rebound lets its gas push it, as in a
 * ride. Positions along the stop, m, pad past the foot of the stop at full length; straight from place to place.
 */
export class StopFollower {
  /** How far in it is. */
  travel = 0
  touching = false
  /** How far in it still was when they last met. */
  stillIn = 0
  private pad = 0

  constructor(private readonly stop: StopInMotion) {}

  /** Between stop and pad; 0 while they touch. */
  get gap(): number {
    return this.touching ? 0 : this.travel - this.pad
  }

  /** Begins anew: in as far as the pad, else all the way out; what happened before is not known. */
  begin(pad: number): void {
    this.pad = pad
    this.travel = Math.max(0, pad)
    this.touching = pad >= 0
    this.stillIn = this.travel
  }

  /** The pad goes on to a place in `time` s. @returns how much of that time they touched, s */
  follow(pad: number, time: number): number {
    const { pad: from, travel, touching } = this
    const free = this.comeOut(time)
    this.pad = pad
    this.touching = pad >= free
    this.travel = this.touching ? pad : free
    if (this.touching === touching) return touching ? time : 0
    if (this.touching) {
      const share = (travel - from) / (travel - from + (pad - free))
      this.stillIn = travel + (free - travel) * share
      return (1 - share) * time
    }
    // At full length it is left where the pad passes that; before, as soon as the pad is faster than it.
    return free === 0 && from > pad ? (time * from) / (from - pad) : 0
  }

  /** Where it would be after so long with no pad on it: by the speed halfway. */
  private comeOut(time: number): number {
    const { stop, travel } = this
    if (travel === 0) return 0
    const halfway = Math.max(0, travel - 0.5 * time * stop.extensionSpeed(travel))
    return Math.max(0, travel - time * stop.extensionSpeed(halfway))
  }
}
