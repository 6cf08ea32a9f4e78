/** Pad and stop that part by less than this, along the stop, have not parted: they are still in the same hit, m. */
export const PARTED = 1e-3

/** A wheel that comes back to full bump before it was this far from it bounces: it is still the same bottoming, m. */
export const LEFT_BUMP = 5e-3

/**
 * Counts meetings of two parts: a new one only after they were far enough apart. The one rule by which hits on the stop and bottoms are
 * counted, in rides and in recorded runs.
 */
export class Meetings {
  count = 0
  private together = false

  /** @param parted how far apart they are no longer together, m */
  constructor(private readonly parted: number) {}

  /** They touch; true when this is a new meeting. */
  meet(): boolean {
    if (this.together) return false
    this.together = true
    this.count += 1
    return true
  }

  /** They are so far apart, m; 0 or less while they touch. */
  apart(by: number): void {
    if (by > this.parted) this.together = false
  }

  /** They were together before anybody looked: that meeting is not counted. */
  begin(together: boolean): void {
    this.together = together
  }
}
