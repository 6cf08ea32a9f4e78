import type { Say } from '../budget/findings/rule.ts'
import { cornerModel } from '../corner/corner.ts'
import { springPack, springTravel } from '../forces/spring-pack.ts'
import { findRoot } from '../numerics/roots.ts'
import type { Corner, Springs } from '../plan/schema.ts'
import { type Change, type Changed, refused } from './change.ts'
import { comesToRest, measuredFrom, modelAndWeight } from './ride-height.ts'

type Of<Kind extends Change['kind']> = Extract<Change, { kind: Kind }>

/** Preload is solved to this, m: far below a thread, so that a change taken back gives the setup back. */
const FINE = 1e-14

/** A ride height that changes by less than this is the same, m. */
const SAME = 1e-9

/** Less than nothing by this much is nothing, m: sums of lengths round so far. */
const ROUNDING = 1e-12

const packTravel = ({ springs }: Springs): number => springs.reduce((sum, spring) => sum + springTravel(spring), 0)

/** How far the springs above the main are pressed at full extension, m. */
const aboveAtExtension = (springs: Springs): number =>
  springPack(springs)
    .each(springs.preload)
    .slice(0, -1)
    .reduce((sum, compression) => sum + compression, 0)

/**
 * The pack with its collar turned to another preload and its divider ring left where it is: the divider follows the collar down by what the
 * springs above it do not give, so the gap to the ring grows by that. Derived here.
 */
function preloaded(springs: Springs, preload: number): Springs {
  if (springs.crossover === null || springs.springs.length === 1) return { ...springs, preload }
  const turned = { ...springs, preload, crossover: null }
  const before = aboveAtExtension({ ...springs, crossover: null })
  const gap = springs.crossover.gap + preload - springs.preload - (aboveAtExtension(turned) - before)
  return { ...springs, preload, crossover: { gap: gap > -ROUNDING ? Math.max(0, gap) : gap } }
}

/** Why a pack cannot be built; null when it can. */
function cannotBe(springs: Springs, say: Say): string | null {
  const travel = packTravel(springs)
  const solid = springs.springs.find(spring => springTravel(spring) <= 0)
  if (solid !== undefined)
    return `A spring of ${say(solid.freeLength, 'length')} that is solid at ${say(solid.solidLength, 'length')} cannot work.`
  if (springs.preload > travel)
    return `A preload of ${say(springs.preload, 'length')} is more than the springs can give, ${say(travel, 'length')}.`
  if (springs.crossover !== null && springs.crossover.gap < 0)
    return `The divider would sit on its ring with the shock extended: move the ring ${say(-springs.crossover.gap, 'length')} up first.`
  return null
}

const heightNote = (wheel: number, say: Say): string[] =>
  Math.abs(wheel) < SAME
    ? []
    : [
        `It then sits ${say(Math.abs(wheel), 'length', { decimal: true })} ${wheel > 0 ? 'lower' : 'higher'}; shaft, gap and clearances are measured from there.`,
      ]

const ringNote = (before: Springs, after: Springs, say: Say): string[] =>
  before.crossover === null || after.crossover === null || Math.abs(before.crossover.gap - after.crossover.gap) < SAME
    ? []
    : [`The ring left where it is, the divider’s gap becomes ${say(after.crossover.gap, 'length', { decimal: true })}.`]

/** The corner with another pack, let down to where it then rests and measured from there. */
function settled(corner: Corner, springs: Springs, back: (wheel: number) => Change, say: Say): Changed {
  const reason = cannotBe(springs, say)
  if (reason !== null) return refused(reason)
  const { weight } = modelAndWeight(corner)
  const changed = { ...corner, springs }
  const model = cornerModel(changed)
  const rest = comesToRest(model, weight)
  if (!rest.ok) return refused(`It would not sit: the car goes to ${rest.end}.`)
  return {
    ok: true,
    corner: measuredFrom(changed, model, rest.wheel),
    notes: [...heightNote(rest.wheel, say), ...ringNote(corner.springs, springs, say)],
    back: back(rest.wheel),
  }
}

export function changePreload(corner: Corner, { preload }: Of<'preload'>, say: Say): Changed {
  const before = corner.springs.preload
  return settled(corner, preloaded(corner.springs, preload), () => ({ kind: 'preload', preload: before }), say)
}

export function changeCrossover(corner: Corner, { gap }: Of<'crossover'>, say: Say): Changed {
  const { springs } = corner
  if (springs.springs.length === 1) return refused('One spring has no divider.')
  if (gap !== null && gap < 0) return refused('The gap from divider to ring is 0 or more.')
  const before = springs.crossover?.gap ?? null
  return settled(
    corner,
    { ...springs, crossover: gap === null ? null : { gap } },
    () => ({ kind: 'crossover', gap: before }),
    say,
  )
}

