import { describe, expect, it } from 'vitest'
import { axleBudget } from '../../core/budget/budget.ts'
import { asRoad } from '../../core/ride/road.ts'
import { GRAVITY } from '../../core/units/constants.ts'
import { close } from '../close.ts'
import { plainCorner } from '../core/plain-corner.ts'
import type { Linear } from '../core/ride/corners.ts'
import { drivenLinear } from '../core/ride/driven-linear.ts'

/** A free motion e^{λt}: what it loses, 1/s, negative, and how fast it swings, rad/s. */
interface Exponent {
  readonly decay: number
  readonly swing: number
}

/**
 * Chassis height and speed, wheel height and speed of a free linear quarter car in one mode, 1 mm of chassis or wheel, whichever moves more.
 * By the chassis' own equation, m·λ²·zs = (c·λ + k)·(zu − zs): wheel over chassis = 1 + m·λ²/(c·λ + k).
 */
function inMode({ sprung, spring, damper }: Linear, { decay, swing }: Exponent): number[] {
  const [re, im] = [sprung * (decay ** 2 - swing ** 2), 2 * sprung * decay * swing]
  const [below, beside] = [damper * decay + spring, damper * swing]
  const size = below ** 2 + beside ** 2
  const wheel = [1 + (re * below + im * beside) / size, (im * below - re * beside) / size] as const
  const scale = 1e-3 / Math.max(1, Math.hypot(...wheel))
  return [1, decay, wheel[0], wheel[0] * decay - wheel[1] * swing].map(value => value * scale)
}

/** How far the ride is after a time from where its mode should have brought it, over where that is. */
function astray(linear: Linear, exponent: Exponent): number {
  const start = inMode(linear, exponent)
  const period = (2 * Math.PI) / exponent.swing
  const level = asRoad({ duration: period, height: () => 0, rise: () => 0, breaks: [], longestStep: () => 0.02 })
  const end = drivenLinear(linear, level, { tolerance: 1e-3, besides: start })
  const left = Math.exp(exponent.decay * period)
  /** Speeds are taken over the mode's own, so that a height and a speed count alike. */
  const parts = (state: readonly number[]): number[] =>
    state.map((value, i) => (i % 2 ? value / exponent.swing : value))
  const off = parts(end.map((value, i) => value - left * start[i]!))
  return Math.hypot(...off) / (left * Math.hypot(...parts(start)))
}

describe('a ride let go in one of its modes is back in it after one period, smaller by e^(decay × period)', () => {
  const rajamani = { sprung: 250, unsprung: 45, spring: 16_000, tire: 160_000 }
  const golden = { sprung: 250, unsprung: 37.5, spring: 63.3 * 250, damper: 6 * 250, tire: 653 * 250 }
  const damped = (hertz: number, zeta: number): Exponent => ({
    decay: -2 * Math.PI * hertz * zeta,
    swing: 2 * Math.PI * hertz * Math.sqrt(1 - zeta ** 2),
  })

  it.each<[string, Linear, Exponent]>([
    [
      'R. Rajamani, Vehicle Dynamics and Control, ch. 10 (parameters from memory; recomputed), undamped: body 7.62195 rad/s',
      { ...rajamani, damper: 0 },
      { decay: 0, swing: 7.62195 },
    ],
    ['the same: wheel 62.58608 rad/s', { ...rajamani, damper: 0 }, { decay: 0, swing: 62.58608 }],
    [
      'the same with 1000 N·s/m: body 1.225305 Hz, ζ 0.217656',
      { ...rajamani, damper: 1000 },
      damped(1.225305, 0.217656),
    ],
    ['the same: wheel 9.861431 Hz, ζ 0.184558', { ...rajamani, damper: 1000 }, damped(9.861431, 0.184558)],
    [
      'the golden car (World Bank Technical Paper 46, 1986; exponents as in michalsorel/iri): body −2.59007 ± 7.32340i',
      golden,
      { decay: -2.5900737867, swing: 7.3233973857 },
    ],
    ['the golden car: axle −20.40993 ± 64.42263i', golden, { decay: -20.4099262133, swing: 64.4226261054 }],
    [
      'wheel hop of 40 kg on 20.63 and 300 N/mm: 14.25 Hz (Barton & Fieldhouse, Automotive Chassis Engineering, Springer 2018, p. 213), under a chassis too heavy to move',
      { sprung: 4000, unsprung: 40, spring: 20_630, damper: 0, tire: 300_000 },
      { decay: 0, swing: 2 * Math.PI * 14.25 },
    ],
  ])('%s', (name, linear, exponent) => {
    // The book gives 14.25 Hz to four figures; the others have seven.
    const room = name.startsWith('wheel hop') ? 4e-3 : 2e-4
    expect(astray(linear, exponent)).toBeLessThan(room)
  })

  it('and is not there by another exponent, a hundredth off', () => {
    expect(astray(golden, { decay: -2.5900737867, swing: 7.3233973857 * 1.01 })).toBeGreaterThan(2e-2)
  })

  it('a mass of ωn 10 rad/s and ζ 0.1 loses a logarithmic decrement of 0.631483883400 each swing (closed form, recomputed)', () => {
    const [mass, zeta, natural] = [300, 0.1, 10]
    const linear = {
      sprung: mass,
      unsprung: 0.03,
      spring: mass * natural ** 2,
      damper: 2 * zeta * natural * mass,
      tire: 1e9,
    }
    const swing = natural * Math.sqrt(1 - zeta ** 2)
    const level = asRoad({
      duration: (2 * Math.PI) / swing,
      height: () => 0,
      rise: () => 0,
      breaks: [],
      longestStep: () => 0.02,
    })
    const [end] = drivenLinear(linear, level, { tolerance: 1e-3, besides: [1e-3, 0, 0, 0] })
    close(Math.log(1e-3 / end!), 0.6314838834, { abs: 2e-4 })
  })
})

/** Barton & Fieldhouse, p. 177, eq. 3.28: W = Ws·exp((x − xs)/ds) has the same frequency, √(g/ds)/2π, whatever it carries. */
describe('a spring of constant frequency, laid out row by row', () => {
  const ds = 0.25
  const rows = Array.from({ length: 81 }, (_, i) => ({
    deflection: i * 0.005,
    force: i === 0 ? 0 : 1200 * Math.exp((i * 0.005) / ds),
  }))

  it.each([0.1025, 0.2025, 0.3525])('pushed in %d m at ride height it rides at √(g/ds)/2π', pushed => {
    const carried = (1200 * Math.exp(pushed / ds)) / GRAVITY
    const corner = plainCorner({
      cornerMass: carried + 40,
      unsprungMass: 40,
      springs: {
        springs: [{ name: 'slack', rate: 1, freeLength: 1, solidLength: 0.1 }],
        preload: -0.6,
        crossover: null,
      },
      stop: { kind: 'elastomer', gap: -pushed, curve: rows },
    })
    const budget = axleBudget(
      { id: 'front', suspension: 'independent', track: 1.5, antiRollRate: 0, corner },
      { units: 'metric' },
    )
    close(budget.ride.frequency, Math.sqrt(GRAVITY / ds) / (2 * Math.PI), { rel: 5e-4 })
    close(budget.static.position, 0, { abs: 1e-5 })
  })
})
