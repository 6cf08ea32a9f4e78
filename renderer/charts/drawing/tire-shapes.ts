import type { Flat } from './flat.ts'
import { type Shape, shape } from './look.ts'
import { circlePath, closedPath, openPath } from './pen.ts'
import type { Place } from './place.ts'
import type { Skeleton } from './skeleton.ts'

/** Parts of the tire's radius, of common off-road tires: width when seen from the front, rim, rounding of the tread. */
const HALF_WIDTH = 0.33
const RIM = 0.51

/** The tire from the side: tread, rim and their inner edges. */
function fromSide(place: Place, hub: Flat, radius: number): Shape[] {
  return [
    shape('tire', circlePath(place, hub, radius)),
    shape('tireFaint', circlePath(place, hub, 0.94 * radius)),
    shape('rim', circlePath(place, hub, RIM * radius)),
    shape('tireFaint', circlePath(place, hub, 0.46 * radius)),
  ]
}

/** The tire from the front: its section rounded at the tread, the rim's flanges, and blocks of tread. */
function fromFront(place: Place, [u, v]: Flat, radius: number): Shape[] {
  const half = HALF_WIDTH * radius
  const corner = 0.13 * radius
  const outline: Flat[] = []
  for (const [right, up] of [
    [1, 1],
    [1, -1],
    [-1, -1],
    [-1, 1],
  ] as const)
    for (let i = 0; i <= 4; i += 1) {
      const angle = ((right === up ? 4 - i : i) / 4) * (Math.PI / 2)
      outline.push([
        u + right * (half - corner + corner * Math.cos(angle)),
        v + up * (radius - corner + corner * Math.sin(angle)),
      ])
    }
  const across = (up: number, share: number): Flat[] => [
    [u - share * half, v + up * radius],
    [u + share * half, v + up * radius],
  ]
  return [
    shape('tire', closedPath(place, outline)),
    shape('tireFaint', [0.82, -0.82].map(up => openPath(place, across(up, 1))).join('')),
    shape('rim', [RIM, -RIM].map(up => openPath(place, across(up, 1))).join('')),
    shape('tireFaint', [0.46, -0.46].map(up => openPath(place, across(up, 0.92))).join('')),
  ]
}

/** Half the tire's width as a view shows it, m. */
export const tireHalf = (view: Skeleton['view'], radius: number): number =>
  view === 'side' ? radius : HALF_WIDTH * radius

export const tireShapes = (place: Place, view: Skeleton['view'], hub: Flat, radius: number): Shape[] =>
  view === 'side' ? fromSide(place, hub, radius) : fromFront(place, hub, radius)
