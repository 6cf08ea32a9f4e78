import { bar } from './coilover-shapes.ts'
import type { Figure } from './figure.ts'
import type { Flat } from './flat.ts'
import { type Shape, shape } from './look.ts'
import type { Place } from './place.ts'
import { stopStations } from './stop-stack.ts'

/** Where the chassis holds the stop: the far end of its body. */
export function stopMount({ stop, model }: Figure): { readonly at: Flat; readonly along: number } | null {
  if (stop === null) return null
  const stations = stopStations(stop.build, model, 0)
  return stations === null ? null : { at: stop.frame(0, stations.top), along: stations.top }
}

/** The piece between the stop's far end and the chassis, m along the stop's axis. */
export const stopPost = (place: Place, { stop }: Figure, from: number, to: number): Shape[] =>
  stop === null || to <= from
    ? []
    : [shape('chassisMount', bar(place, stop.frame, 0.62 * stop.build.half, { from, to }))]
