import type { AxleBudget } from '../../../core/budget/results.ts'
import type { CornerModel, PartPositions } from '../../../core/corner/corner-model.ts'
import { INCH } from '../../../core/units/constants.ts'
import type { System } from '../../../core/units/quantity.ts'
import type { PatternName } from '../patterns/ChartPatterns.tsx'
import type { Ink } from '../text/span.ts'
import type { Frame } from './frame.ts'
import { travelMarks } from './travel.ts'
import { RESERVE_HEAD, type WheelAxis } from './wheel-axis.ts'

export type ShaftId = 'shock' | 'main' | 'stop'

/** A shaft or spring as a bar on the wheel axis: it fills upward, and what sticks out above full bump is its reserve. */
export interface ShaftBar {
  readonly id: ShaftId
  readonly title: string
  readonly fill: PatternName
  readonly ink: Ink
  readonly centre: number
  readonly x: number
  readonly width: number
  /** Wheel position where it starts to fill, m. */
  readonly from: number
  /** px; top above bottom. */
  readonly top: number
  readonly bottom: number
  /** Its end lies beyond the frame: the bar is drawn broken off. */
  readonly cut: boolean
  readonly ticks: readonly { readonly y: number; readonly length: number }[]
  /** Said instead of a reading: there is no stop, or full bump comes before it. */
  readonly absent: 'no stop' | 'not met' | null
  /** Left to its end at a wheel position, m. */
  readonly left: (wheel: number) => number
  /** Left at full bump, m; null where it ends the travel. */
  readonly spare: number | null
}

const mainLeft = (parts: PartPositions): number => parts.springs.at(-1)?.left ?? 0

/** px between samples of a bar: no chord between two is a tenth of one off its curve. */
const SAMPLE = 10

/** Ticks where a whole step is left. `left` falls as the wheel rises; found between samples. */
function leftTicks(
  axis: WheelAxis,
  left: (wheel: number) => number,
  from: number,
  to: number,
  step: number,
  long: (count: number) => number,
): { y: number; length: number }[] {
  const count = Math.min(240, Math.ceil(Math.abs(axis.y(to) - axis.y(from)) / SAMPLE))
  const ticks: { y: number; length: number }[] = []
  let before = left(from)
  let last = Number.POSITIVE_INFINITY
  for (let index = 1; index <= count; index++) {
    const wheel = from + ((to - from) * index) / count
    const now = left(wheel)
    for (let whole = Math.floor(before / step); whole * step > now && whole > 0; whole--) {
      const share = (before - whole * step) / (before - now)
      const y = axis.y(wheel - ((to - from) / count) * (1 - share))
      if (last - y < 4) continue
      ticks.push({ y, length: long(whole) })
      last = y
    }
    before = now
  }
  return ticks
}

/** Bars of the shafts column. */
export function shaftBars(
  frame: Frame,
  axis: WheelAxis,
  budget: AxleBudget,
  model: CornerModel,
  system: System,
): ShaftBar[] {
  const { droop, bump, engagement } = travelMarks(budget)
  const pitch = frame.shafts.width / 3
  const width = Math.min(frame.small ? 18 : 24, pitch * 0.6)
  const half = system === 'inch' ? INCH / 2 : 0.01
  const ceiling = Math.min(axis.top + RESERVE_HEAD, axis.y(bump))
  const stop = model.corner.stop

  const bar = (
    index: number,
    id: ShaftId,
    title: string,
    fill: PatternName,
    ink: Ink,
    from: number,
    limit: number | undefined,
    left: (parts: PartPositions) => number,
    spare: number,
    absent: ShaftBar['absent'] = null,
  ): ShaftBar => {
    const leftAt = (wheel: number): number => left(model.parts(wheel))
    const centre = frame.shafts.x + pitch * (index + 0.5) + (frame.small ? 1 : 2)
    const end = absent === null ? limit : bump
    const wanted = end === undefined ? Number.NEGATIVE_INFINITY : axis.y(end)
    const top = Math.max(wanted, ceiling)
    const bottom = Math.max(axis.y(from), top)
    const step = id === 'stop' ? half : 2 * half
    const long = (count: number): number => (id === 'stop' && count % 2 === 1 ? 4 : 7)
    return {
      id,
      title,
      fill,
      ink,
      centre,
      x: centre - width / 2,
      width,
      from,
      top,
      bottom,
      cut: wanted < ceiling - 0.5,
      ticks: absent === null ? leftTicks(axis, leftAt, from, axis.wheelAt(top), step, long) : [],
      absent,
      left: leftAt,
      spare: end !== undefined && end - bump < 1e-6 ? null : spare,
    }
  }

  const { limits } = budget
  const absent = stop === null ? 'no stop' : engagement === null ? 'not met' : null
  const touch = absent === null ? Math.max(droop, engagement ?? droop) : 0
  return [
    bar(0, 'shock', 'Shock', 'gas', 'ink2', droop, limits['shock closed'], p => p.shockLeft, budget.shockLeftAtBump),
    bar(1, 'main', 'Main', 'springs', 'coil', droop, limits['coil bind'], mainLeft, budget.mainSpring.leftAtBump),
    bar(
      2,
      'stop',
      'Stop',
      'stop',
      'stop',
      touch,
      limits['stop closed'],
      p => p.stopLeft ?? 0,
      model.parts(bump).stopLeft ?? 0,
      absent,
    ),
  ]
}
