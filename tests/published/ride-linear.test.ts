import { describe, it } from 'vitest'
import { cornerModel } from '../../core/corner/corner.ts'
import { ride } from '../../core/ride/ride.ts'
import { asRoad } from '../../core/ride/road.ts'
import { close } from '../close.ts'
import { amplitudes } from '../core/ride/amplitudes.ts'
import { type Linear, linearCorner } from '../core/ride/corners.ts'
import { drivenLinear } from '../core/ride/driven-linear.ts'

/** A set of values of R. Rajamani, Vehicle Dynamics and Control, ch. 10 (from memory); results recomputed from its transfer functions. */
const rajamani: Linear = { sprung: 250, unsprung: 45, spring: 16_000, damper: 1000, tire: 160_000 }

describe('a linear quarter car over sine roads', () => {
  it.each([
    [2, 1.0738976, 1.0078455],
    [5, 1.6377198, 1.0705085],
    [8, 2.4724557, 1.1057158],
    [10, 1.3580872, 0.9683714],
    [20, 0.3023449, 1.019304],
    [60, 0.178777, 2.5509007],
  ])('moves as its transfer functions say at %d rad/s', (w, chassis, wheel) => {
    const found = amplitudes(rajamani, w)
    close(found.chassis, chassis, { rel: 1e-4 }, 'chassis')
    close(found.wheel, wheel, { rel: 1e-4 }, 'wheel')
  })

  /**
   * What no spring or damper can change: D. Karnopp, How significant are transfer function relations and invariant points for a quarter car
   * suspension model?, Vehicle System Dynamics 47 (2009); J. K. Hedrick and T. Butsuen, Invariant properties of automotive suspensions, Proc. I. Mech. E. 204 (1990).
   */
  it.each([
    [16_000, 300],
    [16_000, 1500],
    [40_000, 1000],
    [9000, 4000],
  ])('has its invariant points, spring %d N/m, damper %d N·s/m', (spring, damper) => {
    const { sprung, unsprung, tire } = rajamani
    const linear = { ...rajamani, spring, damper }
    close(
      amplitudes(linear, Math.sqrt(tire / unsprung)).chassis,
      unsprung / sprung,
      { rel: 1e-3 },
      'chassis at wheel hop',
    )
    const both = Math.sqrt(tire / (sprung + unsprung))
    close(amplitudes(linear, both).travel, (sprung + unsprung) / sprung, { rel: 1e-3 }, 'travel where both heave')
  })

  /** Time between peaks of a free car: the body mode of the same set, 1.225305 Hz undamped, ζ 0.217656. */
  it('rings at its damped frequency and dies away at its damping', () => {
    const level = asRoad({ duration: 3, height: () => 0, rise: () => 0, breaks: [], longestStep: () => 0.02 })
    const peaks: [number, number][] = []
    let [rest, before, rising] = [Number.NaN, 0, false]
    drivenLinear(rajamani, level, {
      tolerance: 1e-3,
      sample: 1e-3,
      besides: [-0.05, 0, 0, 0],
      heard: (time, state, _, kind) => {
        if (kind !== 'sample') return
        if (Number.isNaN(rest)) rest = state[0]! + 0.05
        const now = state[0]! - rest
        if (rising && now < before) peaks.push([time, before])
        rising = now > before
        before = now
      },
    })
    const [[t1, a1], [t2, a2]] = [peaks[1]!, peaks[2]!]
    close(1 / (t2 - t1), 1.225305 * Math.sqrt(1 - 0.217656 ** 2), { rel: 2e-3 })
    close(Math.log(a1 / a2), (2 * Math.PI * 0.217656) / Math.sqrt(1 - 0.217656 ** 2), { rel: 5e-3 })
  })

  /** T. D. Gillespie, Fundamentals of Vehicle Dynamics (SAE 1992), ch. 5, front of his example (from memory): 957 lb on 143 and 1198 lb/in rings at 1.1425 Hz (g = 386 in/s²). */
  it('rings on its ride rate when the wheel is light', () => {
    const [lb, rate] = [0.45359237, 175.126836]
    const mass = 957 * lb
    const linear = { sprung: mass, unsprung: mass * 2e-3, spring: 143 * rate, damper: 0, tire: 1198 * rate }
    const model = cornerModel(linearCorner({ ...linear, damper: 20 }))
    const bump = {
      id: '',
      kind: 'measured',
      speed: 5,
      profile: { distance: [0, 0.5, 1, 40], height: [0, 0.02, 0, 0] },
    } as const
    const ridden = ride(model, bump)
    if (!ridden.ok) throw new Error(ridden.reason)
    const { time, wheel } = ridden.trace
    const ups = [...wheel.keys()].filter(i => i > 0 && time[i]! > 2 && wheel[i - 1]! < 0 && wheel[i]! >= 0)
    close((ups.length - 1) / (time[ups.at(-1)!]! - time[ups[0]!]!), 1.1425, { rel: 2e-3 })
  })
})