/**
 * Preload with which a pack pushes with a force, N along the shock, its shaft `moved` m in from ride height; null when none does. Rise and fall
 * of the force with preload are what the springs are good for, loose and bound there is no telling.
 */
function pushing(corner: Corner, pack: (preload: number) => Springs, force: number, moved: number): number | null {
  const compression = corner.shock.stroke - corner.shock.showing + moved
  const over = (preload: number): number => springPack(pack(preload)).force(preload + compression) - force
  const root = findRoot(over, -corner.shock.stroke, packTravel(pack(0)), FINE)
  return root.found ? root.at : null
}

/** The chassis raised by preload: shaft, gap, clearances and points follow. The crossover's gap follows the collar. */
export function changeRideHeight(corner: Corner, { rise }: Of<'ride height'>, say: Say): Changed {
  if (Math.abs(rise) < SAME) return { ok: true, corner, notes: [], back: { kind: 'ride height', rise: 0 } }
  const { model, weight } = modelAndWeight(corner)
  const wheel = -rise
  if (wheel <= model.droop || wheel >= model.bump)
    return refused(
      `It has only ${say(rise > 0 ? -model.droop : model.bump, 'length')} of ${rise > 0 ? 'droop' : 'bump'}: ride height cannot change by ${say(Math.abs(rise), 'length')}.`,
    )
  const { springs } = corner
  // Then only a tender wound solid would lift it.
  if (springs.springs.length > 1 && model.crossover !== null && model.crossover <= Math.min(0, wheel))
    return refused(
      'The divider is on its ring there: turning the collar above it does nothing. Move the ring, or use another main spring.',
    )
  const { shock, shockRatio } = model.linkage.at(wheel)
  const { gas, stop } = model.forces(wheel, 'slow')
  const force = (weight - gas - stop) / shockRatio
  const preload = pushing(corner, value => preloaded(springs, value), force, shock)
  const turned = preload === null ? null : preloaded(springs, preload)
  const reason = turned === null ? 'No preload of these springs holds it there.' : cannotBe(turned, say)
  if (turned === null || reason !== null) return refused(reason ?? '')
  return {
    ok: true,
    corner: measuredFrom({ ...corner, springs: turned }, model, wheel),
    notes: [
      `The preload becomes ${say(turned.preload, 'length', { decimal: true })}; shaft, gap and clearances are measured from the new ride height.`,
      ...ringNote(springs, turned, say),
      'Height of the centre of gravity moves with the chassis: measure it again where loads matter.',
    ],
    back: { kind: 'preload', preload: springs.preload },
  }
}

/** Another spring, from the chassis end: with the preload that keeps the ride height, or the preload kept and the car let down on it. */
export function changeSpring(corner: Corner, { place, spring, keep }: Of<'spring'>, say: Say): Changed {
  const { springs } = corner
  const before = springs.springs[place]
  if (before === undefined)
    return refused(`There is no spring ${place + 1}: the coilover has ${springs.springs.length}.`)
  const other: Springs = { ...springs, springs: springs.springs.map((each, i) => (i === place ? spring : each)) }
  const solid = cannotBe({ ...other, preload: 0 }, say)
  if (solid !== null) return refused(solid)
  const back: Change = { kind: 'spring', place, spring: before, keep }
  const ring = springs.crossover === null ? [] : ['Set the ring to the same gap from the divider.']
  if (keep === 'preload') {
    const made = settled(corner, other, () => back, say)
    return made.ok ? { ...made, notes: [...made.notes, ...ring] } : made
  }
  const shaftIn = corner.shock.stroke - corner.shock.showing
  const force = springPack(springs).force(springs.preload + shaftIn)
  const preload = pushing(corner, value => ({ ...other, preload: value }), force, 0)
  if (preload === null) return refused('No preload of that spring holds the car at its ride height.')
  const held = { ...other, preload }
  const reason = cannotBe(held, say)
  if (reason !== null) return refused(reason)
  return {
    ok: true,
    corner: { ...corner, springs: held },
    notes: [`The preload becomes ${say(preload, 'length', { decimal: true })}, and the ride height stays.`, ...ring],
    back,
  }
}

/** Ride height measured anew, where the corner rests or at a position given. */
export function settle(corner: Corner, { at }: Of<'settle'>, say: Say): Changed {
  const { model, weight } = modelAndWeight(corner)
  const rest = at === undefined ? comesToRest(model, weight) : ({ ok: true, wheel: at } as const)
  if (!rest.ok) return refused(`It does not sit: the car goes to ${rest.end}.`)
  if (rest.wheel < model.droop || rest.wheel > model.bump)
    return refused(`There is no wheel travel at ${say(rest.wheel, 'length', { sign: true })}.`)
  return {
    ok: true,
    corner: measuredFrom(corner, model, rest.wheel),
    notes: heightNote(rest.wheel, say),
    back: { kind: 'settle', at: -rest.wheel },
  }
}
