/** Half of the travel a stroke is fitted over about a place, m; and how much of each half it must cover, below and above. */
const HALF = 3e-2
const COVERED = { below: 0.6, above: 0.4 } as const
/** Fewest values in a fit, and least of a step that the smooth part leaves. */
const FEWEST = 8
const LEFT = 0.05
/** Variance no stroke is taken to be below, (m/s²)²: what a quiet sensor has left. */
const QUIET = 30

/** A constant, a line and a parabola over so many even places, each of length 1 and at right angles to the others, with their sums from each place on. */
interface Smooth {
  readonly shapes: readonly Float64Array[]
  readonly sums: readonly Float64Array[]
}

function smoothOver(count: number): Smooth {
  const shapes: Float64Array[] = []
  for (let power = 0; power <= 2; power += 1) {
    const shape = Float64Array.from({ length: count }, (_, i) => ((2 * i) / (count - 1) - 1) ** power)
    for (const other of shapes) {
      const along = dot(shape, other)
      for (let i = 0; i < count; i += 1) shape[i]! -= along * other[i]!
    }
    const length = Math.sqrt(dot(shape, shape))
    shapes.push(shape.map(value => value / length))
  }
  const sums = shapes.map(shape => {
    const sum = new Float64Array(count + 1)
    for (let i = count - 1; i >= 0; i -= 1) sum[i] = sum[i + 1]! + shape[i]!
    return sum
  })
  return { shapes, sums }
}

const dot = (a: Float64Array, b: Float64Array): number => a.reduce((sum, value, i) => sum + value * b[i]!, 0)

/** Looks in strokes of a wheel for a step in its acceleration, at places evenly apart. */
export class StepScan {
  /** Strokes taken. */
  strokes = 0
  /** What each stroke says of each place it goes through, one stroke after the other; NaN for the others. */
  private readonly says: Float64Array[] = []
  private readonly known = new Map<number, Smooth>()

  /** @param first place, m; @param apart m; @param step between values, s */
  constructor(
    private readonly first: number,
    private readonly apart: number,
    private readonly places: number,
    private readonly step: number,
  ) {}

  /** Takes a rising stroke, from one place in a list to another; it has neighbours there. */
  stroke(values: Float64Array, from: number, to: number): void {
    const { first, apart, places, step } = this
    const says = new Float64Array(places).fill(Number.NaN)
    const [low, high] = [values[from]!, values[to]!]
    const least = Math.max(0, Math.ceil((low + COVERED.below * HALF - first) / apart))
    const most = Math.min(places - 1, Math.floor((high - COVERED.above * HALF - first) / apart))
    let [begin, middle, end] = [from, from, from]
    for (let i = least; i <= most; i += 1) {
      const place = first + i * apart
      while (values[begin]! < place - HALF) begin += 1
      while (middle <= to && values[middle]! <= place) middle += 1
      while (end <= to && values[end]! <= place + HALF) end += 1
      if (end - begin >= FEWEST) says[i] = this.fitted(values, begin, middle, end, step)
    }
    if (most < least) return
    this.says.push(says)
    this.strokes += 1
  }

  /** The step at `middle`, weighed by how well the rest fits. */
  private fitted(values: Float64Array, begin: number, middle: number, end: number, step: number): number {
    const count = end - begin
    let smooth = this.known.get(count)
    if (smooth === undefined) {
      smooth = smoothOver(count)
      this.known.set(count, smooth)
    }
    const { shapes, sums } = smooth
    const [constant, line, parabola] = shapes as [Float64Array, Float64Array, Float64Array]
    const perSquare = 1 / step ** 2
    let [squares, above, a, b, c] = [0, 0, 0, 0, 0]
    for (let i = 0; i < count; i += 1) {
      const at = begin + i
      const value = (values[at + 1]! - 2 * values[at]! + values[at - 1]!) * perSquare
      squares += value * value
      if (at >= middle) above += value
      a += value * constant[i]!
      b += value * line[i]!
      c += value * parabola[i]!
    }
    const cut = middle - begin
    const [u, v, w] = [sums[0]![cut]!, sums[1]![cut]!, sums[2]![cut]!]
    const stepLeft = end - middle - u * u - v * v - w * w
    if (stepLeft < LEFT) return Number.NaN
    const together = above - a * u - b * v - c * w
    const left = squares - a * a - b * b - c * c - (together * together) / stepLeft
    return together / (left / (count - 4) + QUIET)
  }

  /**
   * The step at each place in its own standard errors; NaN where fewer strokes than `fewest` go through.
   * @param times how often each stroke counts; once when not given
   */
  scores(fewest: number, times?: Float64Array): Float64Array {
    const [sum, squares, count] = [0, 0, 0].map(() => new Float64Array(this.places)) as [
      Float64Array,
      Float64Array,
      Float64Array,
    ]
    for (const [i, says] of this.says.entries()) {
      const often = times === undefined ? 1 : times[i]!
      if (often === 0) continue
      for (let place = 0; place < says.length; place += 1) {
        const said = says[place]!
        if (Number.isNaN(said)) continue
        sum[place]! += often * said
        squares[place]! += often * said * said
        count[place]! += often
      }
    }
    return sum.map((total, i) => (count[i]! >= fewest ? total / Math.sqrt(squares[i]!) : Number.NaN))
  }

  /** Strokes that go through a place. */
  strokesAt = (place: number): number => this.says.filter(says => !Number.isNaN(says[place]!)).length
}
