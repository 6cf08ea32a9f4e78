import { type Flat, minus, plus, size, times } from './flat.ts'
import type { Place } from './place.ts'

const px = (value: number): string => String(Math.round(value * 100) / 100)
const pair = ([x, y]: Flat): string => `${px(x)} ${px(y)}`

/** A path through points already on the page. */
export const pagePath = (points: readonly Flat[], closed = false): string =>
  points.length === 0 ? '' : `M${points.map(pair).join('L')}${closed ? 'z' : ''}`

/** Straight lines through points of the plane. */
export const openPath = (place: Place, points: readonly Flat[]): string => pagePath(points.map(place.at))
export const closedPath = (place: Place, points: readonly Flat[]): string => pagePath(points.map(place.at), true)

/** A circle; `radius` in m. Its four sides go through `place`, so that it counts for what the drawing covers. */
export function circlePath(place: Place, centre: Flat, radius: number, leastPx = 0): string {
  const [x, y] = place.at(centre)
  for (const side of [
    [radius, 0],
    [-radius, 0],
    [0, radius],
    [0, -radius],
  ] as const)
    place.at(plus(centre, side))
  const r = Math.max(leastPx, radius * place.scale)
  return `M${pair([x - r, y])}a${px(r)} ${px(r)} 0 1 0 ${px(2 * r)} 0a${px(r)} ${px(r)} 0 1 0 ${px(-2 * r)} 0z`
}

/** The outline around two circles and the tangents between them: an arm, a tube, a bracket. Radii in m. */
export function linkPath(place: Place, from: Flat, fromRadius: number, to: Flat, toRadius: number): string {
  const along = minus(to, from)
  const length = size(along)
  if (length <= Math.abs(fromRadius - toRadius) + 1e-9)
    return fromRadius >= toRadius ? circlePath(place, from, fromRadius) : circlePath(place, to, toRadius)
  const direction = times(along, 1 / length)
  const normal: Flat = [-direction[1], direction[0]]
  const cosine = (fromRadius - toRadius) / length
  const sine = Math.sqrt(1 - cosine ** 2)
  const touch = (centre: Flat, radius: number, side: 1 | -1): Flat =>
    plus(centre, plus(times(direction, radius * cosine), times(normal, side * radius * sine)))
  for (const [centre, radius] of [
    [from, fromRadius],
    [to, toRadius],
  ] as const)
    circlePath(place, centre, radius)
  const arc = (radius: number, large: boolean, end: Flat): string =>
    `A${px(radius * place.scale)} ${px(radius * place.scale)} 0 ${large ? 1 : 0} 1 ${pair(place.at(end))}`
  return (
    `M${pair(place.at(touch(from, fromRadius, 1)))}L${pair(place.at(touch(to, toRadius, 1)))}` +
    `${arc(toRadius, cosine < 0, touch(to, toRadius, -1))}L${pair(place.at(touch(from, fromRadius, -1)))}` +
    `${arc(fromRadius, cosine > 0, touch(from, fromRadius, 1))}z`
  )
}

/** Thin strokes across both ends of a dimension, drawn as filled arrow heads. Page coordinates. */
export const arrowHead = ([x, y]: Flat, down: boolean): string =>
  pagePath(
    [
      [x, y],
      [x - 2.5, y + (down ? -6 : 6)],
      [x + 2.5, y + (down ? -6 : 6)],
    ],
    true,
  )
