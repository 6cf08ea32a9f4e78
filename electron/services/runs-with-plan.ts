import { mkdir, realpath } from 'node:fs/promises'
import { dirname, join } from 'node:path'
import { readPlan } from '../../core/plan/parse.ts'
import type { PlanRun } from '../../core/plan/schema.ts'
import { realPathOf } from './documents.ts'
import { isInside } from './folders.ts'
import { digest } from './plan-file.ts'
import { reason, refusal } from './reason.ts'
import { contentOf, openBeside } from './runs-beside.ts'
import { writeAtomically } from './write-atomically.ts'

class TakenMeanwhile extends Error {}

const another =
  'another file of that name is there already, and is left as it is. Open the plan’s file of before, or keep the run again here'

/**
 * Puts the runs a plan names beside its new file too, each under the name the plan has. A file that is there is never written over.
 * The sentences say what could not come along; where the plan was, everything stays.
 * @param text of the plan, as it was saved
 */
export async function bringRuns(from: string, to: string, text: string): Promise<string[]> {
  if (dirname(from) === dirname(to)) return []
  const read = readPlan(text)
  const runs = read.ok ? (read.plan.runs ?? []) : []
  const sentences: string[] = []
  for (const run of runs) {
    const why = await bringRun(from, to, run)
    if (why !== null) sentences.push(`The run “${run.name}” did not come along: ${why}.`)
  }
  return sentences
}

/** Why it could not be brought; null when it is there. */
async function bringRun(from: string, to: string, run: PlanRun): Promise<string | null> {
  const opened = await openBeside(from, run)
  if (opened.kind === 'missing') return `where it was kept, it could not be read: ${opened.why}`
  const path = join(dirname(to), ...run.file.split('/'))
  try {
    if (!isInside(await realpath(dirname(to)), await realPathOf(dirname(path))))
      return 'its place leads out of the folder'
    await mkdir(dirname(path), { recursive: true })
    const is = digest(opened.content)
    const there = await contentOf(path)
    if (there !== null) return digest(there) === is ? null : another
    await writeAtomically(path, opened.content, async () => {
      if ((await contentOf(path)) !== null) throw new TakenMeanwhile()
    })
    return null
  } catch (error) {
    if (error instanceof TakenMeanwhile) return another
    return refusal(error) === 'EACCES' ? 'this account may not write in the folder' : reason(error)
  }
}
