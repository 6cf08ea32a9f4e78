import { circleArea } from '../forces/gas.ts'
import { springTravel } from '../forces/spring-pack.ts'
import type { Axle, Corner, Point } from '../plan/schema.ts'
import type { Measured } from './measured.ts'
import { valueAt } from './measured.ts'
import type { Input } from './monte-carlo.ts'

type Draft<T> = T extends readonly unknown[] | object ? { -readonly [K in keyof T]: Draft<T[K]> } : T

/** Something to draw for a measurement, and how it changes the axle. A point has three, a table two. */
export interface Variable extends Input {
  readonly path: string
  /** Half-width of its distribution. */
  readonly halfWidth: number
}

/** An axle that can be put off its measured values, and back. */
export interface TrialAxle {
  readonly variables: readonly Variable[]
  /**
   * The axle with every measurement off by its deviation, values that then contradict each other moved to where they do not.
   * One object, changed at the next call.
   */
  put(deviations: ArrayLike<number>): Axle
  /** Whether the axle last put has gas for its shafts to close on: false where a volume came out no more than a shaft pushes aside. */
  readonly gasLasts: boolean
}

interface Setter {
  readonly component: string
  readonly halfWidth: number
  readonly set: (deviation: number) => void
}

/** Coordinates of a point, one each. */
const coordinates = (point: Draft<Point>, name: string, halfWidth: number): Setter[] =>
  point.map((base, i) => ({
    component: `${name}${'xyz'[i]}`,
    halfWidth,
    set: deviation => {
      point[i] = base + deviation
    },
  }))

/** Columns of a table stretch, so that the farthest row is off by as much and the row of zeros stays. */
function columns(rows: Draft<{ wheel: number; shock: number; stop: number }[]>, halfWidth: number): Setter[] {
  return (['shock', 'stop'] as const).map(column => {
    const bases = rows.map(row => row[column])
    const farthest = Math.max(...bases.map(Math.abs))
    return {
      component: column,
      halfWidth: Math.min(halfWidth, farthest / 2),
      set: deviation => {
        for (const [i, base] of bases.entries()) rows[i]![column] = base * (1 + deviation / farthest)
      },
    }
  })
}

function settersOf(axle: Draft<Axle>, { path, kind, halfWidth }: Measured): Setter[] {
  const value = valueAt(axle, path)
  if (typeof value === 'number') {
    const keys = path.split('.')
    const last = keys.pop()!
    const holder = valueAt(axle, keys.join('.')) as Record<string, number>
    const set = (deviation: number): void => {
      holder[last] = value + deviation
    }
    return [{ component: '', halfWidth, set }]
  }
  if (kind === 'curve') {
    const rows = value as { deflection: number; force: number }[]
    const bases = rows.map(row => row.force)
    const set = (deviation: number): void => {
      for (const [i, base] of bases.entries()) rows[i]!.force = base * Math.max(0, 1 + deviation)
    }
    return [{ component: '', halfWidth, set }]
  }
  if (kind === 'direction') {
    const axis = value as Draft<Point>
    return coordinates(axis, '', halfWidth * Math.hypot(...axis))
  }
  if (path.endsWith('.rows')) return columns(value as { wheel: number; shock: number; stop: number }[], halfWidth)
  if (path.endsWith('.pivot'))
    return (value as Draft<Point>[]).flatMap((point, i) => coordinates(point, `${i}`, halfWidth))
  return coordinates(value as Draft<Point>, '', halfWidth)
}

const kept = (value: number, least: number, most = Infinity): number => Math.min(most, Math.max(least, value))

/** Gas is at least this much more than the shaft pushes aside. */
const GAS_ROOM = 1.001

/**
 * Moves values that contradict each other to the nearest that do not: the bounds of the plan file (core/plan/corner-sense.ts).
 * @returns false where gas had to be added to close at all
 */
function keepSense(corner: Draft<Corner>): boolean {
  let gasLasts = true
  const room = (volume: number, diameter: number, stroke: number): number => {
    const least = GAS_ROOM * circleArea(diameter) * stroke
    if (volume < least) gasLasts = false
    return Math.max(volume, least)
  }
  const { shock, springs, stop, clearance, linkage, tire } = corner
  corner.cornerMass = kept(corner.cornerMass, 0.1)
  corner.unsprungMass = kept(corner.unsprungMass, 0, 0.99 * corner.cornerMass)
  if (linkage.kind === 'ratio') {
    linkage.shock = kept(linkage.shock, 1e-3)
    linkage.stop = kept(linkage.stop, 1e-3)
  }
  shock.stroke = kept(shock.stroke, 1e-3)
  shock.showing = kept(shock.showing, 0, shock.stroke)
  shock.shaftDiameter = kept(shock.shaftDiameter, 1e-4)
  if (shock.gas !== null) {
    shock.gas.charge = kept(shock.gas.charge, 0)
    shock.gas.volume = room(shock.gas.volume, shock.shaftDiameter, shock.stroke)
  }
  for (const spring of springs.springs) {
    spring.rate = kept(spring.rate, 1)
    spring.freeLength = kept(spring.freeLength, 1e-3)
    spring.solidLength = kept(spring.solidLength, 1e-5, spring.freeLength - 1e-5)
  }
  springs.preload = kept(
    springs.preload,
    -20,
    springs.springs.reduce((sum, spring) => sum + springTravel(spring), 0),
  )
  if (springs.crossover !== null) springs.crossover.gap = kept(springs.crossover.gap, 0)
  if (clearance.bump !== null) clearance.bump = kept(clearance.bump, 0)
  if (clearance.droop !== null) clearance.droop = kept(clearance.droop, 0)
  tire.rate = kept(tire.rate, 1)
  if (stop === null) return gasLasts
  if (stop.kind === 'elastomer') {
    stop.gap = kept(stop.gap, -stop.curve.at(-1)!.deflection)
    return gasLasts
  }
  stop.stroke = kept(stop.stroke, 1e-3)
  stop.gap = kept(stop.gap, -stop.stroke)
  stop.shaftDiameter = kept(stop.shaftDiameter, 1e-4)
  stop.charge = kept(stop.charge, 0)
  stop.gasVolume = room(stop.gasVolume, stop.shaftDiameter, stop.stroke)
  return gasLasts
}

/** @param measured of this axle; those without a tolerance stay as they are */
export function trialAxle(axle: Axle, measured: readonly Measured[]): TrialAxle {
  const draft = JSON.parse(JSON.stringify(axle)) as Draft<Axle>
  const setters = measured
    .filter(({ halfWidth }) => halfWidth > 0)
    .flatMap(each => settersOf(draft, each).map(setter => ({ ...setter, path: each.path })))
  const untouched = setters.length === 0
  let gasLasts = true
  return {
    variables: setters.map(({ path, component, halfWidth }) => ({
      key: `${axle.id}.${path}${component === '' ? '' : `.${component}`}`,
      path,
      halfWidth,
      distribution: { kind: 'rectangular', halfWidth },
    })),
    put: deviations => {
      if (untouched) return axle
      for (let i = 0; i < setters.length; i += 1) setters[i]!.set(deviations[i]!)
      gasLasts = keepSense(draft.corner)
      return draft as Axle
    },
    get gasLasts() {
      return gasLasts
    },
  }
}
