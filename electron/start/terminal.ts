import { join } from 'node:path'
import { readPlan } from '../../core/plan/parse.ts'
import { budgetText } from '../cli/budget-text.ts'
import { readPlanFile } from '../services/plan-file.ts'
import { demosIn } from '../services/start.ts'

/** The travel budget of the file, or of the first demo, for a terminal; or why there is none. */
export async function budgetOf(app: string, file: string | null): Promise<string> {
  const path = file ?? (await demosIn(join(app, 'seeds')))[0]
  if (path === undefined) return 'The demo plans are missing from this installation.'
  const read = await readPlanFile(path)
  if (read.kind !== 'text') return `${path} could not be opened: ${read.why}.`
  const parsed = readPlan(read.text)
  return parsed.ok ? budgetText(parsed.plan) : `${path} is not a plan.`
}
