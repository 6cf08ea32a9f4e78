import type { AxleBudget } from '../../core/budget/results.ts'
import type { Axle, Plan } from '../../core/plan/schema.ts'
import { type Row, rows } from './differences.ts'
import { sayer } from './figures.ts'

/** What was measured after the work, SI, by its path inside the axle. */
export type Built = Readonly<Record<string, number>>

/** What can be typed back from a shop sheet: what the plan after the work has a value for. */
export const blanks = (before: Axle, after: Axle): Row[] => rows(before, after).filter(({ after: is }) => is !== null)

/** Arithmetic on a converted fraction leaves this much of a tolerance. */
const EXACT = 1 + 1e-6

/** A value that was built otherwise than planned. */
export interface Difference {
  readonly path: string
  /** `gap 1/8 in more than planned` */
  readonly short: string
  /** Within what is to be held. */
  readonly held: boolean
  readonly sentence: string
}

/** What was built otherwise than planned, in words. */
export function differences(plan: Plan, before: Axle, after: Axle, built: Built): Difference[] {
  const say = sayer(plan)
  return blanks(before, after).flatMap(({ path, name, quantity, after: is, tolerance }) => {
    const value = built[path]
    if (value === undefined || is === null || Math.abs(value - is) < 1e-9 * Math.max(1, Math.abs(is))) return []
    const held = Math.abs(value - is) <= tolerance * EXACT
    const off = `${finely(plan, value - is, quantity)} ${value > is ? 'more' : 'less'} than planned`
    const told = tolerance === 0 ? 'no tolerance is given' : `${say(tolerance, quantity)} either way is to be held`
    return [
      {
        path,
        short: `${name} ${off}`,
        held,
        sentence: held
          ? `${off}, within what is to be held.`
          : `As built, ${name} is ${say(value, quantity)}: ${off}, and ${told}.`,
      },
    ]
  })
}

/** A difference as a tape reads it; one finer than that as a decimal, never as nothing. */
function finely(plan: Plan, difference: number, quantity: Row['quantity']): string {
  const say = sayer(plan)
  const size = Math.abs(difference)
  const usual = say(size, quantity)
  if (/[1-9]/.test(usual)) return usual
  return (
    [3, 4, 6].map(digits => say(size, quantity, { decimal: true, digits })).find(text => /[1-9]/.test(text)) ?? usual
  )
}

/** What was built further from the plan than its tolerance, in sentences. */
export const beyond = (plan: Plan, before: Axle, after: Axle, built: Built): string[] =>
  differences(plan, before, after, built).flatMap(({ held, sentence }) => (held ? [] : [sentence]))

/** A wheel position this near to another is the same to a tape, m. */
const SEEN = 5e-4

/** What the differences come to in the car's travel, in sentences; nothing when nobody would see it. */
export function consequences(plan: Plan, planned: AxleBudget, built: AxleBudget): string[] {
  const say = sayer(plan)
  const [was, is] = [planned.engagement, built.engagement]
  const said: string[] = []
  if (was !== null && is !== null && Math.abs(is.wheel - was.wheel) >= SEEN) {
    const [part, wanted] = [say(is.share, 'share'), say(was.share, 'share')]
    said.push(
      `The wheel meets the stop at ${say(is.wheel, 'length', { sign: true })}, ${finely(plan, is.wheel - was.wheel, 'length')} ${is.wheel > was.wheel ? 'later' : 'sooner'} than planned: ${part} of bump is on the coilover alone${part === wanted ? ', as planned' : ` instead of ${wanted}`}.`,
    )
  }
  if (was !== null && is === null) said.push('The wheel does not meet the stop in its travel any more.')
  if (was === null && is !== null)
    said.push(`The wheel meets the stop at ${say(is.wheel, 'length', { sign: true })}; as planned it does not.`)
  const longer = built.travel.bump - planned.travel.bump
  if (Math.abs(longer) >= SEEN)
    said.push(
      `Full bump is ${say(built.travel.bump, 'length')}, ${finely(plan, longer, 'length')} ${longer > 0 ? 'more' : 'less'} than planned (${built.travel.bumpLimitedBy}).`,
    )
  return said
}

/** The axle as built: what was planned, with what was measured in its place and no longer assumed. */
export function builtAxle(after: Axle, built: Built): Axle {
  const axle = structuredClone(after)
  for (const [path, value] of Object.entries(built)) {
    const keys = path.split('.')
    const last = keys.pop()!
    const holder = keys.reduce<Record<string, unknown>>(
      (inner, key) => inner[key] as Record<string, unknown>,
      axle as unknown as Record<string, unknown>,
    )
    holder[last] = value
  }
  if (axle.assumed !== undefined) axle.assumed = axle.assumed.filter(path => !Object.hasOwn(built, path))
  return axle
}
