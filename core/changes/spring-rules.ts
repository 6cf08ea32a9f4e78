import { sprungWeight } from '../budget/budget.ts'
import { cornerModel } from '../corner/corner.ts'
import type { CornerModel } from '../corner/corner-model.ts'
import { springPack } from '../forces/spring-pack.ts'
import type { Corner, Springs } from '../plan/schema.ts'
import type { Say } from '../units/saying.ts'
import { type Change, type Changed, refused } from './change.ts'
import { cannotBe, preloaded, pushing } from './preload.ts'
import { comesToRest, measuredFrom, modelAndWeight } from './ride-height.ts'

type Of<Kind extends Change['kind']> = Extract<Change, { kind: Kind }>

/** A ride height that changes by less than this is the same, m. */
const SAME = 1e-9

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

/** The pack at another preload, m, its divider ring left where it is or moved to `gap`; where the car then sits is measured anew. */
export function changePreload(corner: Corner, { preload, gap }: Of<'preload'>, say: Say): Changed {
  const { springs } = corner
  const turned = gap === undefined ? preloaded(springs, preload) : { ...springs, preload, crossover: { gap } }
  const back: Change = {
    kind: 'preload',
    preload: springs.preload,
    ...(springs.crossover === null ? {} : { gap: springs.crossover.gap }),
  }
  return settled(corner, turned, () => back, say)
}

/** The whole pack as given, at the same ride height: to put one back as it was. */
export function changeSprings(corner: Corner, { springs }: Of<'springs'>, say: Say): Changed {
  const reason = cannotBe(springs, say)
  if (reason !== null) return refused(reason)
  return { ok: true, corner: { ...corner, springs }, notes: [], back: { kind: 'springs', springs: corner.springs } }
}

/** The divider ring moved to a gap at full extension, m, 0 or more, or taken off (null); refused where there is no divider. */
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

interface Carrying {
  readonly ok: true
  readonly springs: Springs
  readonly notes: readonly string[]
}

/**
 * The pack with the preload that carries a weight at a wheel position; or why none does. The divider ring is left where it is, unless the
 * divider is on it there: then the collar above it does nothing, and the ring moves with the divider.
 */
function carrying(
  model: CornerModel,
  weight: number,
  wheel: number,
  say: Say,
): Carrying | { ok: false; reason: string } {
  const { corner, crossover, linkage } = model
  const { springs } = corner
  const onRing = springs.springs.length > 1 && crossover !== null && crossover <= Math.min(0, wheel)
  const pack = (preload: number): Springs => (onRing ? { ...springs, preload } : preloaded(springs, preload))
  const { shock, shockRatio } = linkage.at(wheel)
  const { gas, stop } = model.forces(wheel, 'slow')
  const preload = pushing(corner, pack, (weight - gas - stop) / shockRatio, shock)
  if (preload === null) return refused('No preload of these springs holds it there.')
  const turned = pack(preload)
  const reason = cannotBe(turned, say)
  if (reason !== null) return refused(reason)
  const ring =
    onRing && turned.crossover !== null
      ? [
          `The divider is on its ring there, and the collar alone does nothing: move the ring too, so that its gap at full extension stays ${say(turned.crossover.gap, 'length', { decimal: true })}.`,
        ]
      : ringNote(springs, turned, say)
  return { ok: true, springs: turned, notes: ring }
}

const preloadNote = ({ preload }: Springs, say: Say): string =>
  `The preload becomes ${say(preload, 'length', { decimal: true })}`

/** The chassis raised by preload: shaft, gap, clearances and points follow. The crossover's gap follows the collar. */
export function changeRideHeight(corner: Corner, { rise }: Of<'ride height'>, say: Say): Changed {
  if (Math.abs(rise) < SAME) return { ok: true, corner, notes: [], back: { kind: 'ride height', rise: 0 } }
  const { model, weight } = modelAndWeight(corner)
  const wheel = -rise
  if (wheel <= model.droop || wheel >= model.bump)
    return refused(
      `It has only ${say(rise > 0 ? -model.droop : model.bump, 'length')} of ${rise > 0 ? 'droop' : 'bump'}: ride height cannot change by ${say(Math.abs(rise), 'length')}.`,
    )
  const turned = carrying(model, weight, wheel, say)
  if (!turned.ok) return turned
  const { springs } = turned
  return {
    ok: true,
    corner: measuredFrom({ ...corner, springs }, model, wheel),
    notes: [
      `${preloadNote(springs, say)}; shaft, gap and clearances are measured from the new ride height.`,
      ...turned.notes,
      'Height of the centre of gravity moves with the chassis: measure it again where loads matter.',
    ],
    back: {
      kind: 'preload',
      preload: corner.springs.preload,
      ...(corner.springs.crossover === null ? {} : { gap: corner.springs.crossover.gap }),
    },
  }
}

/** The preload that carries a weight at the measured ride height: after a stop no longer does, say. */
export function hold(corner: Corner, { weight }: Of<'hold'>, say: Say): Changed {
  const model = cornerModel(corner)
  const turned = carrying(model, weight, 0, say)
  if (!turned.ok) return turned
  return {
    ok: true,
    corner: { ...corner, springs: turned.springs },
    notes: [`${preloadNote(turned.springs, say)}, and the ride height stays.`, ...turned.notes],
    back: { kind: 'springs', springs: corner.springs },
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
    notes: [`${preloadNote(held, say)}, and the ride height stays.`, ...ring],
    back: { kind: 'springs', springs },
  }
}

/** Ride height measured anew: where the corner rests under its sprung weight, as its budget says, or at a position given. */
export function settle(corner: Corner, { at }: Of<'settle'>, say: Say): Changed {
  const model = cornerModel(corner)
  const rest = at === undefined ? comesToRest(model, sprungWeight(model)) : ({ ok: true, wheel: at } as const)
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
