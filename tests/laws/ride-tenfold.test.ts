import { readdirSync } from 'node:fs'
import path from 'node:path'
import { describe, expect, it } from 'vitest'
import { cornerModel } from '../../core/corner/corner.ts'
import type { CornerRide, RideFigures } from '../../core/ride/results.ts'
import { ride } from '../../core/ride/ride.ts'
import { rideCar } from '../../core/ride/whole-car.ts'
import { seed } from '../seeds/seed.ts'

const FIGURES = [
  'hits',
  'bottoms',
  'wheelMax',
  'wheelMin',
  'suspensionForceMax',
  'stopForceMax',
  'stopSpeedMax',
  'chassisAccelMax',
  'chassisAccelRms',
] as const satisfies readonly (keyof RideFigures)[]

const arrived = <T extends { ok: boolean }>(outcome: T): T & { ok: true } => {
  if (!outcome.ok) throw new Error('The ride did not get to its end.')
  return outcome as T & { ok: true }
}

/** Figures that differ by more than 1 %, positions by more than 1 % of the travel, shares by more than 0.01; those on steel are marked and left out. */
function differ(asIs: CornerRide, tight: CornerRide, travel: number): string[] {
  const marked: readonly string[] = asIs.contactDependent
  const figures = FIGURES.filter(name => {
    const scale = name.startsWith('wheel') ? travel : Math.abs(tight[name])
    return !marked.includes(name) && Math.abs(asIs[name] - tight[name]) > 0.01 * scale + 1e-9
  })
  const shares = (Object.keys(tight.share) as (keyof RideFigures['share'])[]).filter(
    name => Math.abs(asIs.share[name] - tight.share[name]) > 0.01,
  )
  return [...figures, ...shares]
}

const demos = readdirSync(path.join(import.meta.dirname, '../../seeds')).filter(name => name.endsWith('.stopgap'))

describe.each(demos)('a tolerance ten times tighter changes no figure of %s', name => {
  const plan = seed(name)
  it.each(plan.terrains.map(terrain => [terrain.name, terrain] as const))(
    'over %s',
    (_, terrain) => {
      const off = plan.setups.flatMap(({ id, axles }) => {
        const models = axles.map(axle => ({ id: axle.id, model: cornerModel(axle.corner) }))
        const alone = models.map(({ model }) => [1, 0.1].map(tolerance => arrived(ride(model, terrain, { tolerance }))))
        const cars = [1, 0.1].map(tolerance =>
          models.length < 2 ? null : arrived(rideCar(models, plan.vehicle.wheelbase, terrain, { tolerance })),
        )
        return models.flatMap(({ id: axle, model }, i) => {
          const travel = model.bump - model.droop
          const [asIs, tight] = alone[i]!
          const inCar = cars[0] && cars[1] ? differ(cars[0].axles[i]!, cars[1].axles[i]!, travel) : []
          return [
            ...differ(asIs!, tight!, travel).map(figure => `${id} ${axle}: ${figure}`),
            ...inCar.map(figure => `${id} ${axle} of the whole car: ${figure}`),
          ]
        })
      })
      expect(off).toEqual([])
    },
    60_000,
  )
})
