import type { Problem } from '../../core/plan/problem.ts'
import { formatMeasure } from '../../core/units/format.ts'
import type { Quantity, System } from '../../core/units/quantity.ts'
import { normal } from '../state/place.ts'
import type { Refusal } from '../state/state.ts'
import type { FieldSpec } from './field-spec.ts'
import { specOf } from './field-table.ts'

/** What a plan's problem says in SI, said in the units on screen. */

const NUMBER = String.raw`[-−]?\d[\d.]*(?:e[+-]?\d+)?`
const quantities: Readonly<Record<string, Quantity>> = { m: 'length', 'm³': 'volume', kg: 'mass' }

const shown = (si: string, quantity: Quantity, system: System): string =>
  formatMeasure(Number(si.replace('−', '-')), quantity, system, { unit: true })

/** Values of an SI sentence, in the units on screen. */
export const inUnits = (text: string, quantity: Quantity, system: System): string =>
  text
    .replace(new RegExp(`(${NUMBER}) (m³|m|kg)(?![\\w/])`, 'g'), (_, si: string, unit: string) =>
      shown(si, quantities[unit]!, system),
    )
    .replace(new RegExp(`the (${NUMBER}) before it`), (_, si: string) => `the ${shown(si, quantity, system)} before it`)

const sentence = (text: string): string => {
  const begun = text.charAt(0).toUpperCase() + text.slice(1)
  return /[.!?]$/.test(begun) ? begun : `${begun}.`
}

/** An entry that is not a measure at all: the first sentence says what is wrong, the rest what would be right. */
export function unreadable(text: string, problem: string): Refusal {
  const end = problem.indexOf('. ') + 1
  return { text, wrong: problem.slice(0, end || undefined), right: end === 0 ? '' : problem.slice(end + 1) }
}

const bound = (wanted: string, { quantity }: FieldSpec, system: System): Omit<Refusal, 'text'> | null => {
  const match = new RegExp(`^(${NUMBER}) or (more|less)$`).exec(wanted)
  if (match === null) return null
  const limit = shown(match[1]!, quantity, system)
  const nothing = shown('0', quantity, system)
  if (match[2] === 'more' && Number(match[1]) > 0 && limit === nothing)
    return { wrong: 'Too small.', right: `It takes more than ${nothing}.` }
  return match[2] === 'more'
    ? { wrong: 'Too small.', right: `It takes ${limit} or more.` }
    : { wrong: 'Too large.', right: `It takes ${limit} or less.` }
}

const own: Readonly<Record<string, (wanted: string) => Omit<Refusal, 'text'>>> = {
  'corner.shock.showing': wanted => ({
    wrong: `More than ${/the stroke, (.*)$/.exec(wanted)?.[1] ?? ''} of stroke.`,
    right: 'Tape only the bright shaft, from the body to what it meets.',
  }),
  'corner.stop.gap': wanted => ({
    wrong: 'Pushed in further than the stop goes.',
    right: sentence(wanted.split(':')[0]!),
  }),
}

const tail = (path: string): string => normal(path).replace(/^setups\.\d+\.axles\.\d+\./, '')

/** Why the plan did not take what was typed into a field, from the problems it would have had. */
export function refusalOf(
  place: string,
  spec: FieldSpec,
  text: string,
  problems: readonly Problem[],
  system: System,
): Refusal {
  const here = problems.find(({ path }) => normal(path) === place)
  const problem = here ?? problems[0]!
  const wanted = inUnits(problem.wanted, spec.quantity, system)
  if (here !== undefined) {
    const said = bound(problem.wanted, spec, system) ?? own[tail(place)]?.(wanted)
    return { text, ...(said ?? { wrong: 'That cannot be.', right: sentence(`right would be ${wanted}`) }) }
  }
  const other = specOf(tail(problem.path))
  return other === null
    ? {
        text,
        wrong: sentence(`then there would be ${inUnits(problem.found, spec.quantity, system)}`),
        right: sentence(`needed: ${wanted}`),
      }
    : {
        text,
        wrong: sentence(`it does not go with ${other.named}`),
        right: sentence(`${other.label} would have to be ${inUnits(problem.wanted, other.quantity, system)}`),
      }
}
