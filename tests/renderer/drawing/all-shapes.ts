import {
  hubLayer,
  stillChassis,
  stillStop,
  stopLayer,
  suspensionLayer,
  wheelLayer,
} from '../../../renderer/charts/drawing/corner-shapes.ts'
import type { Figure, Station } from '../../../renderer/charts/drawing/figure.ts'
import type { Shape } from '../../../renderer/charts/drawing/look.ts'
import type { Place } from '../../../renderer/charts/drawing/place.ts'

/** Everything that is drawn of a corner at one wheel position. */
export const allShapes = (place: Place, figure: Figure, station: Station): Shape[] => [
  ...wheelLayer(place, figure, station),
  ...stillChassis(place, figure),
  ...suspensionLayer(place, figure, station),
  ...stillStop(place, figure),
  ...stopLayer(place, figure, station),
  ...hubLayer(place, figure, station),
]
