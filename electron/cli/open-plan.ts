import { resolve } from 'node:path'
import { readPlan } from '../../core/plan/parse.ts'
import type { Problem } from '../../core/plan/problem.ts'
import { salvageWords } from '../../core/plan/salvage-words.ts'
import type { Plan } from '../../core/plan/schema.ts'
import { readText, salvageAt } from '../services/plan-file.ts'
import { paragraph } from './paragraph.ts'

export type OpenedPlan = { readonly ok: true; readonly plan: Plan } | { readonly ok: false; readonly complaint: string }

const problemText = ({ path, found, wanted }: Problem): string =>
  `\n${path === '' ? 'the file as a whole' : path}\n  found:  ${found}\n  wanted: ${wanted}\n`

/** Everything that is wrong with a plan or a shelf, each by its path in the file. */
export const problemsText = (file: string, problems: readonly Problem[]): string =>
  `${file} cannot be used: ${problems.length === 1 ? 'one value is' : `${problems.length} values are`} not right.\n${problems
    .map(problemText)
    .join('')}`

/** What can still be read of a damaged plan; empty where that is nothing. */
async function remainsText(path: string): Promise<string> {
  const found = await salvageAt(path)
  if (found === null) return ''
  const words = ['The rest can still be read: open the file in the window to go on with that.', ...salvageWords(found)]
  return `\n${paragraph(words.join(' '))}`
}

/**
 * The plan in a file, or what to tell the person instead.
 * @param file as the person named it
 * @param folder where the name is taken from
 */
export async function openPlan(file: string, folder: string): Promise<OpenedPlan> {
  const path = resolve(folder, file)
  const read = await readText(path)
  if (read.kind !== 'text') {
    const why = read.kind === 'missing' ? 'there is no such file' : read.why
    return { ok: false, complaint: `${file} could not be read: ${why}.\n${await remainsText(path)}` }
  }
  const parsed = readPlan(read.text)
  if (parsed.ok) return parsed
  const isTorn = parsed.problems.some(problem => problem.path === '')
  return { ok: false, complaint: problemsText(file, parsed.problems) + (isTorn ? await remainsText(path) : '') }
}
