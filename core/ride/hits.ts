import { Meetings, PARTED } from './meetings.ts'
import type { Hit } from './results.ts'

type Open = { -readonly [Key in keyof Hit]: Hit[Key] }

/** Keeps the meetings of one pad and its stop, each with what the stop took and gave back. One that parted by next to nothing goes on. */
export class Hits {
  readonly list: Hit[] = []
  private open: Open | null = null
  /** Work of the stop when the hit began, and the most it has had since, J. */
  private began = 0
  private most = 0
  private readonly meetings = new Meetings(PARTED)

  begin(time: number, speed: number, stillIn: number, work: number): void {
    if (!this.meetings.meet()) {
      this.open = this.list.at(-1) ?? null
      return
    }
    this.open = { time, until: time, speed, stillIn, deepest: stillIn, taken: 0, returned: 0, bottomed: false }
    this.began = work
    this.most = work
    this.list.push(this.open)
  }

  /** @param pad how far in the stop is pushed, or would be; @param apart how far pad and stop are apart, 0 or less while they touch */
  moment(time: number, pad: number, apart: number, bottomed: boolean): void {
    this.meetings.apart(apart)
    const { open } = this
    if (open === null) return
    open.until = time
    open.bottomed ||= bottomed
    if (pad > open.deepest) open.deepest = pad
  }

  /** @param work done on the stop so far */
  worked(work: number): void {
    const { open } = this
    if (open === null) return
    this.most = Math.max(this.most, work)
    open.taken = this.most - this.began
    open.returned = this.most - work
  }

  end(): void {
    this.open = null
  }
}
