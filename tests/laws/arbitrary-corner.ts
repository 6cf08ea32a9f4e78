import fc from 'fast-check'
import { circleArea } from '../../core/forces/gas.ts'
import type { Corner, Curve, Linkage, Shock, Springs, Stop } from '../../core/plan/schema.ts'
import { arbitraryLinkage, between } from './arbitrary-linkage.ts'

/** Rising from 0, 0, or no rows at all. */
const arbitraryCurve: fc.Arbitrary<Curve> = fc
  .array(fc.record({ velocity: between(0.05, 2), force: between(0, 4000) }), { maxLength: 5 })
  .map(steps => {
    let [velocity, force] = [0, 0]
    const rows = steps.map(next => {
      velocity += next.velocity
      force += next.force
      return { velocity, force }
    })
    return rows.length === 0 ? [] : [{ velocity: 0, force: 0 }, ...rows]
  })

const arbitraryShock: fc.Arbitrary<Shock> = fc
  .record({
    stroke: between(0.1, 0.4),
    share: between(0.1, 0.9),
    shaftDiameter: between(0.012, 0.03),
    gas: fc.option(fc.record({ charge: between(0, 2e6), room: between(1.1, 6) })),
    compression: arbitraryCurve,
    rebound: arbitraryCurve,
  })
  .map(({ stroke, share, shaftDiameter, gas, compression, rebound }) => ({
    stroke,
    showing: stroke * share,
    shaftDiameter,
    gas: gas && { charge: gas.charge, volume: circleArea(shaftDiameter) * stroke * gas.room },
    compression,
    rebound,
  }))

export const arbitrarySprings: fc.Arbitrary<Springs> = fc
  .record({
    springs: fc.array(
      fc.record({
        name: fc.string({ maxLength: 12 }),
        rate: between(8e3, 2e5),
        freeLength: between(0.1, 0.5),
        solid: between(0.2, 0.6),
      }),
      { minLength: 1, maxLength: 3 },
    ),
    preload: between(-0.05, 0.8),
    crossover: fc.option(fc.record({ gap: between(0, 0.2) })),
  })
  .map(({ springs, preload, crossover }) => {
    const coils = springs.map(({ solid, ...spring }) => ({ ...spring, solidLength: spring.freeLength * solid }))
    const travel = coils.reduce((sum, spring) => sum + spring.freeLength - spring.solidLength, 0)
    return { springs: coils, preload: preload > 0 ? (preload * travel) / 2 : preload, crossover }
  })

const hydraulic: fc.Arbitrary<Stop> = fc
  .record(
    {
      stroke: between(0.02, 0.12),
      gap: between(-0.9, 2),
      shaftDiameter: between(0.02, 0.06),
      charge: between(0, 3e6),
      room: between(1.05, 5),
      compression: arbitraryCurve,
      rebound: arbitraryCurve,
    },
    { requiredKeys: ['stroke', 'gap', 'shaftDiameter', 'charge', 'room'] },
  )
  .map(({ gap, room, ...rest }) => ({
    kind: 'hydraulic' as const,
    ...rest,
    gap: gap * rest.stroke + 0,
    gasVolume: circleArea(rest.shaftDiameter) * rest.stroke * room,
  }))

const elastomer: fc.Arbitrary<Stop> = fc
  .record({
    steps: fc.array(fc.record({ deflection: between(0.003, 0.03), force: between(0, 6000) }), {
      minLength: 1,
      maxLength: 5,
    }),
    gap: between(-0.9, 2),
  })
  .map(({ steps, gap }) => {
    let [deflection, force] = [0, 0]
    const rows = steps.map(next => {
      deflection += next.deflection
      force += next.force
      return { deflection, force }
    })
    return { kind: 'elastomer' as const, gap: gap * deflection + 0, curve: [{ deflection: 0, force: 0 }, ...rows] }
  })

const arbitraryStop: fc.Arbitrary<Stop> = fc.oneof(hydraulic, elastomer)

/**
 * Corners that parsePlan accepts, by construction: any linkage or those of the kinds named, 1 to 3 springs, both kinds of stop and none.
 * A solid axle's shock may never close nor extend within reach, so there the clearances are always given.
 */
export function arbitraryCorner(...kinds: readonly Linkage['kind'][]): fc.Arbitrary<Corner> {
  const clear = between(0.03, 0.6)
  return fc
    .record({
      mass: between(80, 900),
      unsprung: between(0.02, 0.4),
      linkage: arbitraryLinkage(...kinds),
      shock: arbitraryShock,
      springs: arbitrarySprings,
      stop: fc.option(arbitraryStop),
      tire: fc.record({ radius: between(0.25, 0.5), rate: between(1e5, 5e5), damping: between(0, 1000) }),
      bump: fc.option(clear),
      droop: fc.option(clear),
      always: fc.record({ bump: clear, droop: clear }),
    })
    .map(({ mass, unsprung, bump, droop, always, ...rest }) => ({
      cornerMass: mass,
      unsprungMass: mass * unsprung,
      ...rest,
      clearance: rest.linkage.kind === 'axle' ? always : { bump, droop },
    }))
}
