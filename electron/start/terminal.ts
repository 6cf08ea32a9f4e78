import { join } from 'node:path'
import { budgetText } from '../cli/budget-text.ts'
import { openPlan } from '../cli/open-plan.ts'
import { demosIn } from '../services/start.ts'

/** The travel budget of the file, or of the first demo, for a terminal; or everything that is wrong with it. */
export async function budgetOf(app: string, file: string | null): Promise<string> {
  const path = file ?? (await demosIn(join(app, 'seeds')))[0]
  if (path === undefined) return 'The demo plans are missing from this installation.'
  const opened = await openPlan(path, app)
  return opened.ok ? budgetText(opened.plan) : opened.complaint.trimEnd()
}
