import type { SpringPack } from '../forces/spring-pack.ts'
import type { StopModel } from '../forces/stop.ts'
import { type Movement, REACH } from '../linkage/movement.ts'
import { firstReaching } from '../numerics/looks.ts'
import type { Corner } from '../plan/schema.ts'
import type { BumpLimit, DroopLimit } from './corner-model.ts'

export type Limits<Name extends string> = Readonly<Partial<Record<Name, number>>>

const named = <Name extends string>(found: readonly (readonly [Name, number | null])[]): Limits<Name> =>
  Object.fromEntries(found.filter(([, wheel]) => wheel !== null)) as Limits<Name>

/** Every limit met going up from ride height within 1 m, as wheel positions in m, 0 or more: 0 where it is met already, absent where it is not met. */
export function bumpLimits(
  { shock, springs, stop, clearance }: Corner,
  movement: Movement,
  pack: SpringPack,
  stopModel: StopModel | null,
): Limits<BumpLimit> {
  const { linkage, high } = movement
  const shaftIn = shock.stroke - shock.showing
  const reach = (part: 'shock' | 'stop', travel: number) => firstReaching(movement[part], travel, 0, high)
  return named<BumpLimit>([
    ['stop closed', stop === null || stopModel === null ? null : reach('stop', stop.gap + stopModel.stroke)],
    ['shock closed', reach('shock', shock.showing)],
    ['coil bind', reach('shock', pack.bind - springs.preload - shaftIn)],
    ['chassis contact', clearance.bump !== null && clearance.bump <= REACH ? clearance.bump : null],
    ['linkage end', linkage.highest <= REACH ? linkage.highest : null],
  ])
}

/** Every limit met going down from ride height within 1 m, as wheel positions in m, 0 or less; absent where it is not met. */
export function droopLimits({ shock, clearance }: Corner, movement: Movement): Limits<DroopLimit> {
  const { linkage, low } = movement
  return named<DroopLimit>([
    ['shock extended', firstReaching(movement.shock, shock.showing - shock.stroke, 0, low, true)],
    ['limit strap', clearance.droop !== null && clearance.droop <= REACH ? -clearance.droop : null],
    ['linkage end', linkage.lowest >= -REACH ? linkage.lowest : null],
  ])
}

/** The limit nearest ride height; null when there is none within reach. */
export function nearest<Name extends string>(
  limits: Limits<Name>,
): { readonly by: Name; readonly wheel: number } | null {
  let best: { by: Name; wheel: number } | null = null
  for (const [by, wheel] of Object.entries(limits) as [Name, number][])
    if (best === null || Math.abs(wheel) < Math.abs(best.wheel)) best = { by, wheel }
  return best
}
