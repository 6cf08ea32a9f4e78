import { type Bound, boundWords } from '../../core/plan/bound.ts'
import type { Problem } from '../../core/plan/problem.ts'
import { INCH } from '../../core/units/constants.ts'
import { fieldText } from '../../core/units/format.ts'
import { type Quantity, type System, toUnit, unitOf } from '../../core/units/quantity.ts'
import { normal } from '../state/place.ts'
import type { Refusal } from '../state/state.ts'
import type { FieldSpec } from './field-spec.ts'
import { specOf } from './field-table.ts'

/** What is wrong with an entry, and what would be right. */
type Said = Omit<Refusal, 'text'>

/** A limit as its field would show it, with its unit. */
const shown = (limit: number, quantity: Quantity, system: System): string =>
  `${fieldText(limit, quantity, system)} ${unitOf(quantity, system).label}`.trimEnd()

/** Limits this large, m, are nobody's measure: the last mark of the tape inside them will do. */
const FAR = 10 * INCH

/** A limit of all values of a kind: `787 3/8 in`, where its own field would show `787.402 in`. */
function outermost(limit: number, quantity: Quantity, system: System): string {
  const far = quantity === 'length' && system === 'inch' && Math.abs(limit) > FAR
  const mark = INCH / 16
  return shown(far ? Math.trunc(limit / mark) * mark : limit, quantity, system)
}

/** What a problem wants, in the units on screen. */
export const wantedWords = ({ wanted, bound }: Problem, quantity: Quantity, system: System): string =>
  bound === undefined ? wanted : boundWords(bound, limit => shown(limit, quantity, system))

const sentence = (text: string): string => {
  const begun = text.charAt(0).toUpperCase() + text.slice(1)
  return /[.!?]$/.test(begun) ? begun : `${begun}.`
}

/** An entry that is not a measure at all: the first sentence says what is wrong, the rest what would be right. */
export function unreadable(text: string, problem: string): Refusal {
  const end = problem.indexOf('. ') + 1
  return { text, wrong: problem.slice(0, end || undefined), right: end === 0 ? '' : problem.slice(end + 1) }
}

/** A value outside the range of its kind. A limit nobody could read off is nothing to a person: more than nothing is what is meant. */
function outOfRange({ side, limit }: Bound, quantity: Quantity, system: System): Said {
  if (side === 'most' || side === 'below')
    return { wrong: 'Too large.', right: `It takes ${outermost(limit, quantity, system)} or less.` }
  const unseen = limit > 0 && toUnit(limit, quantity, system) < 10 ** -unitOf(quantity, system).digits
  return {
    wrong: 'Too small.',
    right: unseen
      ? `It takes more than ${shown(0, quantity, system)}.`
      : `It takes ${outermost(limit, quantity, system)} or more.`,
  }
}

const own: Readonly<Record<string, (bound: Bound, say: (limit: number) => string) => Said>> = {
  'corner.shock.showing': ({ limit }, say) => ({
    wrong: `More than ${say(limit)} of stroke.`,
    right: 'Tape only the bright shaft, from the body to what it meets.',
  }),
  'corner.stop.gap': ({ limit }, say) => ({
    wrong: 'Pushed in further than the stop goes.',
    right: `No less than ${say(limit)}.`,
  }),
}

/** What is wrong with a value, from the problem a plan or a part would have at its own place. */
export function saidOf(problem: Problem, quantity: Quantity, system: System, field = ''): Said {
  const { bound } = problem
  if (bound !== undefined) {
    if (bound.of === undefined && bound.why === undefined) return outOfRange(bound, quantity, system)
    const words = own[field]?.(bound, limit => shown(limit, quantity, system))
    if (words !== undefined) return words
  }
  return { wrong: 'That cannot be.', right: sentence(`right would be ${wantedWords(problem, quantity, system)}`) }
}

const tail = (path: string): string => normal(path).replace(/^setups\.\d+\.axles\.\d+\./, '')

/** What a problem of the plan wants, wherever it is, in the units on screen. */
export function wantedAt(problem: Problem, system: System): string {
  const spec = specOf(tail(problem.path))
  return spec === null ? problem.wanted : wantedWords(problem, spec.quantity, system)
}

/** What is wrong where nothing was typed: with another value of the plan, which goes by its own name and units. */
export function saidElsewhere(problem: Problem, system: System): Said {
  const other = specOf(tail(problem.path))
  return other === null
    ? { wrong: sentence(`then there would be ${problem.found}`), right: sentence(`needed: ${problem.wanted}`) }
    : {
        wrong: sentence(`it does not go with ${other.named}`),
        right: sentence(`${other.label} would have to be ${wantedWords(problem, other.quantity, system)}`),
      }
}

/** Why the plan did not take what was typed into a field, from the problems it would have had. */
export function refusalOf(
  place: string,
  spec: FieldSpec,
  text: string,
  problems: readonly Problem[],
  system: System,
): Refusal {
  const here = problems.find(({ path }) => normal(path) === place)
  const said =
    here === undefined ? saidElsewhere(problems[0]!, system) : saidOf(here, spec.quantity, system, tail(place))
  return { text, ...said }
}
