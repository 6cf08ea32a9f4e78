import { measurementPaths } from '../plan/measurements.ts'
import type { Axle, Corner } from '../plan/schema.ts'
import { nonsense } from '../plan/sense.ts'
import type { Say } from '../units/saying.ts'
import { type Change, type Changed, refused } from './change.ts'
import { spacerIn, spacerOut } from './spacer-rules.ts'
import {
  changeCrossover,
  changePreload,
  changeRideHeight,
  changeSpring,
  changeSprings,
  hold,
  settle,
} from './spring-rules.ts'
import { changeCharge, changeOil, changeStop, moveStop, padShim } from './stop-rules.ts'

function ruled(corner: Corner, change: Change, say: Say): Changed {
  switch (change.kind) {
    case 'spacer':
      return spacerIn(corner, change, say)
    case 'spacer out':
      return spacerOut(corner, change, say)
    case 'pad shim':
      return padShim(corner, change, say)
    case 'move stop':
      return moveStop(corner, change, say)
    case 'stop':
      return changeStop(corner, change, say)
    case 'charge':
      return changeCharge(corner, change, say)
    case 'oil':
      return changeOil(corner, change, say)
    case 'spring':
      return changeSpring(corner, change, say)
    case 'preload':
      return changePreload(corner, change, say)
    case 'crossover':
      return changeCrossover(corner, change, say)
    case 'ride height':
      return changeRideHeight(corner, change, say)
    case 'springs':
      return changeSprings(corner, change, say)
    case 'hold':
      return hold(corner, change, say)
    case 'settle':
      return settle(corner, change, say)
  }
}

/** What a plan with this corner would be refused for; null when it would not. */
function contradicts(corner: Corner): string | null {
  const axle: Axle = { id: 'front', suspension: 'independent', track: 1, antiRollRate: 0, corner }
  const [problem] = nonsense({
    format: 'stopgap-plan',
    version: 1,
    title: '',
    notes: '',
    units: 'inch',
    vehicle: { name: '', wheelbase: 1, cgHeight: 0, rollAxisHeight: 0 },
    setups: [{ id: 'changed', name: '', axles: [axle] }],
    loads: [],
    terrains: [],
  })
  return problem === undefined ? null : `It cannot be so: ${problem.found}; ${problem.wanted} would be right.`
}

/**
 * One change made to a corner, by the exact rule of its kind, or why it cannot be made.
 * @param corner one that parsePlan accepts; a corner as changed is one too
 */
export function applyChange(corner: Corner, change: Change, say: Say): Changed {
  const made = ruled(corner, change, say)
  if (!made.ok) return made
  const reason = contradicts(made.corner)
  return reason === null ? made : refused(reason)
}

export type AllChanged =
  | {
      readonly ok: true
      readonly corner: Corner
      readonly notes: readonly string[]
      /** In the order that takes everything back. */
      readonly back: readonly Change[]
    }
  | { readonly ok: false; readonly reason: string; readonly at: number }

/** Changes made one after the other; the first that cannot be made refuses them all, `at` which it was. */
export function applyChanges(corner: Corner, changes: readonly Change[], say: Say): AllChanged {
  let now = corner
  const notes: string[] = []
  const back: Change[] = []
  for (const [at, change] of changes.entries()) {
    const made = ruled(now, change, say)
    if (!made.ok) return { ...made, at }
    now = made.corner
    notes.push(...made.notes)
    back.unshift(made.back)
  }
  const reason = changes.length === 0 ? null : contradicts(now)
  if (reason !== null) return { ok: false, reason, at: changes.length - 1 }
  return { ok: true, corner: now, notes, back }
}

export type AxleChanged =
  | (Extract<AllChanged, { ok: true }> & { readonly axle: Axle })
  | Extract<AllChanged, { ok: false }>

/** As `applyChanges`, on an axle: both its corners alike. What was assumed stays so, where there still is such a value. */
export function changeAxle(axle: Axle, changes: readonly Change[], say: Say): AxleChanged {
  const made = applyChanges(axle.corner, changes, say)
  if (!made.ok) return made
  const changed = { ...axle, corner: made.corner }
  if (axle.assumed === undefined) return { ...made, axle: changed }
  const paths = new Set(measurementPaths(changed))
  return { ...made, axle: { ...changed, assumed: axle.assumed.filter(path => paths.has(path)) } }
}
