import { describe, expect, it } from 'vitest'
import { DormandPrince, type Slopes } from '../../core/numerics/dormand-prince.ts'
import { allClose, close } from '../close.ts'
import { odex } from './odex.ts'

/** Goes from one time to another with steps as long as the tolerance lets them be. */
function solve(slopes: Slopes, start: readonly number[], from: number, to: number, tolerance: number) {
  const solver = new DormandPrince(slopes, start.length)
  const allowed = new Float64Array(start.length).fill(tolerance)
  solver.begin(from, Float64Array.from(start))
  let length = 1e-3
  let steps = 0
  while (solver.time < to) {
    const step = Math.min(length, to - solver.time)
    const error = solver.attempt(step, allowed)
    length = step * Math.min(5, Math.max(0.2, 0.9 * Math.max(error, 1e-12) ** -0.2))
    if (error > 1) continue
    solver.advance()
    steps += 1
    if (to - solver.time < 1e-13 * to) break
  }
  return { state: [...solver.start], steps }
}

/** Slopes written as a list, as the sources print them. */
const system =
  (f: (y: Float64Array) => readonly number[]): Slopes =>
  (_, state, slopes) =>
    slopes.set(f(state))

/**
 * Problems of class B of T. E. Hull, W. H. Enright, B. M. Fellen and A. E. Sedgwick, Comparing Numerical Methods for Ordinary Differential
 * Equations, SIAM J. Numer. Anal. 9 (1972) 603, and the period and amplitude of B. van der Pol's oscillator. Values at the end recomputed
 * to all digits with general solvers (DOP853, Radau, LSODA); those of B5 are elliptic functions, m = 0.51.
 */
const detest: readonly [
  string,
  (y: Float64Array) => readonly number[],
  readonly number[],
  number,
  readonly number[],
][] = [
  [
    'B1, two species',
    ([a = 0, b = 0]) => [2 * (a - a * b), -(b - a * b)],
    [1, 3],
    20,
    [0.676187600857661, 0.186081609964003],
  ],
  [
    'B2, a linear chemical reaction',
    ([a = 0, b = 0, c = 0]) => [-a + b, a - 2 * b + c, b - c],
    [2, 0, 1],
    20,
    [1.00000000103058, 1, 0.999999998969423],
  ],
  [
    'B3, a nonlinear chemical reaction',
    ([a = 0, b = 0]) => [-a, a - b * b, b * b],
    [1, 0, 0],
    20,
    [2.06115362243856e-9, 0.0525722802204851, 0.947427717718361],
  ],
  [
    'B4, a line on a torus',
    ([a = 0, b = 0, c = 0]) => {
      const r = Math.hypot(a, b)
      return [-b - (a * c) / r, a - (b * c) / r, a / r]
    },
    [3, 0, 0],
    20,
    [0.982695092800653, 2.19844708169493, 0.912945250727628],
  ],
  [
    'B5, a rigid body',
    ([a = 0, b = 0, c = 0]) => [b * c, -a * c, -0.51 * a * b],
    [0, 1, 1],
    12,
    [-0.705397809522572, -0.708811632467158, 0.863846690370222],
  ],
  [
    'van der Pol, μ = 1',
    ([x = 0, v = 0]) => [v, (1 - x * x) * v - x],
    [2, 0],
    20,
    [2.00814976217495, -0.0425088752732021],
  ],
]

