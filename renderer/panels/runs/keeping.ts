import type { PlanRun } from '../../../core/plan/schema.ts'
import { edit } from '../../state/edit.ts'
import { type Files, guarded } from '../../state/files.ts'
import type { Recordings } from '../../state/recordings.ts'
import { freeId } from '../../state/setups.ts'

/** Puts a run beside the plan and names it in the plan, which is then to be saved. */
export async function keepBesidePlan(files: Files, recordings: Recordings, id: string): Promise<void> {
  const { token, key } = files.store.read().document
  const base64 = token === null ? null : await recordings.encode(id)
  const run = recordings.find(id)
  if (token === null || base64 === null || run === null) return
  const { name, driven: setup } = run
  const reply = await guarded(files, 'run', () => files.host.call('keepRun', { token, name: name || 'run', base64 }))
  if (reply === null) return
  if (reply.kind === 'failed') {
    recordings.change(id, { trouble: reply.reason })
    return
  }
  // Another plan may have been opened meanwhile.
  if (files.store.read().document.key !== key) return
  const { file, digest } = reply
  const taken = files.store.read().plan.runs ?? []
  const same = taken.find(each => each.digest === digest && each.file === file)
  const entry: PlanRun = {
    id:
      same?.id ??
      freeId(
        'run',
        taken.map(each => each.id),
      ),
    name,
    setup,
    file,
    digest,
  }
  if (same === undefined)
    edit(files.store, `run ${name} kept`.slice(0, 200), plan => {
      plan.runs = [...(plan.runs ?? []), entry]
    })
  recordings.change(id, { kept: entry.id, trouble: null })
}

/** Why a kept run could not be opened, and its content where it is there but another. */
export type Opening =
  | { readonly kind: 'opened' }
  | { readonly kind: 'missing'; readonly reason: string }
  | { readonly kind: 'changed'; readonly reason: string; readonly base64: string; readonly digest: string }

/** Opens a run that the plan names. A missing or changed one is said, and stops nothing. */
export async function openKept(files: Files, recordings: Recordings, run: PlanRun): Promise<Opening> {
  const { token } = files.store.read().document
  if (token === null)
    return {
      kind: 'missing',
      reason: `The run “${run.name}” is kept beside the plan’s file, and this plan is not in a file: open the file it came from.`,
    }
  const { file, digest } = run
  const reply = await guarded(files, 'run', () => files.host.call('openRun', { token, file, digest }))
  if (reply === null) return { kind: 'missing', reason: `The run in “${file}” could not be opened.` }
  if (reply.kind !== 'run') return reply
  await recordings.restore(run, reply.base64, true)
  return { kind: 'opened' }
}

/** Takes a run that changed since it was kept as it is now. */
export async function takeChanged(
  files: Files,
  recordings: Recordings,
  run: PlanRun,
  { base64, digest }: Extract<Opening, { kind: 'changed' }>,
): Promise<void> {
  if (!(await recordings.restore(run, base64, true))) return
  edit(files.store, `run ${run.name} as it is now`.slice(0, 200), plan => {
    const entry = plan.runs?.find(each => each.id === run.id)
    if (entry !== undefined) entry.digest = digest
  })
}

/** The plan names the run no more. Its file stays where it is. */
export const forgetRun = (files: Files, { id, name }: PlanRun) =>
  edit(files.store, `run ${name} taken out of the plan`.slice(0, 200), plan => {
    const left = (plan.runs ?? []).filter(each => each.id !== id)
    if (left.length === 0) delete plan.runs
    else plan.runs = left
  })
