import { hubLayer, stillChassis, stillStop, stopLayer, suspensionLayer, wheelLayer } from './corner-shapes.ts'
import { type Figure, stationAt } from './figure.ts'
import type { Place } from './place.ts'

/** How far the drawing reaches from the hub at ride height, m; each 0 or more. */
export interface Extent {
  readonly left: number
  readonly right: number
  readonly up: number
  readonly down: number
}

/** A place that keeps how far what is put on it reaches. */
function cover(): { readonly place: Place; readonly extent: () => Extent } {
  let [left, right, up, down] = [0, 0, 0, 0]
  const place: Place = {
    scale: 1,
    at: point => {
      const [x, y] = point
      if (x < left) left = x
      if (x > right) right = x
      if (y > up) up = y
      if (y < down) down = y
      return point
    },
  }
  return { place, extent: () => ({ left: -left, right, up, down: -down }) }
}

interface Extents {
  readonly whole: Extent
  readonly withoutTire: Extent
}

function measured(figure: Figure): Extents {
  const { droop, bump } = figure.model
  // Furthest out is an end of the travel or, where an arm lies level, close to the middle.
  const stations = [droop, (droop + bump) / 2, bump].map(wheel => stationAt(figure, wheel))
  const { place, extent } = cover()
  stillChassis(place, figure)
  stillStop(place, figure)
  for (const station of stations) {
    suspensionLayer(place, figure, station)
    stopLayer(place, figure, station)
  }
  const withoutTire = extent()
  for (const station of stations) {
    wheelLayer(place, figure, station)
    hubLayer(place, figure, station)
  }
  return { whole: extent(), withoutTire }
}

const known = new WeakMap<Figure, Extents>()

function extents(figure: Figure): Extents {
  const before = known.get(figure)
  if (before !== undefined) return before
  const made = measured(figure)
  known.set(figure, made)
  return made
}

/** What the whole corner covers over its travel. */
export const extentOf = (figure: Figure): Extent => extents(figure).whole

/** What it covers without the tire. */
export const extentWithoutTire = (figure: Figure): Extent => extents(figure).withoutTire