describe('the integrator on problems with published solutions', () => {
  it.each(detest)('%s', (_, f, start, until, end) => {
    const { state } = solve(system(f), start, 0, until, 1e-11)
    // Local errors of 1e-11 over some thousand steps.
    allClose(state, end, { abs: 2e-9 })
  })

  it('gets better with the fourth power of the step or more: a tolerance 10⁵ times tighter costs about ten times the steps', () => {
    const [, f, start, until, end] = detest[0]!
    const [loose, tight] = [1e-5, 1e-10].map(tolerance => solve(system(f), start, 0, until, tolerance))
    expect(tight!.steps / loose!.steps).toBeGreaterThan(6)
    expect(tight!.steps / loose!.steps).toBeLessThan(14)
    close(loose!.state[0]!, end[0]!, { abs: 1e-3 })
  })

  /** R. F. Arenstorf, Periodic solutions of the restricted three-body problem, Amer. J. Math. 85 (1963) 27; start and period as in Hairer, Nørsett, Wanner, §II.0. */
  it('Arenstorf’s orbit closes', () => {
    const moon = 0.012277471
    const earth = 1 - moon
    const f = ([x = 0, y = 0, vx = 0, vy = 0]: Float64Array): readonly number[] => {
      const d1 = Math.hypot(x + moon, y) ** 3
      const d2 = Math.hypot(x - earth, y) ** 3
      return [
        vx,
        vy,
        x + 2 * vy - (earth * (x + moon)) / d1 - (moon * (x - earth)) / d2,
        y - 2 * vx - (earth * y) / d1 - (moon * y) / d2,
      ]
    }
    const start = [0.994, 0, 0, -2.00158510637908]
    const { state } = solve(system(f), start, 0, 17.065216560158, 1e-13)
    allClose(state.slice(0, 2), start.slice(0, 2), { abs: 1e-6 })
  })

  it('a damped oscillator follows its closed form, ends and insides of steps alike', () => {
    const [wn, zeta] = [10, 0.1]
    const wd = wn * Math.sqrt(1 - zeta ** 2)
    const exact = (t: number): number =>
      Math.exp(-zeta * wn * t) * (Math.cos(wd * t) + ((zeta * wn) / wd) * Math.sin(wd * t))
    const f = system(([x = 0, v = 0]) => [v, -2 * zeta * wn * v - wn * wn * x])
    close(exact(1), -0.336851680590413, { rel: 1e-12 })
    close(solve(f, [1, 0], 0, 1, 1e-11).state[0]!, exact(1), { abs: 1e-9 })
    const inside = new Float64Array(2)
    const worst = (h: number): number => {
      const solver = new DormandPrince(f, 2)
      solver.begin(0, Float64Array.from([1, 0]))
      solver.attempt(h, new Float64Array(2).fill(1))
      return Math.max(
        ...[0.1, 0.25, 0.5, 0.75, 0.9].map(share => {
          solver.within(share, inside)
          return Math.abs(inside[0]! - exact(share * h))
        }),
      )
    }
    // The continuous extension is of order 4: half the step, at least 2⁴ times nearer.
    expect(worst(0.04) / worst(0.02)).toBeGreaterThan(2 ** 4.5)
  })

  it('what is only carried along comes out as if it were a state, and costs no accuracy', () => {
    const f: Slopes = (_, state, slopes) => {
      slopes[0] = -state[0]!
      slopes[1] = state[0]! ** 2
    }
    const solver = new DormandPrince(f, 1, 2)
    solver.begin(0, Float64Array.from([1, 0]))
    for (let i = 0; i < 100; i += 1) {
      solver.attempt(0.02, Float64Array.from([1]))
      solver.advance()
    }
    close(solver.start[1]!, (1 - Math.exp(-4)) / 2, { abs: 1e-10 })
  })

  it('agrees with an independent solver of another kind', () => {
    const [, f, start] = detest[4]!
    const other = odex(3)
    Object.assign(other, { absoluteTolerance: 1e-13, relativeTolerance: 1e-13, maxSteps: 100_000 })
    const { y } = other.solve((_, state) => [...f(Float64Array.from(state))], 0, [...start], 20)
    allClose(solve(system(f), start, 0, 20, 1e-12).state, y, { abs: 1e-9 })
    allClose(y, [-0.93965707987292, -0.342117775400075, 0.741412659619995], { abs: 1e-11 })
  })
})
