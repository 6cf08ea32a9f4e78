import { measurementPaths } from '../../core/plan/measurements.ts'
import type { Axle, Corner, Curve, Linkage, Point, Stop } from '../../core/plan/schema.ts'
import { startingPlan } from '../../core/plan/starting.ts'
import { modelOf } from './results.ts'

/** What a corner gets when the person says it has another kind of part: plausible values, to be measured. */

function startingCorner(axle: Axle): Corner {
  const { corner } = axle
  const { shockRatio, stopRatio } = modelOf(corner).linkage.at(0)
  const stop = corner.stop
  const plan = startingPlan({
    title: '',
    units: 'inch',
    axle: axle.id,
    suspension: axle.suspension,
    cornerMass: corner.cornerMass,
    shockStroke: corner.shock.stroke,
    shaftShowing: corner.shock.showing,
    ratio: { shock: shockRatio, stop: stopRatio },
    springRates: corner.springs.springs.map(({ rate }) => rate),
    stop: { stroke: 0.0762, gap: stop === null ? 0.05 : Math.max(0, stop.gap) },
  })
  return plan.setups[0]!.axles[0]!.corner
}

export type StopKind = Stop['kind'] | 'none'

/** A foam stop 60 mm tall that stiffens as it closes: common practice. */
const FOAM = [
  { deflection: 0, force: 0 },
  { deflection: 0.02, force: 600 },
  { deflection: 0.04, force: 2500 },
  { deflection: 0.05, force: 8000 },
]

export function stopOf(axle: Axle, kind: StopKind): Stop | null {
  if (kind === 'none') return null
  const hydraulic = startingCorner(axle).stop!
  return kind === 'hydraulic' ? hydraulic : { kind, gap: hydraulic.gap, curve: FOAM }
}

export const gasOf = (axle: Axle): Corner['shock']['gas'] => startingCorner(axle).shock.gas

/** What a damper curve begins with: light, straight, to be replaced by the maker's sheet. */
export const FIRST_CURVE: Curve = [
  { velocity: 0, force: 0 },
  { velocity: 0.5, force: 800 },
]

const millimetre = (value: number): number => Math.round(value * 1000) / 1000

/** Rows through the travel as it is now. */
function tableOf(corner: Corner): Linkage {
  const { linkage, bump, droop } = modelOf(corner)
  const wheels = [droop, droop / 2, 0, bump / 2, bump].map(millimetre)
  const rows = [...new Set(wheels)].sort((a, b) => a - b)
  const least = rows.length >= 3 ? rows : [-0.1, 0, 0.1]
  return {
    kind: 'table',
    rows: least.map(wheel => ({ wheel, shock: linkage.at(wheel).shock || 0, stop: linkage.at(wheel).stop || 0 })),
  }
}

/** Points of an upright shock and stop: an arm reaching outward, or the axle itself. */
function pointsOf(axle: Axle, kind: 'arm' | 'axle'): Linkage {
  const { corner } = axle
  const hub = corner.tire.radius
  const half = axle.track / 2
  const inner = half - 0.45
  const { shockRatio, stopRatio } = modelOf(corner).linkage.at(0)
  const along = (ratio: number): number =>
    kind === 'arm' ? inner + Math.min(0.95, Math.max(0.2, ratio)) * 0.45 : half * 0.6
  const lower: Point = [0, along(shockRatio), hub]
  const pad: Point = [0.05, along(stopRatio), hub + 0.02]
  const mounts = {
    shockLower: lower,
    shockUpper: [0, lower[1], hub + corner.shock.stroke + corner.shock.showing + 0.25] satisfies Point as Point,
    stopPad: pad,
    stopAxis: [0, 0, 1] satisfies Point as Point,
  }
  if (kind === 'axle') return { kind, ...mounts }
  return {
    kind,
    pivot: [
      [0.15, inner, hub],
      [-0.15, inner, hub],
    ],
    wheel: [0, half, hub],
    ...mounts,
  }
}

export function linkageOf(axle: Axle, kind: Linkage['kind']): Linkage {
  const { corner } = axle
  const { shockRatio, stopRatio } = modelOf(corner).linkage.at(0)
  if (kind === 'ratio') return { kind, shock: shockRatio, stop: stopRatio }
  return kind === 'table' ? tableOf(corner) : pointsOf(axle, kind)
}

/** Marks everything under a path as assumed, and nothing there that is no longer. */
export function assumedUnder(axle: Axle, path: string): string[] {
  const within = (name: string): boolean => name === path || name.startsWith(`${path}.`)
  return [...(axle.assumed ?? []).filter(name => !within(name)), ...measurementPaths(axle).filter(within)]
}

/** Marks what is under a path as it was marked before, in the same order where nothing else has changed, and keeps the other marks. */
export function assumedAs(axle: Axle, before: Axle, path: string): string[] {
  const [now, then] = [axle.assumed ?? [], before.assumed ?? []]
  const within = (name: string): boolean => name === path || name.startsWith(`${path}.`)
  const others = now.filter(name => !within(name))
  const same = others.join() === then.filter(name => !within(name)).join()
  return same ? [...then] : [...others, ...then.filter(within)]
}

/** The marks of the springs once `more` were put on top: those that stay keep theirs, the new ones are assumed. */
export function assumedAfterSprings(axle: Axle, more: number): string[] {
  const list = 'corner.springs.springs'
  const moved = (axle.assumed ?? []).flatMap(name => {
    const match = /^corner\.springs\.springs\.(\d+)(\..*)$/.exec(name)
    if (match === null) return [name]
    const at = Number(match[1]) + more
    return at < 0 ? [] : [`${list}.${at}${match[2]}`]
  })
  const added = Array.from({ length: Math.max(0, more) }, (_, i) =>
    ['rate', 'freeLength', 'solidLength'].map(key => `${list}.${i}.${key}`),
  )
  return [...moved, ...added.flat()]
}
