import { formatPlan } from '../../core/plan/file-text.ts'
import { encodeRun } from '../../core/plan/kept-run-file.ts'
import { readPlan } from '../../core/plan/parse.ts'
import type { KeptRun } from '../../core/runs/kept-run.ts'
import { readPlanFile, writePlanFile } from '../services/plan-file.ts'
import { keepBeside } from '../services/runs-beside.ts'
import { sha256 } from '../services/sha256.ts'
import { refuse } from './refusal.ts'

/** An id no other run of the plan has. */
const freeId = (taken: readonly string[]): string => {
  for (let n = taken.length + 1; ; n += 1) if (!taken.includes(`run-${n}`)) return `run-${n}`
}

/** Puts a run into a file beside its plan and names it in the plan, where it is not named yet. @returns the file, from the plan's folder */
export async function keepBesidePlan(planFile: string, setup: string, run: KeptRun): Promise<string> {
  const { bytes, digest } = await encodeRun(run, sha256)
  const kept = await keepBeside(planFile, run.name, bytes)
  if (kept.kind === 'failed') return refuse(kept.reason)
  const { file } = kept
  // The plan as it is now: it may have been saved by somebody else since it was opened.
  const there = await readPlanFile(planFile)
  const read = there.kind === 'text' ? readPlan(there.text) : null
  if (there.kind !== 'text' || !read?.ok)
    return refuse(`The run is kept in ${file}, but the plan could not be read again to name it there.`)
  const { plan } = read
  const runs = plan.runs ?? []
  if (runs.some(each => each.file === file && each.digest === digest)) return file
  const named = {
    ...plan,
    runs: [...runs, { id: freeId(runs.map(({ id }) => id)), name: run.name, setup, file, digest }],
  }
  const written = await writePlanFile(planFile, formatPlan(named), there.basis, false, async () => {})
  if (written.kind === 'written') return file
  return refuse(
    `The run is kept in ${file}, but is not named in the plan: ${written.kind === 'changed' ? 'somebody else is saving it' : written.why}.`,
  )
}
