import { type ScaleLinear, scaleLinear } from 'd3'
import { INCH } from '../../../core/units/constants.ts'
import type { System } from '../../../core/units/quantity.ts'
import type { PlateExtent } from './extent.ts'
import type { Frame } from './frame.ts'

/** Wheel travel against height on the plate; full bump is up. */
export interface WheelAxis {
  /** px of a wheel position, m. */
  readonly y: (wheel: number) => number
  readonly wheelAt: (y: number) => number
  readonly pixelsPerMetre: number
  /** Nothing is drawn above this, px. */
  readonly top: number
  readonly bottom: number
}

/** Room above a reserve for what is left of it, px. */
export const RESERVE_HEAD = 22

/** Travel shorter than this is drawn as if it were this long, m. */
const LEAST_TRAVEL = INCH

export function wheelAxis(frame: Frame, { bump, droop, reserve }: Omit<PlateExtent, 'force'>): WheelAxis {
  const missing = Math.max(0, LEAST_TRAVEL - (bump - droop)) / 2
  const highest = bump + missing
  const lowest = droop - missing
  const travel = highest - lowest
  const room = Math.max(frame.height - frame.head, 1)
  const below = Math.min(frame.small ? 40 : 48, room * 0.25)
  const spare = Math.max(0, reserve - highest) / travel
  const label = RESERVE_HEAD + 1
  const wanted = ((room - below) * spare + label) / (1 + spare)
  const above = Math.min(Math.max(wanted, frame.small ? 40 : 52), room * 0.17 + label)
  const range: [number, number] = [frame.height - below, frame.head + Math.min(above, room * 0.4)]
  const scale: ScaleLinear<number, number> = scaleLinear([lowest, highest], range)
  return {
    y: wheel => scale(wheel),
    wheelAt: y => scale.invert(y),
    pixelsPerMetre: (range[0] - range[1]) / travel,
    top: frame.head,
    bottom: frame.height,
  }
}

export interface RulerTick {
  readonly wheel: number
  readonly y: number
  /** Every second tick is long and carries its number. */
  readonly long: boolean
}

const STEPS: Readonly<Record<System, readonly number[]>> = {
  inch: [0.5, 1, 2, 5, 10, 20, 50].map(inches => inches * INCH),
  metric: [0.005, 0.01, 0.025, 0.05, 0.1, 0.25, 0.5, 1],
}
/** Long ticks are at least this far apart, px. */
const LONG_APART = 34

/** Ticks of the ruler inside the travel: whole inches or millimetres, counted from ride height. */
export function rulerTicks(axis: WheelAxis, bump: number, droop: number, system: System): RulerTick[] {
  const steps = STEPS[system]
  const step = steps.find(length => 2 * length * axis.pixelsPerMetre >= LONG_APART) ?? (steps.at(-1) as number)
  const ticks: RulerTick[] = []
  for (let count = Math.ceil(droop / step - 1e-9); count <= bump / step + 1e-9; count++)
    ticks.push({ wheel: count * step, y: axis.y(count * step), long: count % 2 === 0 })
  return ticks
}
