/** A car keeps still when its wheels move less than this about where they were, m, for at least this long, s. */
const STILL = { within: 2e-3, seconds: 1 } as const

/** A wheel this close to full droop hangs there, off the ground or by its strap, m: where it stands is not told by it. */
const HANGS = 1e-2

/** The place of the longest time a wheel stood where it was. */
export class Stillness {
  /** Its mean there, m; null when it never stood. */
  wheel: number | null = null
  private longest = 0
  private low = 0
  private high = 0
  private sum = 0
  private count = 0

  /** @param step between the wheel's places, s; @param droop where it hangs, m */
  constructor(
    private readonly step: number,
    private readonly droop: number,
  ) {}

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
    const mean = this.sum / this.count
    if (mean <= this.droop + HANGS) return
    this.longest = seconds
    this.wheel = mean
  }
}
