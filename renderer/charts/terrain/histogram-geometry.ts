import { scaleLinear } from 'd3'
import type { Column } from '../plate/frame.ts'
import type { WheelAxis } from '../plate/wheel-axis.ts'

/** Share of the time at the wheel positions of one bar. */
export interface HistogramBar {
  readonly from: number
  readonly to: number
  readonly share: number
}

/** Bars of a histogram that spans the travel evenly from full droop up. */
export function histogramBars(shares: readonly number[], droop: number, bump: number): HistogramBar[] {
  const width = (bump - droop) / Math.max(1, shares.length)
  return shares.map((share, i) => ({
    from: droop + i * width,
    to: i === shares.length - 1 ? bump : droop + (i + 1) * width,
    share,
  }))
}

export type HistogramZone = 'droop' | 'coilover' | 'engagement'

/** Where a wheel position counts: on the stop from engagement up, else by ride height. */
export const zoneOf = (wheel: number, engagement: number | null): HistogramZone =>
  engagement !== null && wheel >= engagement ? 'engagement' : wheel >= 0 ? 'coilover' : 'droop'

export interface HistogramScale {
  /** Shares above this are drawn broken off. */
  readonly cap: number
  readonly x: (share: number) => number
  readonly ticks: readonly number[]
}

/** A bar this many times longer than the third longest would flatten all the others. */
const OUTSTANDING = 2.2

/** One scale for every histogram beside it. A car that stands for most of a run has a bar that is cut instead of flattening the rest. */
export function histogramScale(
  all: readonly (readonly HistogramBar[])[],
  column: Column,
  inset: number,
): HistogramScale {
  const tops = all.map(bars => bars.map(({ share }) => share).sort((a, b) => b - a))
  const most = Math.max(1e-6, ...tops.map(([first = 0]) => first))
  const third = Math.max(1e-6, ...tops.map(shares => shares[2] ?? shares.at(-1) ?? 0))
  const cap = Math.min(most, OUTSTANDING * third)
  const right = Math.max(column.x + 2, column.right - inset)
  const scale = scaleLinear([0, cap], [column.x, right])
  return {
    cap,
    x: share => scale(Math.min(cap, Math.max(0, share))),
    ticks: scale.ticks(Math.max(1, Math.floor((right - column.x) / 46))).filter(tick => tick > 0),
  }
}

/** The outline of a histogram from its foot on the axis up. */
export function stepsPath(bars: readonly HistogramBar[], axis: Pick<WheelAxis, 'y'>, { x }: HistogramScale): string {
  const [first, last] = [bars[0], bars.at(-1)]
  if (first === undefined || last === undefined) return ''
  const at = (px: number, wheel: number): string => `${px.toFixed(1)} ${axis.y(wheel).toFixed(1)}`
  const steps = bars.map(({ from, to, share }) => `L${at(x(share), from)}L${at(x(share), to)}`)
  return `M${at(x(0), first.from)}${steps.join('')}L${at(x(0), last.to)}`
}

/** Parts of the bars that lie in one zone, closed to be filled; empty where the wheel never was. */
export function zonePath(
  bars: readonly HistogramBar[],
  zone: HistogramZone,
  engagement: number | null,
  axis: WheelAxis,
  scale: HistogramScale,
): string {
  const edges = [0, ...(engagement === null ? [] : [engagement])].sort((a, b) => a - b)
  const parts = bars.flatMap(({ from, to, share }) => {
    if (share <= 0) return []
    const cuts = [from, ...edges.filter(edge => edge > from && edge < to), to]
    return cuts.slice(1).flatMap((end, i) => {
      const start = cuts[i]!
      return zoneOf((start + end) / 2, engagement) === zone ? [{ from: start, to: end, share }] : []
    })
  })
  return parts
    .map(({ from, to, share }) => {
      const [left, right] = [scale.x(0).toFixed(1), scale.x(share).toFixed(1)]
      const [bottom, top] = [axis.y(from).toFixed(1), axis.y(to).toFixed(1)]
      return `M${left} ${bottom}H${right}V${top}H${left}z`
    })
    .join('')
}

/** Bars that are cut: where, and what they would reach. */
export const cutBars = (bars: readonly HistogramBar[], { cap }: HistogramScale): HistogramBar[] =>
  bars.filter(({ share }) => share > cap * (1 + 1e-9))
