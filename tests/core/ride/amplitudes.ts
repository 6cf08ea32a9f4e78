import { asRoad } from '../../../core/ride/road.ts'
import type { Linear } from './corners.ts'
import { drivenLinear } from './driven-linear.ts'

/** Amplitudes over a sine road of frequency `w`, rad/s, over its own, once all else has died away. */
export function amplitudes(linear: Linear, w: number) {
  const a = 5e-4
  const settled = Math.ceil((20 * w) / (2 * Math.PI)) * ((2 * Math.PI) / w)
  const waves = Math.max(4, Math.ceil((4 * w) / (2 * Math.PI)))
  const sample = (2 * Math.PI) / w / 64
  const road = asRoad({
    duration: settled + waves * 64 * sample,
    height: time => a * Math.sin(w * time),
    rise: time => a * w * Math.cos(w * time),
    breaks: [settled],
    longestStep: () => Math.min(0.02, 1 / w),
  })
  const sums = { chassis: [0, 0], wheel: [0, 0], travel: [0, 0] }
  let rest: readonly [number, number] | null = null
  let count = 0
  drivenLinear(linear, road, {
    tolerance: 1e-3,
    sample,
    heard: (time, state, _, kind) => {
      rest ??= [state[0]!, state[2]!]
      if (kind !== 'sample' || time < settled - sample / 2 || count === waves * 64) return
      count += 1
      const [chassis, wheel] = [state[0]! - rest[0], state[2]! - rest[1]]
      for (const [name, value] of Object.entries({ chassis, wheel, travel: chassis - wheel })) {
        const sum = sums[name as keyof typeof sums]
        sum[0]! += value * Math.sin(w * time)
        sum[1]! += value * Math.cos(w * time)
      }
    },
  })
  const of = (name: keyof typeof sums): number => (2 * Math.hypot(...sums[name])) / count / a
  return { chassis: of('chassis'), wheel: of('wheel'), travel: of('travel') }
}
