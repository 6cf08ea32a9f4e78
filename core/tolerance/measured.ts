import { measurementPaths } from '../plan/measurements.ts'
import type { Axle, Tolerances } from '../plan/schema.ts'
import type { Quantity } from '../units/quantity.ts'
import { type Kind, kindOf, USUAL, usualHalfWidth } from './usual.ts'

/** A measurement of an axle with how far off it may be. */
export interface Measured {
  /** Inside the axle: `corner.stop.gap`. */
  readonly path: string
  readonly kind: Kind
  /** Of the half-width. */
  readonly quantity: Quantity
  /** Either side of the value, in its own SI unit; of points along each axis, of a table at its farthest row, of a curve as a share of its forces. */
  readonly halfWidth: number
  /** Where that comes from: the plan, what is usual, or that the value is only assumed. */
  readonly source: 'plan' | 'usual' | 'assumed'
  /** What it would be once measured, or measured with more care. */
  readonly repeated: number
}

/** A measurement repeated with care is taken to be this much better: the mean of four readings (JCGM 100:2008 4.2.3). */
const REPEATED = 0.5

/** The value at a path inside an object; undefined where there is none. */
export const valueAt = (whole: object, path: string): unknown =>
  path
    .split('.')
    .reduce<unknown>(
      (inner, key) =>
        typeof inner === 'object' && inner !== null ? (inner as Record<string, unknown>)[key] : undefined,
      whole,
    )

/** Every measurement of an axle that its travel budget rests on, in the order of the plan. */
export function measuredOf(axle: Axle, tolerances?: Tolerances): Measured[] {
  return measurementPaths(axle).flatMap((path): Measured[] => {
    const kind = kindOf(path)
    if (kind === null) return []
    const value = valueAt(axle, path)
    const size = typeof value === 'number' ? value : 0
    const assumed = axle.assumed?.includes(path) ?? false
    return [measured(path, kind, size, assumed, tolerances?.values[`${axle.id}.${path}`])]
  })
}

/**
 * A measurement with its tolerance.
 * @param size of its value, SI
 * @param own half-width the plan gives it
 */
export function measured(path: string, kind: Kind, size: number, assumed: boolean, own: number | undefined): Measured {
  const usual = usualHalfWidth(kind, size, false)
  const halfWidth = own ?? (assumed ? usualHalfWidth(kind, size, true) : usual)
  return {
    path,
    kind,
    quantity: USUAL[kind].quantity,
    halfWidth,
    source: own !== undefined ? 'plan' : assumed ? 'assumed' : 'usual',
    repeated: assumed ? Math.min(halfWidth, usual) : halfWidth * REPEATED,
  }
}

/**
 * Tolerances of the plan that no measurement of any setup has any more, or never had.
 * @param others paths known besides, such as those of the loads
 */
export function unusedTolerances(
  axles: readonly Axle[],
  tolerances?: Tolerances,
  others: readonly string[] = [],
): string[] {
  const known = new Set([...axles.flatMap(axle => measuredOf(axle).map(({ path }) => `${axle.id}.${path}`)), ...others])
  return Object.keys(tolerances?.values ?? {}).filter(path => !known.has(path))
}
