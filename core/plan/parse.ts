import { z } from 'zod'
import { type Bound, boundWords } from './bound.ts'
import { readable, readJson, unbearable } from './json-text.ts'
import { migrate } from './migrate.ts'
import { type Problem, pathText, quoted } from './problem.ts'
import { type Plan, planSchema } from './schema.ts'
import { nonsense } from './sense.ts'

export type Parsed =
  | { readonly ok: true; readonly plan: Plan }
  | { readonly ok: false; readonly problems: readonly Problem[] }

const at = (value: unknown, path: readonly PropertyKey[]): unknown =>
  path.reduce<unknown>(
    (inner, key) =>
      typeof inner === 'object' && inner !== null ? (inner as Record<PropertyKey, unknown>)[key] : undefined,
    value,
  )

const listed = (values: readonly unknown[]): string => values.map(value => quoted(value)).join(' or ')

const KINDS: Readonly<Record<string, string>> = {
  array: 'a list',
  tuple: 'a list',
  object: 'a group of values',
  int: 'a whole number',
  string: 'a text',
}

/** A limit of a list's entries, or of a text's characters, as people say it. */
function countOf(limit: number | bigint, origin: string, words: string): string {
  return `${words} ${limit} ${origin === 'array' ? 'in the list' : 'characters'}`
}

/** The bound of a number, where that is what the value passes. */
function boundOf(issue: z.core.$ZodIssue): Bound | undefined {
  if (issue.code !== 'too_small' && issue.code !== 'too_big') return undefined
  if (issue.origin === 'array' || issue.origin === 'string') return undefined
  return issue.code === 'too_small'
    ? { side: 'least', limit: Number(issue.minimum) }
    : { side: 'most', limit: Number(issue.maximum) }
}

function wanted(issue: z.core.$ZodIssue): string {
  switch (issue.code) {
    case 'invalid_type':
      return KINDS[issue.expected] ?? `a ${issue.expected}`
    case 'too_small':
      return countOf(issue.minimum, issue.origin, 'at least')
    case 'too_big':
      return countOf(issue.maximum, issue.origin, 'at most')
    case 'invalid_value':
      return listed(issue.values)
    case 'invalid_union':
      return 'options' in issue && Array.isArray(issue.options) ? listed(issue.options) : issue.message
    case 'invalid_key':
      return issue.issues[0]?.message ?? issue.message
    default:
      return issue.message
  }
}

/** @param file what is being read, as `wanted` names it */
export function problemsOf(issue: z.core.$ZodIssue, value: unknown, file = 'the plan file'): Problem[] {
  if (issue.code === 'unrecognized_keys')
    return issue.keys.map(key => ({
      path: pathText([...issue.path, key]),
      found: 'an unknown key',
      wanted: `only the keys of ${file}`,
    }))
  const problem = { path: pathText(issue.path), found: quoted(at(value, issue.path)) }
  const bound = boundOf(issue)
  return [
    bound === undefined
      ? { ...problem, wanted: wanted(issue) }
      : { ...problem, wanted: boundWords(bound, String), bound },
  ]
}

/** From anything to a plan, or to the list of what is wrong with it: shape and range first, then sense. Never throws. */
export function parsePlan(value: unknown): Parsed {
  const hopeless = unbearable(value)
  if (hopeless !== null) return { ok: false, problems: [hopeless] }
  const current = migrate(value)
  if (!current.ok) return { ok: false, problems: [current.problem] }
  const checked = planSchema.safeParse(current.plan)
  if (!checked.success)
    return { ok: false, problems: readable(checked.error.issues.flatMap(issue => problemsOf(issue, current.plan))) }
  const problems = nonsense(checked.data)
  return problems.length === 0 ? { ok: true, plan: checked.data } : { ok: false, problems: readable(problems) }
}

const isGroup = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null && !Array.isArray(value)

/** Whether a value fits its schema, when one it shares what is unchanged with does. */
function stillFits(schema: z.ZodType, before: unknown, after: unknown): boolean {
  if (before === after) return true
  if (schema instanceof z.ZodObject && isGroup(before) && isGroup(after)) {
    const shape: Readonly<Record<string, z.ZodType>> = schema.shape
    const keys = Object.keys(after)
    if (keys.every(key => Object.hasOwn(shape, key)) && Object.keys(before).every(key => Object.hasOwn(after, key)))
      return keys.every(key => stillFits(shape[key]!, before[key], after[key]))
  }
  if (schema instanceof z.ZodArray && Array.isArray(before) && before.length > 0 && Array.isArray(after)) {
    const { element } = schema as z.ZodArray<z.ZodType>
    if (before.length === after.length) return after.every((item, i) => stillFits(element, before[i], item))
  }
  return schema.safeParse(after).success
}

/**
 * What `parsePlan` has against a plan that came from a right one by an edit: only what the edit changed is looked at.
 * @param before a plan `parsePlan` accepts; what `after` has not changed, it shares
 */
export function problemsOfEdit(before: Plan, after: Plan): readonly Problem[] {
  const corners = new Set(before.setups.flatMap(setup => setup.axles.map(axle => axle.corner)))
  if (stillFits(planSchema, before, after) && nonsense(after, corner => corners.has(corner)).length === 0) return []
  const parsed = parsePlan(after)
  return parsed.ok ? [] : parsed.problems
}

/** As `parsePlan`, from the text of a file. */
export function readPlan(text: string): Parsed {
  const read = readJson(text, 'a plan saved by Stopgap')
  return read.ok ? parsePlan(read.value) : { ok: false, problems: [read.problem] }
}
