import { spawnSync } from 'node:child_process'
import path from 'node:path'
import { cornerModel } from '../../core/corner/corner.ts'
import { ride } from '../../core/ride/ride.ts'
import { fixedSteps } from '../core/ride/fixed-steps.ts'
import { odex } from '../published/odex.ts'
import {
  bump,
  corner,
  DAMPING,
  droop,
  rate,
  SQUEEZED,
  STOP,
  slopesOver,
  sprung,
  standing,
  unsprung,
  waves,
  whoops,
} from '../published/ride-equations.ts'
import type { Benchmark } from './benchmark.ts'
import { twoBesideOne } from './in-workers.ts'
import { inTurn } from './stopwatch.ts'

/** Nine seconds of whoops that touch the stop at nearly every wave. */
const terrain = whoops(0.2, 12)
const model = cornerModel(corner)
/** Time between wheel positions compared, s; and how near they must come, m: what a ride promises. */
const SAMPLE = 4e-3
const NEAR = 1e-5
/** A car at rest stays there: other solvers begin with the whoops. */
const FIRST = Math.round(1 / SAMPLE)

function driven(tolerance: number): Float64Array {
  const outcome = ride(model, terrain, { tolerance, sample: SAMPLE })
  if (!outcome.ok) throw new Error(`The ride did not get to its end: ${outcome.reason}.`)
  return outcome.trace.wheel
}

const apart = (wheel: ArrayLike<number>, exact: ArrayLike<number>): number => {
  let worst = 0
  for (let i = 0; i < Math.min(wheel.length, exact.length); i += 1)
    worst = Math.max(worst, Math.abs(wheel[i]! - exact[i]!))
  return worst
}

/** The first of some settings, loosest first, that comes near enough. */
function nearEnough<T>(settings: readonly T[], solve: (setting: T) => ArrayLike<number>, exact: ArrayLike<number>): T {
  const found = settings.find(setting => apart(solve(setting), exact) <= NEAR)
  if (found === undefined) throw new Error(`None of ${settings.join(', ')} comes within ${NEAR} m.`)
  return found
}

const TOLERANCES = [16, 12, 10, 8, 6, 4, 3, 2, 1.5, 1, 0.7, 0.5, 0.35, 0.25]
const exactly = (): Float64Array => driven(1e-5)

function byOdex(tolerance: number, count: number): number[] {
  const solver = odex(4)
  Object.assign(solver, {
    absoluteTolerance: tolerance,
    relativeTolerance: tolerance,
    maxSteps: 1e6,
    maxStepSize: 0.02,
  })
  const slopes = slopesOver(waves(terrain))
  let state = standing()
  const wheel = [state[2]! - state[0]!]
  for (let i = 1; i < count; i += 1) {
    state = solver.solve(slopes, 1 + (i - 1) * SAMPLE, state, 1 + i * SAMPLE).y
    wheel.push(state[2]! - state[0]!)
  }
  return wheel
}

function byLsoda(tolerance: number, count: number, rounds: number): { seconds: number; wheel: number[] } {
  const { spacing, height, speed } = terrain
  const given = {
    ...{ rate, droop, bump, sprung, unsprung, height, tolerance, rounds },
    ...{ compression: DAMPING.compression, rebound: DAMPING.rebound },
    ...{ gap: STOP.gap, stroke: STOP.stroke, area: STOP.area, charge: STOP.charge, gas: SQUEEZED },
    ...{ tireRate: corner.tire.rate, tireDamping: corner.tire.damping },
    ...{ turning: (2 * Math.PI * speed) / spacing, end: (terrain.count * spacing) / speed },
    start: standing(),
    times: Array.from({ length: count }, (_, i) => 1 + i * SAMPLE),
  }
  const script = path.join(import.meta.dirname, '../../tests/bench/rides-lsoda.py')
  const { status, stdout, stderr } = spawnSync('python3', [script], { input: JSON.stringify(given), encoding: 'utf8' })
  if (status !== 0) throw new Error(`python3 ended with code ${status}: ${stderr}`)
  return JSON.parse(stdout)
}

/** Why LSODA cannot be had; null when it can. */
const withoutScipy = (): string | null =>
  spawnSync('python3', ['-c', 'import scipy.integrate']).status === 0 ? null : 'python3 has no SciPy here'

/** Speeds of a sweep, m/s, a few to a share. */
const SPEEDS = 160
const speeds = Array.from({ length: SPEEDS / 4 }, (_, i) => Array.from({ length: 4 }, (_, j) => 6 + (4 * i + j) / 20))

const what = 'nine seconds of whoops, to a hundredth of a millimetre'

export const rides: readonly Benchmark[] = [
  {
    name: `${what}, beside even steps`,
    reference: 'Runge–Kutta of order 4 over the same forces',
    budget: 0.1,
    measure: async () => {
      const exact = exactly()
      const tolerance = nearEnough(TOLERANCES, driven, exact)
      const by = (length: number): number[] => fixedSteps(model, terrain, length, SAMPLE).wheel
      const length = nearEnough([4e-4, 2e-4, 1e-4, 8e-5, 5e-5, 4e-5, 2e-5, 1e-5], by, exact)
      return inTurn(
        () => driven(tolerance),
        () => by(length),
      )
    },
  },
  {
    name: `${what}, beside ODEX`,
    reference: 'ODEX from the registry',
    budget: 0.5,
    measure: async () => {
      const exact = exactly()
      const later = exact.subarray(FIRST)
      const tolerance = nearEnough(TOLERANCES, driven, exact)
      const count = later.length - Math.round(2 / SAMPLE)
      const other = nearEnough([1e-5, 3e-6, 1e-6, 3e-7, 1e-7, 3e-8, 1e-8, 1e-9], each => byOdex(each, count), later)
      return inTurn(
        () => driven(tolerance),
        () => byOdex(other, count),
      )
    },
  },
  {
    name: `${what}, beside LSODA`,
    reference: 'SciPy’s LSODA',
    // Its forces are a dozen lines of Python here: one straight spring, straight dampers.
    budget: 1 / 40,
    missing: withoutScipy,
    measure: async () => {
      const exact = exactly()
      const later = exact.subarray(FIRST)
      const tolerance = nearEnough(TOLERANCES, driven, exact)
      const tight = nearEnough(
        [1e-5, 3e-6, 1e-6, 3e-7, 1e-7, 3e-8, 1e-8, 1e-9],
        each => byLsoda(each, later.length, 1).wheel,
        later,
      )
      const own = (): number =>
        inTurn(
          () => driven(tolerance),
          () => undefined,
        ).value
      // Before and after the other, so that whatever else the machine does falls on both.
      const before = own()
      const reference = byLsoda(tight, later.length, 15).seconds * 1e9
      return { unit: 'ns', value: Math.min(before, own()), reference }
    },
  },
  {
    name: `${SPEEDS} rides of a sweep, two workers beside one`,
    reference: 'the time one worker takes; 1.8 times as fast is asked',
    budget: 1 / 1.8,
    measure: () =>
      twoBesideOne(new URL('../../tests/bench/ride-worker.ts', import.meta.url), speeds.slice(0, 20), speeds),
  },
]
