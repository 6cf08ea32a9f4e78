import type { System } from '../../../core/units/quantity.ts'
import type { Rode } from '../../workers/messages.ts'
import type { Ground } from '../placement/label.ts'
import type { TravelMarks } from '../plate/travel.ts'
import type { RulerTick, WheelAxis } from '../plate/wheel-axis.ts'
import type { MeasureText } from '../text/span.ts'
import type { HistogramBar, HistogramScale } from './histogram-geometry.ts'
import type { TerrainFrame } from './terrain-frame.ts'
import type { TimeAxis } from './time-axis.ts'

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
  readonly time: TimeAxis
  readonly histogram: HistogramScale
  readonly shown: { readonly bars: readonly HistogramBar[]; readonly bottoms: readonly number[] } | null
  readonly other: { readonly bars: readonly HistogramBar[] } | null
  readonly measure: MeasureText
  readonly groundAt: (y: number) => Ground
}
