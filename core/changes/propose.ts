import type { Axle, Plan } from '../plan/schema.ts'
import type { Change } from './change.ts'
import { type Candidate, evaluator, type Question, type Worked } from './evaluate.ts'
import { combinations, type Ranges } from './ranges.ts'
import { ranked } from './rank.ts'
import { type TargetId, targetsOf } from './targets.ts'

/** More combinations than this are not worked out: the ranges are too wide to look at. How many were left out is told. */
export const MOST_CANDIDATES = 5000

/** How candidates are looked at: landings driven or bounded by energy, and a course to drive over as well. */
export type How = Pick<Question, 'landing' | 'course'>

export interface Proposals {
  /** The setup as it stands. */
  readonly present: Worked
  /** In the order they are worth looking at. */
  readonly order: readonly Worked[]
  readonly refused: readonly Extract<Candidate, { ok: false }>[]
  readonly feasible: number
  /** How many miss each target, whatever else they miss. */
  readonly misses: Readonly<Partial<Record<TargetId, number>>>
  /** The plan names no targets, and the usual share is aimed at. */
  readonly usualTargets: boolean
  /** Combinations beyond the most that are worked out. */
  readonly leftOut: number
}

/** What is to be worked out for one axle. Any of the list can be worked out anywhere, in any order, by `evaluator`. */
export interface Work {
  readonly question: Question
  /** Combinations of changes; the first changes nothing. */
  readonly list: readonly (readonly Change[])[]
  readonly usualTargets: boolean
  readonly leftOut: number
}

export function work(axle: Axle, plan: Pick<Plan, 'units' | 'targets'>, ranges: Ranges, how: How = {}): Work {
  const { targets, usual } = targetsOf(plan.targets)
  const all = combinations(axle.corner, ranges)
  return {
    question: { axle, units: plan.units, targets, ...how },
    list: all.slice(0, MOST_CANDIDATES),
    usualTargets: usual,
    leftOut: Math.max(0, all.length - MOST_CANDIDATES),
  }
}

/** Puts candidates together that were worked out in any order, by one worker or several; `candidates` in the order of the list, the present first. */
export function gathered(
  candidates: readonly Candidate[],
  { usualTargets, leftOut }: Pick<Work, 'usualTargets' | 'leftOut'>,
): Proposals {
  const [present, ...others] = candidates
  if (present === undefined || !present.ok)
    throw new RangeError('The first candidate changes nothing, and a plan that was read can be worked out.')
  const order = ranked(others)
  const misses: Partial<Record<TargetId, number>> = {}
  for (const { targets } of order) for (const { id, met } of targets) if (!met) misses[id] = (misses[id] ?? 0) + 1
  return {
    present,
    order,
    refused: others.filter((each): each is Extract<Candidate, { ok: false }> => !each.ok),
    feasible: order.filter(({ feasible }) => feasible).length,
    misses,
    usualTargets,
    leftOut,
  }
}

/** One candidate done, of so many. */
export interface Progress {
  readonly done: number
  readonly of: number
  readonly candidate: Candidate
}

/**
 * Every candidate of an axle, one at a time: whoever runs it may stop between any two. Ends with all of them ranked.
 * Same axle, targets and ranges: the same proposals.
 */
export function* propose(
  axle: Axle,
  plan: Pick<Plan, 'units' | 'targets'>,
  ranges: Ranges,
  how: How = {},
): Generator<Progress, Proposals> {
  const asked = work(axle, plan, ranges, how)
  const evaluate = evaluator(asked.question)
  const candidates: Candidate[] = []
  for (const changes of asked.list) {
    const candidate = evaluate(changes)
    candidates.push(candidate)
    yield { done: candidates.length, of: asked.list.length, candidate }
  }
  return gathered(candidates, asked)
}

/** Runs a generator of proposals to its end. */
export function proposed(steps: Generator<Progress, Proposals>): Proposals {
  for (;;) {
    const step = steps.next()
    if (step.done) return step.value
  }
}
