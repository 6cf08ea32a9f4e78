import { describe, it } from 'vitest'
import { axleBudget } from '../../core/budget/budget.ts'
import type { Axle, Corner } from '../../core/plan/schema.ts'
import { GRAVITY, INCH, POUND } from '../../core/units/constants.ts'
import { close } from '../close.ts'
import { LB_IN, plainCorner } from '../core/plain-corner.ts'

/** Ride figures of a corner whose spring of a rate in N/m stands at the wheel, carrying a sprung mass in kg. */
function ride(rate: number, mass: number, tire = 200_000) {
  const corner: Corner = plainCorner({
    cornerMass: mass + 40,
    unsprungMass: 40,
    springs: {
      springs: [{ name: 'main', rate, freeLength: 4, solidLength: 0.5 }],
      preload: (mass * GRAVITY) / rate - 6 * INCH,
      crossover: null,
    },
    tire: { radius: 0.4, rate: tire, damping: 0 },
  })
  const axle: Axle = { id: 'front', suspension: 'independent', track: 1.5, antiRollRate: 0, corner }
  return axleBudget(axle, { units: 'inch' }).ride
}

describe('ride frequency', () => {
  // The book takes g as 386 in/s², which is worth 1.2e-4 of a frequency.
  it.each([
    [143, 957, 127.75, 1.1425],
    [100, 730, 92.3, 1.1119],
  ])(
    'with the tire: %s lb/in under %s lb on a tire of 1198 lb/in, ride rate %s lb/in, %s Hz (T. D. Gillespie, Fundamentals of Vehicle Dynamics, SAE 1992, ch. 5, from memory, recomputed)',
    (spring, pounds, rate, frequency) => {
      const mass = pounds * POUND
      const { frequencyOnTire, wheelRate } = ride(spring * LB_IN, mass, 1198 * LB_IN)
      close(wheelRate / LB_IN, spring, { rel: 1e-9 })
      close(frequencyOnTire, frequency, { rel: 2e-4 })
      close((mass * (2 * Math.PI * frequencyOnTire) ** 2) / LB_IN, rate, { abs: 0.006 })
    },
  )

  it.each([
    [1, 3.127],
    [10, 0.989],
  ])(
    'from a static deflection of %s in: %s Hz (Gillespie, ch. 5, from memory, recomputed)',
    (deflection, frequency) => {
      const mass = 300
      const { frequency: found } = ride((mass * GRAVITY) / (deflection * INCH), mass)
      close(found, frequency, { abs: 5e-4 })
    },
  )

  it('of 250 kg on 16 000 N/m and a tire of 160 000 N/m: 1.213986 Hz (parameters of R. Rajamani, Vehicle Dynamics and Control, ch. 10, from memory, recomputed)', () =>
    close(ride(16_000, 250, 160_000).frequencyOnTire, 1.213986, { abs: 5e-7 }))

  it('of 900 kg on 65 300 N/m: 0.852 m/s at 0.100 m (OpenStax, College Physics, ex. 16.6)', () =>
    close(2 * Math.PI * ride(65_300, 900).frequency * 0.1, 0.852, { abs: 5e-4 }))
})
