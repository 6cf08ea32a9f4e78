import { scaleLinear } from 'd3'
import { SHAFT_SPEED_MOST } from '../../../core/runs/figures.ts'
import { fromUnit, type System, toUnit } from '../../../core/units/quantity.ts'
import { type HistogramBar, histogramBars } from '../terrain/histogram-geometry.ts'
import type { Strip } from '../terrain/terrain-frame.ts'

export interface SpeedScale {
  /** px of a shaft speed, m/s, held to the strip; closing is up. */
  readonly y: (speed: number) => number
  /** m/s */
  readonly ticks: readonly number[]
}

/** Slower than this a scale is not drawn larger, m/s. */
const LEAST = 0.25
/** Share of the time that may lie past the scale's ends, where it is drawn at them. */
const PAST = 2e-3

/** Bars of a histogram of shaft speeds. */
export const speedBars = (shares: readonly number[]): HistogramBar[] =>
  histogramBars(shares, -SHAFT_SPEED_MOST, SHAFT_SPEED_MOST)

/** One scale, as far up as down, that holds nearly all of the time of every run drawn. */
export function speedScale(runs: readonly (readonly HistogramBar[])[], strip: Strip, system: System): SpeedScale {
  const reach = runs.flatMap(bars => {
    let past = 0
    const rare = [...bars]
      .sort((a, b) => Math.max(-b.from, b.to) - Math.max(-a.from, a.to))
      .find(({ share }) => {
        past += share
        return past > PAST
      })
    return rare === undefined ? [] : [Math.max(-rare.from, rare.to)]
  })
  const most = Math.max(LEAST, ...reach)
  const y = scaleLinear([-most, most], [strip.bottom - 1, strip.top]).clamp(true)
  const shown = scaleLinear([-toUnit(most, 'shaftSpeed', system), toUnit(most, 'shaftSpeed', system)], [0, 1])
  const count = Math.max(2, Math.floor((strip.bottom - strip.top) / 30))
  return { y: speed => y(speed), ticks: shown.ticks(count).map(tick => fromUnit(tick, 'shaftSpeed', system)) }
}
