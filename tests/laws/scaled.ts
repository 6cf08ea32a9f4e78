import type { Corner, Linkage, Point, Stop } from '../../core/plan/schema.ts'

/** Factors on lengths and on areas and forces; pressures stay, so that the atmosphere does too. */
export interface Scale {
  readonly length: number
  readonly force: number
}

const points = (linkage: Linkage, change: (point: Point) => Point): Linkage => {
  if (linkage.kind === 'arm')
    return {
      ...linkage,
      pivot: [change(linkage.pivot[0]), change(linkage.pivot[1])],
      wheel: change(linkage.wheel),
      shockLower: change(linkage.shockLower),
      shockUpper: change(linkage.shockUpper),
      stopPad: change(linkage.stopPad),
    }
  if (linkage.kind === 'axle')
    return {
      ...linkage,
      shockLower: change(linkage.shockLower),
      shockUpper: change(linkage.shockUpper),
      stopPad: change(linkage.stopPad),
    }
  return linkage
}

/** A corner with every point of its geometry changed; a direction changes as the difference of two points does. */
export function withPoints(corner: Corner, change: (point: Point) => Point): Corner {
  const linkage = points(corner.linkage, change)
  if (linkage.kind !== 'arm' && linkage.kind !== 'axle') return corner
  const [origin, end] = [change([0, 0, 0]), change(linkage.stopAxis)]
  const stopAxis: Point = [end[0] - origin[0], end[1] - origin[1], end[2] - origin[2]]
  return { ...corner, linkage: { ...linkage, stopAxis } }
}

const scaledLinkage = (linkage: Linkage, by: number): Linkage =>
  linkage.kind === 'table'
    ? {
        ...linkage,
        rows: linkage.rows.map(row => ({ wheel: row.wheel * by, shock: row.shock * by, stop: row.stop * by })),
      }
    : points(linkage, ([x, y, z]) => [x * by, y * by, z * by])

function scaledStop(stop: Stop, { length, force }: Scale): Stop {
  const gap = stop.gap * length
  if (stop.kind === 'elastomer')
    return {
      ...stop,
      gap,
      curve: stop.curve.map(row => ({ deflection: row.deflection * length, force: row.force * force })),
    }
  const { stroke, shaftDiameter, gasVolume } = stop
  return {
    ...stop,
    gap,
    stroke: stroke * length,
    shaftDiameter: shaftDiameter * Math.sqrt(force),
    gasVolume: gasVolume * length * force,
  }
}

/** The corner of a car larger in its lengths by one factor and in its forces, masses and shaft areas by another. Dampers aside. */
export function scaled(corner: Corner, by: Scale): Corner {
  const { length, force } = by
  const { shock, springs, clearance } = corner
  return {
    cornerMass: corner.cornerMass * force,
    unsprungMass: corner.unsprungMass * force,
    linkage: scaledLinkage(corner.linkage, length),
    shock: {
      ...shock,
      stroke: shock.stroke * length,
      showing: shock.showing * length,
      shaftDiameter: shock.shaftDiameter * Math.sqrt(force),
      gas: shock.gas && { charge: shock.gas.charge, volume: shock.gas.volume * length * force },
    },
    springs: {
      springs: springs.springs.map(spring => ({
        ...spring,
        rate: (spring.rate * force) / length,
        freeLength: spring.freeLength * length,
        solidLength: spring.solidLength * length,
      })),
      preload: springs.preload * length,
      crossover: springs.crossover && { gap: springs.crossover.gap * length },
    },
    stop: corner.stop && scaledStop(corner.stop, by),
    tire: { ...corner.tire, radius: corner.tire.radius * length, rate: (corner.tire.rate * force) / length },
    clearance: {
      bump: clearance.bump === null ? null : clearance.bump * length,
      droop: clearance.droop === null ? null : clearance.droop * length,
    },
  }
}
