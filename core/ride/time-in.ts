/** Time spent between places, from positions at successive times joined by straight lines. */
export class TimeIn {
  readonly seconds: Float64Array
  private readonly edges: Float64Array
  /** Where the last position was. */
  private here = 0

  /** @param places rising; time below the first is the first sum, above the last the last */
  constructor(places: readonly number[]) {
    this.edges = Float64Array.from([-Infinity, ...places, Infinity])
    this.seconds = new Float64Array(places.length + 1)
  }

  /** Goes from one position to another in `time` s. */
  pass(from: number, to: number, time: number): void {
    const { edges, seconds } = this
    const low = Math.min(from, to)
    const high = Math.max(from, to)
    let i = this.here
    while (low < edges[i]!) i -= 1
    while (low >= edges[i + 1]!) i += 1
    if (high < edges[i + 1]!) {
      seconds[i]! += time
      this.here = i
      return
    }
    const perMetre = time / (high - low)
    let reached = low
    while (high >= edges[i + 1]!) {
      seconds[i]! += (edges[i + 1]! - reached) * perMetre
      reached = edges[i + 1]!
      i += 1
    }
    seconds[i]! += (high - reached) * perMetre
    this.here = i
  }
}
