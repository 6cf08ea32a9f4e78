import { dot, type Flat, minus, plus, rightOf, times } from './flat.ts'

/** Puts points of the drawing plane, m, on the page, px. */
export interface Place {
  at(point: Flat): Flat
  /** px per m. */
  readonly scale: number
}

/** Upright on the page: `hub` is where the hub stands at ride height. */
export const placeUpright = (hub: Flat, scale: number): Place => ({
  scale,
  at: ([u, v]) => [hub[0] + u * scale, hub[1] - v * scale],
})

/** Turned so that `axis` points up the page, with the point `origin` of the plane at `at`. */
export function placeAlong(origin: Flat, axis: Flat, at: Flat, scale: number): Place {
  const right = rightOf(axis)
  return {
    scale,
    at: point => {
      const from = minus(point, origin)
      return [at[0] + dot(from, right) * scale, at[1] - dot(from, axis) * scale]
    },
  }
}

/** Moves what a place puts on the page. */
export const shifted = (place: Place, by: Flat): Place => ({
  scale: place.scale,
  at: point => plus(place.at(point), by),
})

/** Coordinates along an axis of the plane: [to the right, along], m; `shrink` shortens what runs along it. */
export type AxisFrame = (across: number, along: number) => Flat

export function axisFrame(origin: Flat, axis: Flat, shrink = 1): AxisFrame {
  const right = rightOf(axis)
  return (across, along) => plus(plus(origin, times(axis, along * shrink)), times(right, across))
}
