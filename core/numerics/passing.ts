/** What was found at one place: a value to bring to zero, and whatever else was worked out on the way to it. */
export interface Found<State> {
  readonly value: number
  readonly state: State
}

/** Where a value passes zero: the last places on either side of it, and how far on the way from a to b it is zero, 0 to 1. */
export interface Passing<State> {
  readonly a: State
  readonly b: State
  readonly share: number
}

/**
 * Where a value passes zero between two places, whether it goes smoothly or jumps, by T. R. Chandrupatla's method
 * (Advances in Engineering Software 28 (1997) 145): inverse quadratic steps where they are safe, halving elsewhere.
 * @param ask value and state at a place; values finite
 * @param from place and what is found there; @param to likewise, with a value of the other sign or zero
 * @param tolerance widest bracket to stop at, in the unit of the places, more than 0
 */
export function passingZero<State>(
  ask: (x: number) => Found<State>,
  from: readonly [number, Found<State>],
  to: readonly [number, Found<State>],
  tolerance: number,
): Passing<State> {
  let [x1, at1] = from
  let [x2, at2] = to
  if (at1.value !== 0 && at2.value !== 0 && at1.value > 0 === at2.value > 0)
    throw new RangeError(`no zero between ${x1} and ${x2}: ${at1.value} and ${at2.value} are of one sign`)
  let t = 0.5
  for (let round = 0; round < 200; round += 1) {
    const width = Math.abs(x2 - x1)
    const least = Math.max(tolerance, 4 * Number.EPSILON * Math.max(Math.abs(x1), Math.abs(x2)))
    if (at1.value === 0 || at2.value === 0 || width <= least) break
    const near = least / width / 2
    const x = x1 + Math.min(1 - near, Math.max(near, t)) * (x2 - x1)
    if (x === x1 || x === x2) break
    const at = ask(x)
    const same = at.value > 0 === at1.value > 0
    const [x3, f3] = same ? [x1, at1.value] : [x2, at2.value]
    if (!same) [x2, at2] = [x1, at1]
    ;[x1, at1] = [x, at]
    const [f1, f2] = [at1.value, at2.value]
    const xi = (x1 - x2) / (x3 - x2)
    const phi = (f1 - f2) / (f3 - f2)
    t =
      phi ** 2 < xi && (1 - phi) ** 2 < 1 - xi
        ? (f1 / (f2 - f1)) * (f3 / (f2 - f3)) + (((x3 - x1) / (x2 - x1)) * (f1 / (f3 - f1)) * f2) / (f3 - f2)
        : 0.5
  }
  if (at1.value === 0) return { a: at1.state, b: at1.state, share: 0 }
  if (at2.value === 0) return { a: at2.state, b: at2.state, share: 0 }
  return { a: at1.state, b: at2.state, share: at1.value / (at1.value - at2.value) }
}
