import { allShapes, stillChassis, stillStop, stopLayer, suspensionLayer } from './corner-shapes.ts'
import { type Figure, stationAt } from './figure.ts'
import type { Flat } from './flat.ts'
import type { Place } from './place.ts'

/** How far the drawing reaches from the hub at ride height, m; each 0 or more. */
export interface Extent {
  readonly left: number
  readonly right: number
  readonly up: number
  readonly down: number
}

/** A place that keeps what is put on it. */
class Cover implements Place {
  readonly scale = 1
  private least: Flat = [0, 0]
  private most: Flat = [0, 0]

  at(point: Flat): Flat {
    this.least = [Math.min(this.least[0], point[0]), Math.min(this.least[1], point[1])]
    this.most = [Math.max(this.most[0], point[0]), Math.max(this.most[1], point[1])]
    return point
  }

  extent(): Extent {
    return { left: -this.least[0], right: this.most[0], up: this.most[1], down: -this.least[1] }
  }
}

const positions = ({ model: { droop, bump } }: Figure): number[] =>
  Array.from({ length: 9 }, (_, i) => droop + ((bump - droop) * i) / 8)

/** What the whole corner covers over its travel. */
export function extentOf(figure: Figure): Extent {
  const cover = new Cover()
  const place: Place = { scale: 1, at: point => cover.at(point) }
  for (const wheel of positions(figure)) allShapes(place, figure, stationAt(figure, wheel))
  return cover.extent()
}

/** What it covers without the tire. */
export function extentWithoutTire(figure: Figure): Extent {
  const cover = new Cover()
  const place: Place = { scale: 1, at: point => cover.at(point) }
  stillChassis(place, figure)
  stillStop(place, figure)
  for (const wheel of positions(figure)) {
    const station = stationAt(figure, wheel)
    suspensionLayer(place, figure, station)
    stopLayer(place, figure, station)
  }
  return cover.extent()
}
