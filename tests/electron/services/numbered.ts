import { formatPlan } from '../../../core/plan/file-text.ts'
import { readPlan } from '../../../core/plan/parse.ts'
import { planText } from '../plan.ts'

/** A plan of some length that says its number, first and last. */
export function numbered(n: number): string {
  const read = readPlan(planText(String(n)))
  if (!read.ok) throw new Error('The plan of these tests is no plan.')
  return formatPlan({ ...read.plan, notes: `${'a long note. '.repeat(5000)}${n}` })
}

/** The number of such a plan; throws when the text is not one from first to last. */
export function numberOf(text: string): number {
  const read = readPlan(text)
  if (!read.ok) throw new Error(`Not a plan: ${JSON.stringify(read.problems[0])}`)
  const { title, notes } = read.plan
  if (!notes.endsWith(`. ${title}`)) throw new Error(`Half of ${title} and half of another.`)
  return Number(title)
}
