import fc from 'fast-check'
import type { Axle, ChosenRanges, Corner, Linkage, Load, Plan, Targets, Terrain } from '../../core/plan/schema.ts'
import { arbitraryCorner } from './arbitrary-corner.ts'
import { between } from './arbitrary-linkage.ts'

const name = fc.string({ unit: 'grapheme', maxLength: 20 })
const assumed = fc.uniqueArray(fc.constantFrom('corner.unsprungMass', 'track', 'cgHeight'), { maxLength: 2 })

const load: fc.Arbitrary<Omit<Load, 'id'>> = fc.oneof(
  fc.record({
    name,
    kind: fc.constant('payload' as const),
    masses: fc.record({ front: between(-50, 200), rear: between(-50, 400) }, { requiredKeys: [] }),
  }),
  fc.record({ name, kind: fc.constant('cornering' as const), lateral: between(-9, 9) }),
  fc.record({ name, kind: fc.constant('braking' as const), deceleration: between(-9, 9) }),
  fc.record({ name, kind: fc.constant('terrain' as const), amplitude: between(0, 0.4) }),
)

const speed = between(1, 40)
const terrain: fc.Arbitrary<Omit<Terrain, 'id'>> = fc.oneof(
  fc.record({
    name,
    kind: fc.constant('whoops' as const),
    spacing: between(1, 12),
    height: between(0, 0.6),
    speed,
    count: fc.integer({ min: 1, max: 12 }),
  }),
  fc.record({ name, kind: fc.constant('landing' as const), drop: between(0, 2) }),
  fc.record({
    name,
    kind: fc.constant('rough' as const),
    isoClass: fc.constantFrom('A' as const, 'C' as const, 'E' as const, 'H' as const),
    speed,
    duration: between(1, 60),
    seed: fc.nat(0xffff_ffff),
  }),
  fc.record({ name, kind: fc.constant('ledge' as const), height: between(0, 0.5), length: between(0.1, 5), speed }),
)

const targets: fc.Arbitrary<Targets> = fc.record(
  {
    coiloverShare: between(0, 1),
    coiloverTravel: between(0, 0.3),
    landingDrop: between(0, 2),
    shockLeft: between(0, 0.1),
    stopPressure: between(0, 2e7),
  },
  { requiredKeys: [] },
)

const span = fc
  .option(fc.record({ from: between(0, 1), more: between(0, 1), step: between(1e-3, 0.1) }))
  .map(given => given && { from: given.from, to: given.from + given.more, step: given.step })

const partIds = fc.array(fc.constantFrom('stop-1', 'stop-2', 'spring-1'), { maxLength: 3 })

const chosen: fc.Arbitrary<ChosenRanges> = fc.record({
  spacers: span,
  charges: span,
  oils: span,
  shims: span,
  stops: partIds,
  springs: partIds,
  preload: fc.boolean(),
})

const axle = (id: Axle['id'], corner: fc.Arbitrary<Corner>): fc.Arbitrary<Axle> =>
  fc
    .record(
      {
        solid: fc.boolean(),
        track: between(1.2, 2.2),
        antiRollRate: between(0, 4e4),
        spacing: between(0.5, 1.2),
        corner,
        assumed,
      },
      { requiredKeys: ['solid', 'track', 'antiRollRate', 'spacing', 'corner'] },
    )
    .map(({ solid, spacing, ...rest }) => ({
      id,
      suspension: solid ? ('solid' as const) : ('independent' as const),
      ...rest,
      ...(solid && { shockSpacing: spacing, stopSpacing: spacing * 0.9 }),
    }))

const axles = (corner: fc.Arbitrary<Corner>): fc.Arbitrary<Axle[]> =>
  fc.oneof(
    fc.tuple(axle('front', corner), axle('rear', corner)),
    fc.tuple(axle('rear', corner)),
    fc.tuple(axle('front', corner)),
  )

/** Ids told apart by a number behind them. */
const told = <T>(items: readonly T[], word: string): (T & { id: string })[] =>
  items.map((item, i) => ({ id: `${word}-${i + 1}`, ...item }))

/** Plans that parsePlan accepts, by construction; any linkage, or only those of the kinds named. */
export function arbitraryPlan(...kinds: readonly Linkage['kind'][]): fc.Arbitrary<Plan> {
  return fc
    .record(
      {
        title: name,
        notes: fc.string({ maxLength: 60 }),
        units: fc.constantFrom('inch' as const, 'metric' as const),
        vehicle: fc.record(
          {
            name,
            wheelbase: between(2, 4),
            cgHeight: between(0.4, 1.2),
            rollAxisHeight: between(-0.1, 0.4),
            assumed,
          },
          { requiredKeys: ['name', 'wheelbase', 'cgHeight', 'rollAxisHeight'] },
        ),
        setups: fc.array(fc.record({ name, axles: axles(arbitraryCorner(...kinds)) }), { minLength: 1, maxLength: 2 }),
        loads: fc.array(load, { maxLength: 4 }),
        terrains: fc.array(terrain, { maxLength: 4 }),
        targets,
        ranges: fc.record({ front: chosen, rear: chosen }, { requiredKeys: [] }),
      },
      { requiredKeys: ['title', 'notes', 'units', 'vehicle', 'setups', 'loads', 'terrains'] },
    )
    .map(plan => ({
      format: 'stopgap-plan' as const,
      version: 1 as const,
      ...plan,
      setups: told(plan.setups, 'setup'),
      loads: told(plan.loads, 'load') as Load[],
      terrains: told(plan.terrains, 'terrain') as Terrain[],
    }))
}
