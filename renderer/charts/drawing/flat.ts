/** A place in the drawing plane: [right, up] in m from the hub at ride height, or, once placed, [x, y] in px with y downwards. */
export type Flat = readonly [number, number]

export const plus = (a: Flat, b: Flat): Flat => [a[0] + b[0], a[1] + b[1]]
export const minus = (a: Flat, b: Flat): Flat => [a[0] - b[0], a[1] - b[1]]
export const times = (a: Flat, factor: number): Flat => [a[0] * factor, a[1] * factor]
export const dot = (a: Flat, b: Flat): number => a[0] * b[0] + a[1] * b[1]
export const size = (a: Flat): number => Math.hypot(a[0], a[1])
export const between = (a: Flat, b: Flat, share: number): Flat => plus(a, times(minus(b, a), share))

/** The direction to the right of a direction that points up the page. */
export const rightOf = (direction: Flat): Flat => [direction[1], -direction[0]]

/** A vector as a direction; `otherwise` when it has no length to speak of. */
export function directionOf(vector: Flat, otherwise: Flat = [0, 1]): Flat {
  const length = size(vector)
  return length > 1e-9 ? times(vector, 1 / length) : otherwise
}

/** The point of a segment nearest to another point. */
export function nearestOn(from: Flat, to: Flat, point: Flat): Flat {
  const along = minus(to, from)
  const square = dot(along, along)
  const share = square > 0 ? dot(minus(point, from), along) / square : 0
  return between(from, to, Math.min(1, Math.max(0, share)))
}

export const clamp = (value: number, least: number, most: number): number => Math.min(most, Math.max(least, value))
