import type { Load, Plan } from '../plan/schema.ts'
import { GRAVITY } from '../units/constants.ts'

/** A person with what they wear, kg: the driver of European type approval (75 kg; from memory). */
const PERSON = 75

/** Tools, spares, water, a cooler, kg: common practice; it rides behind the seats. */
const GEAR = 50

/** Half of a common tank, m³ (60 litres; common practice), and the density of petrol, kg/m³ (EN 228 allows 720 to 775; from memory). */
const HALF_TANK = 0.03
const PETROL = 745

/** What knobby tires hold on hard dirt, in g: common practice. */
const HARD_CORNER = 0.6
const HARD_BRAKING = 0.6

const LOADS: readonly Load[] = [
  {
    id: 'two-people',
    name: 'Two people and gear',
    kind: 'payload',
    masses: { front: PERSON, rear: PERSON + GEAR },
    assumed: true,
  },
  {
    id: 'half-tank',
    name: 'Half a tank of fuel',
    kind: 'payload',
    masses: { rear: HALF_TANK * PETROL },
    assumed: true,
  },
  { id: 'hard-corner', name: 'Hard corner', kind: 'cornering', lateral: HARD_CORNER * GRAVITY, assumed: true },
  { id: 'hard-braking', name: 'Hard braking', kind: 'braking', deceleration: HARD_BRAKING * GRAVITY, assumed: true },
]

/**
 * Loads to offer a plan that has none, every one of them assumed until somebody puts in their own. People sit midway between the axles, gear
 * and fuel over the rear one. Braking only where a setup has two axles. Ids are new to the plan.
 */
export function startingLoads(plan: Plan): Load[] {
  const taken = new Set(plan.loads.map(({ id }) => id))
  const fresh = (id: string, number = 1): string => {
    const tried = number === 1 ? id : `${id}-${number}`
    return taken.has(tried) ? fresh(id, number + 1) : tried
  }
  const canBrake = plan.setups.some(({ axles }) => axles.length > 1)
  return LOADS.filter(({ kind }) => canBrake || kind !== 'braking').map(load => ({ ...load, id: fresh(load.id) }))
}
