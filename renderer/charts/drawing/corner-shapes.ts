import { armShapes, hubShapes } from './arm-shapes.ts'
import { chassisShapes } from './chassis-shapes.ts'
import { coiloverShapes } from './coilover-shapes.ts'
import type { Figure, Station } from './figure.ts'
import type { Shape } from './look.ts'
import { padShapes } from './pad.ts'
import type { Place } from './place.ts'
import { stopBodyShapes, stopMovingShapes } from './stop-shapes.ts'
import { stopStations } from './stop-stack.ts'
import { strapOf, strapShapes } from './strap.ts'
import { tireShapes } from './tire-shapes.ts'

/** The corner in layers from behind to before; `still` ones are the same at every wheel position. */
export const wheelLayer = (place: Place, { skeleton, axle }: Figure, { pose }: Station): Shape[] =>
  tireShapes(place, skeleton.view, pose.hub, axle.corner.tire.radius)

export const stillChassis = chassisShapes

export const suspensionLayer = (place: Place, figure: Figure, station: Station): Shape[] => [
  ...strapShapes(place, strapOf(figure), station),
  ...armShapes(place, figure, station),
  ...coiloverShapes(place, station.shockFrame, station.shrink, figure.coilover, station.coilover),
]

export function stillStop(place: Place, { stop, model }: Figure): Shape[] {
  if (stop === null) return []
  const stations = stopStations(stop.build, model, 0)
  return stations === null ? [] : stopBodyShapes(place, stop.frame, stop.build, stations)
}

export function stopLayer(place: Place, figure: Figure, station: Station): Shape[] {
  if (figure.stop === null || station.stop === null) return []
  const { frame, build } = figure.stop
  const { stations, pad } = station.stop
  return [
    ...padShapes(place, frame, pad, build, station.pose.members, figure.thickness.chassis),
    ...stopMovingShapes(place, frame, build, stations, pad),
  ]
}

export const hubLayer = hubShapes
