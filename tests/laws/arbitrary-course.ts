import fc from 'fast-check'
import type { Terrain } from '../../core/plan/schema.ts'
import { between } from './arbitrary-linkage.ts'

const speed = between(2, 25)
const head = { id: fc.constant('road'), name: fc.constant('') }

/** Terrains that take a few seconds to drive. */
export const arbitraryTerrain: fc.Arbitrary<Terrain> = fc.oneof(
  fc.record({
    ...head,
    kind: fc.constant('whoops' as const),
    spacing: between(2, 9),
    height: between(0, 0.4),
    speed,
    count: fc.integer({ min: 1, max: 4 }),
  }),
  fc.record({ ...head, kind: fc.constant('landing' as const), drop: between(0, 1.5) }),
  fc.record({
    ...head,
    kind: fc.constant('ledge' as const),
    height: between(0, 0.3),
    length: between(0.1, 3),
    speed,
  }),
  fc.record({
    ...head,
    kind: fc.constant('rough' as const),
    isoClass: fc.constantFrom('B' as const, 'D' as const, 'F' as const),
    speed,
    duration: between(0.5, 4),
    seed: fc.nat(0xffff_ffff),
  }),
)
