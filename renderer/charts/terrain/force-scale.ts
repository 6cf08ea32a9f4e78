import { scaleLinear } from 'd3'
import { fromUnit, type System, toUnit } from '../../../core/units/quantity.ts'
import type { Trace } from '../../workers/messages.ts'
import type { Strip } from './terrain-frame.ts'

export interface ForceScale {
  readonly y: (force: number) => number
  /** Forces above this are drawn broken off: steel on steel pushes many times harder than springs and stop. N. */
  readonly cap: number
  /** N. */
  readonly ticks: readonly number[]
}

interface Travelled {
  readonly trace: Trace
  readonly bump: number
  readonly droop: number
}

/** Room above the highest force drawn, as a share of it. */
const AIR = 0.12

/** One scale for all forces over time: as high as they get inside the travel. */
export function forceScale(rides: readonly Travelled[], strip: Strip, system: System): ForceScale {
  let inside = 0
  let highest = 0
  let lowest = 0
  for (const { trace, bump, droop } of rides)
    for (let i = 0; i < trace.time.length; i += 1) {
      const most = Math.max(trace.suspensionForce[i]!, trace.stopForce[i]!)
      highest = Math.max(highest, most)
      if (trace.wheel[i]! > bump || trace.wheel[i]! < droop) continue
      inside = Math.max(inside, most)
      lowest = Math.min(lowest, trace.suspensionForce[i]!)
    }
  const top = Math.max(inside > 0 ? inside : highest, 1)
  const floor = Math.max(lowest, -top / 2)
  const cap = top * (1 + AIR)
  const scale = scaleLinear([toUnit(floor, 'force', system), toUnit(cap, 'force', system)], [strip.bottom, strip.top])
  const perNewton = (strip.top - strip.bottom) / (cap - floor)
  const y = (force: number): number => strip.bottom + (Math.min(cap, Math.max(floor, force)) - floor) * perNewton
  const count = Math.max(1, Math.floor((strip.bottom - strip.top) / 34))
  return { y, cap, ticks: scale.ticks(count).map(tick => fromUnit(tick, 'force', system)) }
}

/** Times at which a force leaves the scale. */
export function clippedTimes(trace: Trace, { cap }: ForceScale): number[] {
  const times: number[] = []
  for (let i = 0; i < trace.time.length; i += 1)
    if (trace.suspensionForce[i]! > cap && (i === 0 || trace.suspensionForce[i - 1]! <= cap)) times.push(trace.time[i]!)
  return times
}
