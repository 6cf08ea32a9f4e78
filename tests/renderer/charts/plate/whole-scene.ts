import { demandCount } from '../../../../renderer/charts/plate/demands-geometry.ts'
import {
  type PlateView,
  type Scene,
  sceneWithoutDemands,
  withDemands,
} from '../../../../renderer/charts/plate/scene.ts'
import type { MeasureText } from '../../../../renderer/charts/text/span.ts'

/** The plate laid out at once, as the window does it in two steps. */
export const plateScene = (view: PlateView, width: number, height: number, measure: MeasureText): Scene =>
  withDemands(sceneWithoutDemands(view, demandCount(view.demands), width, height, measure), view.demands)
