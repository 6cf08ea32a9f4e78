import type { AxleBudget } from '../../../core/budget/results.ts'
import type { System } from '../../../core/units/quantity.ts'
import type { Rode } from '../../workers/messages.ts'
import type { Ground } from '../placement/label.ts'
import { rulerNumber } from '../plate/budget-geometry.ts'
import { type TravelMarks, travelMarks } from '../plate/travel.ts'
import { type RulerTick, rulerTicks, type WheelAxis } from '../plate/wheel-axis.ts'
import type { MeasureText } from '../text/span.ts'
import type { HistogramBar, HistogramScale } from './histogram-geometry.ts'
import type { TerrainFrame } from './terrain-frame.ts'
import { type TimeAxis, type TimeWindow, timeAxis } from './time-axis.ts'
import { travelAxis } from './travel-axis.ts'

/** A name, and how its time was spent; null where that is not known. */
interface Timed {
  readonly name: string
  readonly ride: { readonly share: Omit<Rode['share'], 'air'>; readonly bottoms: number } | null
}

/** What anything that goes on over time has on the travel axis, ridden or recorded: enough for its lines, its bars and its words. */
export interface TravelScene {
  readonly view: { readonly shown: Timed; readonly other: Timed | null; readonly system: System }
  readonly frame: TerrainFrame
  readonly axis: WheelAxis
  readonly travel: TravelMarks
  readonly otherTravel: TravelMarks | null
  readonly ruler: readonly RulerTick[]
  readonly rulerRight: number
  /** s */
  readonly duration: number
  /** It is longer than is shown of it at once. */
  readonly windowed: boolean
  readonly time: TimeAxis
  readonly histogram: HistogramScale
  readonly shown: { readonly bars: readonly HistogramBar[]; readonly bottoms: readonly number[] } | null
  readonly other: { readonly bars: readonly HistogramBar[] } | null
  readonly measure: MeasureText
  readonly groundAt: (y: number) => Ground
}

/**
 * The two axes of such a scene, and what the travel of both budgets puts on them.
 * @param other of what is compared with; null where nothing is, or where its travel is the same
 */
export function travelAndTime(
  shown: AxleBudget,
  other: AxleBudget | null,
  frame: TerrainFrame,
  window: TimeWindow,
  system: System,
  measure: MeasureText,
): Pick<TravelScene, 'axis' | 'travel' | 'otherTravel' | 'ruler' | 'rulerRight' | 'time' | 'groundAt'> {
  const travel = travelMarks(shown)
  const otherTravel = other === null ? null : travelMarks(other)
  const bump = Math.max(travel.bump, otherTravel?.bump ?? 0)
  const droop = Math.min(travel.droop, otherTravel?.droop ?? 0)
  const axis = travelAxis(frame, bump, droop)
  const ruler = rulerTicks(axis, travel.bump, travel.droop, system)
  const numbers = ruler
    .filter(({ long }) => long)
    .map(({ wheel }) => measure(rulerNumber(wheel, system), frame.type.axis, 400))
  const { trace } = frame
  const rulerRight = trace.x + Math.min(Math.max(frame.small ? 24 : 28, 9 + Math.max(0, ...numbers)), trace.width * 0.3)
  const time = timeAxis(window, rulerRight + 6, trace.right - (frame.small ? 4 : 8))
  const [top, middle, ride] = [axis.y(travel.bump), axis.y(travel.coiloverEnd), axis.y(0)]
  return {
    axis,
    travel,
    otherTravel,
    ruler,
    rulerRight,
    time,
    groundAt: y => (y < top || y > ride ? 'sheet' : y < middle ? 'stop' : 'coil'),
  }
}
