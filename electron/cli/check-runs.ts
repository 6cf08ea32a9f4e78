import type { Plan } from '../../core/plan/schema.ts'
import { openBeside } from '../services/runs-beside.ts'
import { paragraph } from './paragraph.ts'

/** What to say of the runs a plan names: those that are gone or changed, each by its reason; that is nothing wrong with the plan itself. */
export async function checkRunsText(planFile: string, { runs = [] }: Plan): Promise<string> {
  if (runs.length === 0) return ''
  const opened = await Promise.all(runs.map(run => openBeside(planFile, run)))
  const wrong = opened.flatMap(each => (each.kind === 'run' ? [] : [each.reason]))
  const count = runs.length === 1 ? '1 recorded run' : `${runs.length} recorded runs`
  return wrong.length === 0
    ? paragraph(`${count} beside it, as the plan knows ${runs.length === 1 ? 'it' : 'them'}.`)
    : wrong.map(each => paragraph(each)).join('')
}
