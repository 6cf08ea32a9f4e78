import { LEAST_COILOVER_SHARE } from '../budget/findings/stop.ts'
import type { Targets } from '../plan/schema.ts'
import type { Say } from '../units/saying.ts'
import type { CandidateFigures } from './evaluate.ts'
import { FINE } from './landing.ts'

export type TargetId = keyof Targets

/** How one target comes out. */
export interface TargetResult {
  readonly id: TargetId
  readonly wanted: number
  /** Null where there is nothing to compare: no gas in the stop, say. Then it is met. */
  readonly got: number | null
  readonly met: boolean
  /** What is in hand over what is wanted, as a share of it; below 0 where it falls short. */
  readonly inHand: number
}

interface Target {
  readonly of: (figures: CandidateFigures) => number | null
  /** At most what is wanted, not at least. */
  readonly most?: true
  /** Falling short by this much is meeting it: less than anybody reads off. */
  readonly mark: number
  /** In words: `the coilover’s share`. */
  readonly words: string
  readonly say: (value: number, say: Say) => string
}

const TARGETS: Readonly<Record<TargetId, Target>> = {
  coiloverShare: {
    of: figures => figures.share,
    mark: 5e-3,
    words: 'the coilover’s share of bump',
    say: (value, say) => say(value, 'share'),
  },
  coiloverTravel: {
    of: figures => figures.coiloverTravel,
    mark: 8e-4,
    words: 'travel on the coilover alone',
    say: (value, say) => say(value, 'length'),
  },
  landingDrop: {
    of: figures => figures.landing.drop,
    mark: FINE,
    words: 'the drop it lands without metal meeting',
    say: (value, say) => say(value, 'length'),
  },
  shockLeft: {
    of: figures => figures.shockLeft,
    mark: 1e-6,
    words: 'shock shaft left at full bump',
    say: (value, say) => say(value, 'length'),
  },
  stopPressure: {
    of: figures => figures.stopPressure,
    most: true,
    mark: 1,
    words: 'pressure in the stop closed in a hit',
    say: (value, say) => say(value, 'pressure'),
  },
}

/** What is aimed at where a plan names nothing: the usual share of bump travel on the coilover. */
const USUAL_TARGETS: Targets = { coiloverShare: LEAST_COILOVER_SHARE }

/** The targets a plan names, in one order; the usual ones where it names none. */
export function targetsOf(targets: Targets | undefined): { readonly targets: Targets; readonly usual: boolean } {
  const named = Object.fromEntries(Object.entries(targets ?? {}).filter(([, value]) => value !== undefined))
  return Object.keys(named).length === 0 ? { targets: USUAL_TARGETS, usual: true } : { targets: named, usual: false }
}

/** How a candidate’s figures come out against every target named. */
export function againstTargets(figures: CandidateFigures, targets: Targets): TargetResult[] {
  return (Object.keys(TARGETS) as TargetId[]).flatMap((id): TargetResult[] => {
    const wanted = targets[id]
    if (wanted === undefined) return []
    const { of, most, mark } = TARGETS[id]
    const got = of(figures)
    if (got === null) return [{ id, wanted, got, met: true, inHand: 1 }]
    const over = most ? wanted - got : got - wanted
    return [{ id, wanted, got, met: over >= -mark, inHand: over / Math.max(wanted, mark) }]
  })
}

/** `landing height 14 in of 18 in`, `pressure … 1,700 psi, 1,500 psi at most`. */
export function targetWords({ id, wanted, got }: TargetResult, say: Say): string {
  const target = TARGETS[id]
  const written = target.say(wanted, say)
  if (got === null) return `${target.words}: none`
  return `${target.words} ${target.say(got, say)}, ${written} ${target.most ? 'at most' : 'wanted'}`
}

/** A target in a few words with its value, for a heading. */
export const targetName = (id: TargetId, wanted: number, say: Say): string =>
  `${TARGETS[id].words} ${TARGETS[id].most ? 'at most' : 'at least'} ${TARGETS[id].say(wanted, say)}`
