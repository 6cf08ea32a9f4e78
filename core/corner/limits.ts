import type { SpringPack } from '../forces/spring-pack.ts'
import type { StopModel } from '../forces/stop.ts'
import type { LinkageModel } from '../linkage/linkage-model.ts'
import { firstReaching, type ValueAndSlope } from '../numerics/roots.ts'
import type { Corner } from '../plan/schema.ts'
import type { BumpLimit, DroopLimit } from './corner-model.ts'

/** How far from ride height anything is looked for, m. */
export const REACH = 1

export type Limits<Name extends string> = Readonly<Partial<Record<Name, number>>>

/** Shock or stop movement as a function to search: `up` as it is, `down` turned over. */
export const movement = (linkage: LinkageModel, part: 'shock' | 'stop', sign: 1 | -1 = 1) => {
  const ratio = part === 'shock' ? 'shockRatio' : 'stopRatio'
  return (wheel: number): ValueAndSlope => {
    const position = linkage.at(wheel)
    return { value: sign * position[part], slope: sign * position[ratio] }
  }
}

const named = <Name extends string>(found: readonly (readonly [Name, number | null])[]): Limits<Name> =>
  Object.fromEntries(found.filter(([, wheel]) => wheel !== null)) as Limits<Name>

/** Every limit met going up from ride height within 1 m, as wheel positions in m, 0 or more. */
export function bumpLimits(
  corner: Corner,
  linkage: LinkageModel,
  pack: SpringPack,
  stop: StopModel | null,
): Limits<BumpLimit> {
  const { shock, springs, clearance } = corner
  const up = Math.min(REACH, linkage.highest)
  const shaftIn = shock.stroke - shock.showing
  const reach = (part: 'shock' | 'stop', travel: number) => firstReaching(movement(linkage, part), travel, 0, up)
  return named<BumpLimit>([
    ['stop closed', stop === null ? null : reach('stop', corner.stop!.gap + stop.stroke)],
    ['shock closed', reach('shock', shock.showing)],
    ['coil bind', reach('shock', pack.bind - springs.preload - shaftIn)],
    ['chassis contact', clearance.bump !== null && clearance.bump <= REACH ? clearance.bump : null],
    ['linkage end', linkage.highest <= REACH ? linkage.highest : null],
  ])
}

/** Every limit met going down from ride height within 1 m, as wheel positions in m, 0 or less. */
export function droopLimits({ shock, clearance }: Corner, linkage: LinkageModel): Limits<DroopLimit> {
  const down = Math.max(-REACH, linkage.lowest)
  return named<DroopLimit>([
    ['shock extended', firstReaching(movement(linkage, 'shock', -1), shock.stroke - shock.showing, 0, down)],
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
