import fc from 'fast-check'
import type { Linkage, Point } from '../../core/plan/schema.ts'

/** A finite number in a range, zero always positive: a file knows no negative zero. */
export const between = (min: number, max: number): fc.Arbitrary<number> =>
  fc.double({ min, max, noNaN: true }).map(value => value + 0)

const point = (x: fc.Arbitrary<number>, y: fc.Arbitrary<number>, z: fc.Arbitrary<number>): fc.Arbitrary<Point> =>
  fc.tuple(x, y, z)

const ratio = fc.record({ kind: fc.constant('ratio' as const), shock: between(0.45, 1.5), stop: between(0.3, 1.5) })

/** Rows grow from the row of zeros both ways, shock and stop by a share of the wheel's step. */
const step = fc.record({ wheel: between(0.01, 0.12), shock: between(0.2, 1.3), stop: between(0.2, 1.3) })
type Step = { wheel: number; shock: number; stop: number }
const zeros = { wheel: 0, shock: 0, stop: 0 }

function walk(steps: readonly Step[], sign: 1 | -1): Step[] {
  let { wheel, shock, stop } = zeros
  return steps.map(next => {
    wheel += sign * next.wheel
    shock += sign * next.wheel * next.shock
    stop += sign * next.wheel * next.stop
    return { wheel, shock, stop }
  })
}

const table = fc
  .tuple(fc.array(step, { minLength: 1, maxLength: 4 }), fc.array(step, { minLength: 1, maxLength: 5 }))
  .map(([down, up]) => ({ kind: 'table' as const, rows: [...walk(down, -1).reverse(), zeros, ...walk(up, 1)] }))

const stopAxis = point(between(-0.4, 0.4), between(-0.4, 0.4), between(0.5, 2))

/** Pivots inboard, wheel outboard or ahead, the shock leaning up to the chassis; short enough that the arm itself ends the travel. */
const arm = fc.record({
  kind: fc.constant('arm' as const),
  pivot: fc.tuple(
    point(between(0.1, 0.4), between(0.1, 0.3), between(0.3, 0.5)),
    point(between(-0.4, -0.1), between(0.1, 0.3), between(0.3, 0.5)),
  ),
  wheel: point(between(-0.1, 0.1), between(0.6, 0.9), between(0.25, 0.55)),
  shockLower: point(between(-0.1, 0.1), between(0.45, 0.7), between(0.3, 0.5)),
  shockUpper: point(between(-0.15, 0.15), between(0.2, 0.6), between(0.8, 1.2)),
  stopPad: point(between(-0.1, 0.1), between(0.4, 0.7), between(0.3, 0.5)),
  stopAxis,
})

const axle = fc.record({
  kind: fc.constant('axle' as const),
  shockLower: point(between(-0.2, 0.2), between(0.3, 0.6), between(0.2, 0.4)),
  shockUpper: point(between(-0.2, 0.2), between(0.2, 0.6), between(0.8, 1.2)),
  stopPad: point(between(-0.1, 0.1), between(0.3, 0.5), between(0.3, 0.5)),
  stopAxis,
})

const arbitraryLinkages = { ratio, table, arm, axle } satisfies Record<Linkage['kind'], fc.Arbitrary<Linkage>>

/** A linkage of any kind, or of those named. */
export const arbitraryLinkage = (...kinds: readonly Linkage['kind'][]): fc.Arbitrary<Linkage> =>
  fc.oneof(...(kinds.length === 0 ? Object.values(arbitraryLinkages) : kinds.map(kind => arbitraryLinkages[kind])))
