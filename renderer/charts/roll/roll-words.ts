import type { SetupLoads } from '../../../core/loads/ledger.ts'
import type { AxleId, Plan } from '../../../core/plan/schema.ts'
import { formatMeasure } from '../../../core/units/format.ts'
import type { Quantity, System } from '../../../core/units/quantity.ts'
import type { RollGeometry, SideInRoll } from './roll-geometry.ts'

const say = (value: number, quantity: Quantity, system: System): string =>
  formatMeasure(value, quantity, system, {
    unit: true,
    ...(quantity === 'length' && system === 'metric' ? { digits: 0 } : {}),
  })

export const forceWords = (value: number, system: System): string => say(value, 'force', system)

const least = (system: System): number => (system === 'inch' ? 0.0254 / 32 : 0.0005)

/** `1 1/4 in left`, `pushed in 1/2 in`, `just touches`. */
export function leftWords({ stop }: SideInRoll, system: System): string {
  if (stop === null) return 'no stop'
  if (Math.abs(stop.left) < least(system)) return 'just touches'
  return stop.left > 0 ? `${say(stop.left, 'length', system)} left` : `pushed in ${say(-stop.left, 'length', system)}`
}

function travelWords({ travel }: SideInRoll, system: System): string {
  if (Math.abs(travel) < least(system)) return 'at ride height'
  return `${say(Math.abs(travel), 'length', system)} ${travel > 0 ? 'up' : 'down'}`
}

export const rollWords = (roll: number): string => `${((roll * 180) / Math.PI).toFixed(1)}°`

/** Below this a chassis is level, rad. */
const LEVEL = 1e-4

export interface RollRow {
  readonly name: string
  readonly outer: string
  readonly inner: string
}

const sum = ({ springs, gas, stop, end }: SideInRoll['forces']): number => springs + gas + stop + end

/** Both sides in figures. An end of the travel only where it carries. */
export function rollRows({ outer, inner, solid, barred }: RollGeometry, system: System): RollRow[] {
  const row = (name: string, of: (side: SideInRoll) => string): RollRow => ({
    name,
    outer: of(outer),
    inner: of(inner),
  })
  const force = (name: string, of: (side: SideInRoll) => number): RollRow =>
    row(name, side => forceWords(of(side), system))
  const ended = [outer, inner].some(({ forces }) => Math.abs(forces.end) > 1)
  return [
    row('Wheel, from ride height', side => travelWords(side, system)),
    row('Before the stop', side => leftWords(side, system)),
    force('Springs and gas', ({ forces }) => forces.springs + forces.gas),
    force('Stop', ({ forces }) => forces.stop),
    ...(ended ? [force('End of the travel', ({ forces }) => forces.end)] : []),
    ...(barred && !solid ? [force('Anti-roll bar', ({ forces, carries }) => carries - sum(forces))] : []),
    force('Carries at the wheel', ({ carries }) => carries),
  ]
}

function firstTouch({ axle, outer, inner }: RollGeometry, system: System): string {
  if (outer.stop === null || inner.stop === null) return `There is no stop in the ${axle} travel.`
  const touches = (side: SideInRoll): boolean => side.stop !== null && side.stop.left < least(system)
  const held = (side: SideInRoll): string =>
    side.forces.stop > 1 ? ` and carries ${forceWords(side.forces.stop, system)}` : ''
  const pushed = (side: SideInRoll): string =>
    side.stop !== null && side.stop.left <= -least(system) ? `, is ${leftWords(side, system)}` : ''
  if (touches(outer) && touches(inner))
    return `Both ${axle} stops are touched: the outer one ${leftWords(outer, system)}${held(outer)}, the inner one ${leftWords(inner, system)}${held(inner)}.`
  if (touches(outer))
    return `The outer ${axle} stop touches first${pushed(outer)}${held(outer)}. The inner one has ${leftWords(inner, system)}.`
  if (touches(inner))
    return `The inner ${axle} stop touches first${pushed(inner)}${held(inner)}. The outer one has ${leftWords(outer, system)}.`
  const [near, far, name] = outer.stop.left <= inner.stop.left ? [outer, inner, 'outer'] : [inner, outer, 'inner']
  return `Neither ${axle} stop is touched; the ${name} one would be first, with ${leftWords(near, system)} against ${leftWords(far, system)}.`
}

/** What the drawing shows, in sentences. Level: why, and what both sides have. */
export function rollSentence(geometry: RollGeometry, plan: Plan): string {
  const { axle, roll, outer, inner, off } = geometry
  const { units } = plan
  if (roll < LEVEL) {
    const held = outer.forces.stop > 1 ? `, each carrying ${forceWords(outer.forces.stop, units)}` : ''
    const stops =
      outer.stop === null
        ? `There is no stop in the ${axle} travel.`
        : `Both ${axle} stops: ${leftWords(outer, units)}${held}.`
    return `No counted load is a turn, so the car stands level. ${stops}`
  }
  const air = off > least(units) ? ` The inner wheel is ${say(off, 'length', units)} off the ground.` : ''
  const shares = ` The outer wheel carries ${forceWords(outer.carries, units)}, the inner ${forceWords(inner.carries, units)}.`
  return `The car leans ${rollWords(roll)}. ${firstTouch(geometry, units)}${air === '' ? shares : air}`
}

/** Why there is nothing to draw; null when there is. */
export function noRollWords({ together, model }: SetupLoads, axle: AxleId): string | null {
  if (together.outcome === 'rolls over')
    return 'With the counted loads it finds no balance below 20° of roll: it rolls over.'
  if (together.outcome === 'needs two axles')
    return 'Braking moves weight from one axle to the other, and this setup has only one: add the other axle, or leave braking out.'
  return model.axles.some(each => each.axle.id === axle) ? null : `This setup has no ${axle} axle.`
}

/** What the figures leave out, in sentences. */
export function rollNotes({ solid }: RollGeometry, counted: readonly { readonly kind: string }[]): string[] {
  return [
    'Seen from behind, the outer wheel on the right. Carried at the wheel: springs, gas, stop and anti-roll bar, without what the wheel itself weighs.',
    ...(solid
      ? [
          'On a solid axle springs and stops stand inboard of the wheels, so their forces do not add up to what a wheel carries.',
        ]
      : []),
    ...(counted.some(({ kind }) => kind === 'terrain')
      ? ['Ground is left out here: it lifts one wheel at a time.']
      : []),
  ]
}
