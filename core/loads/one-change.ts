import { axleBudget, coiloverShare, sprungWeight } from '../budget/budget.ts'
import { unsaid } from '../budget/findings/rule.ts'
import type { Finding } from '../budget/results.ts'
import { measuredFrom } from '../changes/ride-height.ts'
import { cornerModel } from '../corner/corner.ts'
import { restingPosition } from '../corner/static-position.ts'
import { findRoot } from '../numerics/roots.ts'
import type { Axle, Corner } from '../plan/schema.ts'
import type { Quantity } from '../units/quantity.ts'
import type { Say } from '../units/saying.ts'
import { type Along, type ChangeKind, type Lever, leversOf } from './levers.ts'

/** How a corner stands with one value changed: m of wheel travel from the ride height the plan has. */
export interface Standing {
  /** Where it comes to rest under its sprung weight. */
  readonly rest: number
  readonly engagement: number | null
  readonly bump: number
  /** The budget's coilover share, ride height taped anew where it rests: coilover zone over bump travel, both from there. 0 to 1. */
  readonly share: number
}

interface Settled {
  readonly standing: Standing
  /** Taped anew where it rests, as its budget is then made; null where it does not sit but goes to full bump or full droop. */
  readonly taped: Corner | null
}

function settled(corner: Corner): Settled {
  const model = cornerModel(corner)
  const rest = restingPosition(model, sprungWeight(model))
  const { engagement, bump, droop } = model
  const taped = measuredFrom(corner, model, rest)
  const share = rest >= bump ? 0 : coiloverShare(cornerModel(taped))
  return { standing: { rest, engagement, bump, share }, taped: rest <= droop || rest >= bump ? null : taped }
}

/**
 * Counted from where the car really rests, so that a change that lifts it counts as well as one that moves the stop. A plan whose tape and
 * scales agree rests at its ride height: then the share is the one its budget has as it stands.
 */
export const standing = (corner: Corner): Standing => settled(corner).standing

/** One change that would do, or that none of its kind would. */
export interface OneChange {
  readonly kind: ChangeKind
  readonly name: string
  /** Path inside the axle. */
  readonly field: string
  readonly quantity: Quantity
  readonly now: number
  /** The value that gives the share asked for; null when none within reason does. */
  readonly to: number | null
  /** What moves along with it, by its path inside the axle. */
  readonly along: Along
  /** How the corner stands with it: as asked for, or the most this kind can do. */
  readonly after: Standing
  /** Dangers its whole budget then has that it has not now, in sentences. */
  readonly dangers: readonly string[]
}

/** How many looks are taken on the way to a lever's end, so that the least change that does is found where more of it undoes itself. */
const LOOKS = 32

/** Share of the way to a lever's end within which its value is found: finer than anything is set to. */
const FINE = 1e-9

/** Bump travel that is lost by less than this is not, m. */
const SAME = 1e-9

interface Look extends Settled {
  readonly part: number
  readonly corner: Corner
  /** 0 to 1; less than nothing where it is no remedy. */
  readonly worth: number
}

/** A part of the way; null where it cannot be built. What only takes bump travel away, or hangs the car at full droop, mends nothing. */
function look(lever: Lever, part: number, least: number): Look | null {
  const corner = lever.set(lever.now + (lever.furthest - lever.now) * part)
  if (corner === null) return null
  const found = settled(corner)
  const { bump, share } = found.standing
  const mends = bump >= least - SAME && (share === 0 || found.taped !== null)
  return { part, corner, ...found, worth: mends ? share : -1 }
}

/** The least of a lever that gives the share; else the most it gives. */
function search(lever: Lever, share: number, from: Look): { enough: boolean; look: Look } {
  const { bump } = from.standing
  const worth = (part: number): number => (look(lever, part, bump)?.worth ?? -1) - share
  let best = from
  for (let i = 1; i <= LOOKS; i += 1) {
    const next = look(lever, i / LOOKS, bump)
    if (next === null) continue
    if (next.worth >= share) {
      const root = findRoot(worth, (i - 1) / LOOKS, next.part, FINE)
      const near = root.found ? [root.at, root.at + root.width] : []
      const least = near.map(part => look(lever, part, bump)).find(found => found !== null && found.worth >= share)
      return { enough: true, look: least ?? next }
    }
    if (next.worth > best.worth) best = next
  }
  return { enough: false, look: best }
}

function dangersOf(axle: Axle, taped: Corner | null, say: Say): Finding[] {
  if (taped === null) return []
  const { findings } = axleBudget({ ...axle, corner: taped }, { units: 'metric' }, undefined, say)
  return findings.filter(({ severity }) => severity === 'danger')
}

/**
 * For each kind of change, how much of it alone gives a share of the travel to the coilover: the whole corner evaluated anew for every try,
 * let down to where it rests and taped there. A change made in the plan, and ride height taped anew, has that share in its budget.
 * @param share of bump travel, 0 to 1
 * @param say writes the values in its dangers
 * @returns empty when it has that share already
 */
export function oneChangeEach(axle: Axle, share: number, say: Say = unsaid): OneChange[] {
  const { corner } = axle
  const now = settled(corner)
  if (now.standing.share >= share) return []
  const known = new Set(dangersOf(axle, now.taped, unsaid).map(({ id }) => id))
  const from: Look = { part: 0, corner, ...now, worth: now.standing.share }
  return leversOf(corner).map((lever): OneChange => {
    const { enough, look: found } = search(lever, share, from)
    const { kind, name, field, quantity } = lever
    const dangers = enough ? dangersOf(axle, found.taped, say).filter(({ id }) => !known.has(id)) : []
    return {
      ...{ kind, name, field, quantity, now: lever.now },
      to: enough ? lever.now + (lever.furthest - lever.now) * found.part : null,
      along: enough ? lever.along(found.corner) : {},
      after: found.standing,
      dangers: dangers.map(({ message }) => message),
    }
  })
}
