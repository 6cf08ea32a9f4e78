import type { Trace } from '../../workers/messages.ts'
import { valueAt } from './signal-path.ts'

/** One moment of a ride, SI. */
export interface RideMoment {
  readonly time: number
  readonly wheel: number
  readonly suspensionForce: number
  readonly stopForce: number
  readonly inAir: boolean
}

export const momentAt = (trace: Trace, time: number): RideMoment => ({
  time,
  wheel: valueAt(trace.time, trace.wheel, time),
  suspensionForce: valueAt(trace.time, trace.suspensionForce, time),
  stopForce: valueAt(trace.time, trace.stopForce, time),
  inAir: valueAt(trace.time, trace.tireForce, time) <= 0,
})

/** When the wheel stands highest: where a look at a ride begins. */
export function highestMoment({ time, wheel }: Trace): number {
  let best = 0
  for (let i = 1; i < wheel.length; i += 1) if (wheel[i]! > wheel[best]!) best = i
  return time[best] ?? 0
}

/** A wheel this close to full bump between two moments may well have met it, m. */
const CLOSE = 5e-4

/** Times at which the wheel comes to full bump. */
export function bottomTimes({ time, wheel }: Trace, bump: number): number[] {
  const level = bump - CLOSE
  const times: number[] = []
  for (let i = 0; i < wheel.length; i += 1)
    if (wheel[i]! > level && (i === 0 || wheel[i - 1]! <= level)) times.push(time[i]!)
  return times
}

/** Spans of time on the stop: where it pushes. */
export function spansOnStop({ time, stopForce }: Trace): [number, number][] {
  const spans: [number, number][] = []
  let from: number | null = null
  for (let i = 0; i < time.length; i += 1) {
    if (stopForce[i]! > 0) from ??= time[i]!
    else if (from !== null) {
      spans.push([from, time[i]!])
      from = null
    }
  }
  if (from !== null) spans.push([from, time.at(-1) ?? from])
  return spans
}
