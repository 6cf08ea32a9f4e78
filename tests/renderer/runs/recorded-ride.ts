import { cornerModel } from '../../../core/corner/corner.ts'
import type { Axle, Plan, Terrain } from '../../../core/plan/schema.ts'
import { ride } from '../../../core/ride/ride.ts'

/** Rows a second of the recording. */
const RATE = 500
/** V at ride height, and for a metre of shaft travel. */
const SENSOR = { zero: 2.5, perMetre: 12 } as const

export interface RecordedRide {
  readonly text: string
  readonly rows: number
  /** Moments at which it stands at ride height and hangs at full droop, s. */
  readonly stands: number
  readonly hangs: number
}

export interface HowWritten {
  readonly delimiter?: string
  readonly decimal?: string
  /** What its sensor puts beside the truth, V, and how much of the travel the right side has. */
  readonly off?: number
  readonly right?: number
}

/**
 * A recording as a logger would write it, made by the ride simulation: the car stands for 3 s, hangs for 3 s, and is driven over a terrain;
 * two channels of shaft travel in volts.
 */
export function recordedRide(axle: Axle, terrain: Terrain, how: HowWritten = {}): RecordedRide {
  const { delimiter = ';', decimal = ',', off = 0, right = 0.8 } = how
  const model = cornerModel(axle.corner)
  const driven = ride(model, terrain)
  if (!driven.ok) throw new Error(driven.reason)
  const { time, wheel } = driven.trace
  const number = (value: number, digits: number): string => value.toFixed(digits).replace('.', decimal)
  const lines = ['A day in the gravel pit', ['time', `${axle.id} left`, `${axle.id} right`, 'battery'].join(delimiter)]
  lines.push(['s', 'V', 'V', 'V'].join(delimiter))
  let rows = 0
  const put = (at: number): void => {
    const shaft = model.linkage.at(at).shock
    const volts = (share: number): string => number(SENSOR.zero + off + SENSOR.perMetre * share * shaft, 4)
    lines.push([number(rows / RATE, 3), volts(1), volts(right), number(12.6, 1)].join(delimiter))
    rows += 1
  }
  const hold = (seconds: number, from: number, to = from): void => {
    const count = seconds * RATE
    for (let i = 0; i < count; i += 1) put(from + ((to - from) * i) / count)
  }
  hold(3, 0)
  hold(2, 0, model.droop)
  hold(3, model.droop)
  hold(2, model.droop, wheel[0])
  let k = 0
  for (let t = 0; t <= time.at(-1)!; t += 1 / RATE) {
    while (k < time.length - 2 && time[k + 1]! < t) k += 1
    const share = (t - time[k]!) / (time[k + 1]! - time[k]!)
    put(wheel[k]! + Math.min(1, share) * (wheel[k + 1]! - wheel[k]!))
  }
  return { text: `${lines.join('\r\n')}\r\n`, rows, stands: 1.5, hangs: 6.5 }
}

/** The rear axle of a plan's first setup, and its first terrain. */
export const rearOf = (plan: Plan): { axle: Axle; terrain: Terrain } => ({
  axle: plan.setups[0]!.axles.find(({ id }) => id === 'rear')!,
  terrain: plan.terrains[0]!,
})
