import type { Change, ChangeKind } from './change.ts'
import type { Candidate, Worked } from './evaluate.ts'

/** How much work a change is, against the others: nitrogen through a valve is the least, parts to buy and mounts to weld the most. Common practice. */
const WORK: Readonly<Record<ChangeKind, number>> = {
  charge: 1,
  'pad shim': 2,
  preload: 2,
  'ride height': 2,
  hold: 2,
  crossover: 2,
  oil: 4,
  'spacer out': 4,
  spacer: 5,
  spring: 7,
  springs: 8,
  stop: 9,
  'move stop': 10,
  settle: 0,
}

/** Two kinds in one go share the work of opening a stop: charge and oil go with a spacer. */
const workOf = (changes: readonly Change[]): number => {
  const kinds = new Set(changes.map(({ kind }) => kind))
  const opened = (['spacer', 'spacer out', 'oil', 'stop'] as const).some(kind => kinds.has(kind))
  return [...kinds].reduce((sum, kind) => sum + (opened && kind === 'charge' ? 0 : WORK[kind]), 0)
}

/** Least in hand of any target, as a share of it: how near a candidate comes to failing, or how far it fails. */
const leastInHand = ({ targets }: Worked): number => Math.min(1, ...targets.map(({ inHand }) => inHand))

const missed = ({ targets }: Worked): number => targets.filter(({ met }) => !met).length

const worked = (candidates: readonly Candidate[]): Worked[] => candidates.filter((each): each is Worked => each.ok)

/**
 * Candidates in the order they are worth looking at: those that meet every target first, and of those the least work first, then the most
 * in hand; then the others, fewest dangers first, fewest targets missed, the nearest first. Equals stay in the order they came.
 */
export const ranked = (candidates: readonly Candidate[]): Worked[] =>
  worked(candidates).sort((a, b) => {
    if (a.feasible !== b.feasible) return a.feasible ? -1 : 1
    const first = a.feasible
      ? workOf(a.changes) - workOf(b.changes)
      : a.dangers.length - b.dangers.length || missed(a) - missed(b)
    return first || leastInHand(b) - leastInHand(a)
  })

/** What kind of job a candidate is: neighbours that differ in an amount of charge alone are one job. */
const jobOf = ({ changes }: Worked): string =>
  changes
    .filter(({ kind }) => kind !== 'settle')
    .map(change => (change.kind === 'spacer' ? `spacer ${change.length}` : change.kind))
    .join(' + ')

/** The best candidate of each job, in ranked order, so many at most. */
export function shortlist(order: readonly Worked[], most: number): Worked[] {
  const jobs = new Set<string>()
  return order
    .filter(candidate => {
      const job = jobOf(candidate)
      if (jobs.has(job)) return false
      jobs.add(job)
      return true
    })
    .slice(0, most)
}
