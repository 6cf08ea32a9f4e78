import type { ChangeKind } from '../../core/changes/change.ts'
import type { Worked } from '../../core/changes/evaluate.ts'
import type { Proposals } from '../../core/changes/propose.ts'
import {
  candidateCosts,
  candidateName,
  candidateReasons,
  candidateWork,
  landingWords,
  regionWords,
} from '../../core/changes/propose-words.ts'
import { shortlist } from '../../core/changes/rank.ts'
import { type TargetId, targetName } from '../../core/changes/targets.ts'
import type { Axle, Plan, Setup } from '../../core/plan/schema.ts'
import { listed, sayIn } from '../../core/units/saying.ts'
import { AXLE_NAMES, planTitle, setupName } from './names.ts'
import { paragraph, underlined } from './paragraph.ts'

/** Jobs shown: a person reads no more. */
const SHOWN = 5

const NAMES: Readonly<Partial<Record<ChangeKind, string>>> = {
  spacer: 'spacer',
  oil: 'oil taken out',
  charge: 'charge',
  hold: 'preload',
  'pad shim': 'pad shim',
  stop: 'another stop',
  spring: 'another main spring',
}

/** What was looked at. */
export interface Looked {
  /** Ranges somebody chose, as the plan keeps them. */
  readonly chosen: boolean
  /** Oil taken out as well, because nothing without it met every target. */
  readonly oil: boolean
}

/** What was combined, in one order. */
function kindsOf({ order, refused }: Proposals): string[] {
  const kinds = new Set([...order, ...refused].flatMap(({ changes }) => changes.map(({ kind }) => kind)))
  return (Object.entries(NAMES) as [ChangeKind, string][]).filter(([kind]) => kinds.has(kind)).map(([, name]) => name)
}

function candidateText(candidate: Worked, place: number, { present }: Proposals, plan: Plan): string {
  const say = sayIn(plan.units)
  const line = (text: string): string => paragraph(text, '   ', '     ')
  return [
    paragraph(`${place}. ${candidateName(candidate, say)}`, '', '   '),
    ...candidateReasons(candidate, say).map(line),
    line(`Landing height: ${landingWords(candidate.figures.landing, say)}.`),
    line(`Work: ${candidateWork(candidate).join(' ')}`),
    ...candidateCosts(candidate, present.figures, say).map(cost => line(`Against as it is: ${cost}`)),
  ].join('')
}

/**
 * Proposals for people, in the plan's own units: what is aimed at, how the setup stands, what would do, and why the others would not.
 */
export function proposeText(plan: Plan, setup: Setup, axle: Axle, found: Proposals, what: Looked): string {
  const say = sayIn(plan.units)
  const { present, order, feasible, usualTargets, leftOut } = found
  const wanted = new Map(present.targets.map(({ id, wanted: value }) => [id, value]))
  const name = (id: TargetId): string => targetName(id, wanted.get(id)!, say)
  const shown = shortlist(order, SHOWN)
  const count = order.length + found.refused.length
  const why = what.chosen ? ', as the plan’s own ranges say' : what.oil ? ', oil because none does without' : ''
  const looked =
    count === 0
      ? what.chosen
        ? 'There is nothing to change here: the ranges the plan keeps name nothing this corner has.'
        : 'There is nothing to change here: spacers and charges are for hydraulic stops.'
      : `${count} combinations of ${listed(kindsOf(found))} were looked at${why}; ${feasible === 0 ? 'none meets every target' : `${feasible} meet every target`}.${leftOut === 0 ? '' : ` ${leftOut} more were not looked at.`}`
  return [
    paragraph(planTitle(plan)),
    '\n',
    underlined(`${setupName(setup)}, ${AXLE_NAMES[axle.id].toLowerCase()}`, '═'),
    paragraph(
      `${usualTargets ? 'The plan names no targets. Aimed at is what is usual' : 'Aimed at'}: ${[...wanted.keys()].map(name).join('; ')}.`,
    ),
    '\nAs it is\n',
    ...candidateReasons(present, say).map(reason => paragraph(reason, '   ', '     ')),
    '\n',
    paragraph(looked),
    ...regionWords(found, name).map(words => paragraph(`- ${words}`, '', '  ')),
    ...(shown.length === 0
      ? []
      : [
          `\n${underlined(feasible === 0 ? 'Nearest to the targets' : 'Proposals', '─')}`,
          paragraph(
            feasible === 0
              ? 'The nearest first. Shims, other springs or another stop may reach further.'
              : 'The least work first, then what leaves most in hand; the best of each job.',
          ),
          ...shown.map((candidate, i) => `\n${candidateText(candidate, i + 1, found, plan)}`),
        ]),
    '\n',
    paragraph(
      'Computed from the plan alone. Measure again after the work, cycle the suspension without springs, and drive gently first.',
    ),
  ].join('')
}
