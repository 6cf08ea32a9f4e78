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
  for (const { trace, bump, droop } of rides) {
    const { wheel, suspensionForce, stopForce } = trace
    for (let i = 0; i < wheel.length; i += 1) {
      const held = suspensionForce[i]!
      const most = Math.max(held, stopForce[i]!)
      if (most > highest) highest = most
      if (wheel[i]! > bump || wheel[i]! < droop) continue
      if (most > inside) inside = most
      if (held < lowest) lowest = held
    }
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
  const { time, suspensionForce } = trace
  const times: number[] = []
  for (let i = 0; i < time.length; i += 1)
    if (suspensionForce[i]! > cap && (i === 0 || suspensionForce[i - 1]! <= cap)) times.push(time[i]!)
  return times
}
