/** Numbers that follow each other, as a trace keeps them. */
export type Numbers = ArrayLike<number>

/** The first place whose time is no earlier; the length when there is none. Times rise. */
export function placeOf(time: Numbers, at: number): number {
  let low = 0
  let high = time.length
  while (low < high) {
    const middle = (low + high) >> 1
    if (time[middle]! < at) low = middle + 1
    else high = middle
  }
  return low
}

/** A value between two kept moments; before the first and after the last it stays. NaN only for no moments at all. */
export function valueAt(time: Numbers, values: Numbers, at: number): number {
  const next = placeOf(time, at)
  if (next <= 0) return values[0] ?? Number.NaN
  if (next >= time.length) return values[time.length - 1] ?? Number.NaN
  const before = time[next - 1]!
  const span = time[next]! - before
  const share = span > 0 ? (at - before) / span : 0
  return values[next - 1]! + share * (values[next]! - values[next - 1]!)
}

export interface Point {
  readonly x: number
  readonly y: number
}

/**
 * A signal as the points a screen can show of it: in each column of pixels where it enters, its lowest, its highest and where it leaves, in
 * their order. What is not a number is left out.
 * @param x straight in time
 */
export function signalPoints(
  time: Numbers,
  values: Numbers,
  from: number,
  to: number,
  x: (time: number) => number,
  y: (value: number) => number,
): Point[] {
  const points: Point[] = []
  const first = Math.max(0, placeOf(time, from) - 1)
  const last = Math.min(time.length - 1, placeOf(time, to))
  const left = x(0)
  const perSecond = x(1) - left
  const put = (at: number): void => {
    points.push({ x: x(time[at]!), y: y(values[at]!) })
  }
  let column = Number.NaN
  let [entered, lowest, highest, leaving, low, high] = [-1, -1, -1, -1, 0, 0]
  const close = (): void => {
    if (entered < 0) return
    const [one, two] = lowest < highest ? [lowest, highest] : [highest, lowest]
    put(entered)
    if (one !== entered) put(one)
    if (two !== one && two !== entered) put(two)
    if (leaving !== two) put(leaving)
  }
  for (let i = first; i <= last; i += 1) {
    const value = values[i]!
    if (value - value !== 0) continue
    const here = Math.floor(left + perSecond * time[i]!)
    if (here !== column) {
      close()
      column = here
      entered = lowest = highest = i
      low = high = value
    } else if (value < low) {
      low = value
      lowest = i
    } else if (value > high) {
      high = value
      highest = i
    }
    leaving = i
  }
  close()
  return points
}

/** To a tenth of a pixel. A trace has ten thousand of these, and digits of whole numbers are had in a third of the time of others. */
function fixed(value: number): string {
  const tenths = Math.round(value * 10)
  const whole = Math.trunc(tenths / 10)
  const part = Math.abs(tenths - 10 * whole)
  if (part === 0) return `${whole}`
  return tenths < 0 && whole === 0 ? `-0.${part}` : `${whole}.${part}`
}

export const linePath = (points: readonly Point[]): string =>
  points.length === 0 ? '' : `M${points.map(({ x, y }) => `${fixed(x)} ${fixed(y)}`).join('L')}`

/** What lies between a line and a level. */
export function areaPath(points: readonly Point[], level: number): string {
  const [first, last] = [points[0], points.at(-1)]
  if (first === undefined || last === undefined) return ''
  return `${linePath(points)}L${fixed(last.x)} ${fixed(level)}L${fixed(first.x)} ${fixed(level)}z`
}
