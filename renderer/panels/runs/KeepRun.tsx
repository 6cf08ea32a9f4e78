import { run as command } from '../../shortcuts.ts'
import type { Recording } from '../../state/recording.ts'
import type { Recordings } from '../../state/recordings.ts'
import { useFiles, useSelect } from '../../window-context.ts'
import { forgetRun, keepBesidePlan } from './keeping.ts'

/** Keeping a run beside the plan, or what has to be done first. */
export function KeepRun({ recordings, run }: { readonly recordings: Recordings; readonly run: Recording }) {
  const files = useFiles()
  const inFile = useSelect(state => state.document.token !== null)
  const kept = useSelect(state => state.plan.runs?.find(({ id }) => id === run.kept) ?? null)
  if (!inFile)
    return (
      <span className="keep-run">
        To keep it beside the plan,{' '}
        <button type="button" className="step" onClick={() => command(files, 'save')}>
          save the plan first
        </button>
      </span>
    )
  if (kept === null)
    return (
      <span className="keep-run">
        <button
          type="button"
          className="step"
          disabled={run.work !== null}
          onClick={() => void keepBesidePlan(files, recordings, run.id)}
        >
          Keep it beside the plan
        </button>
      </span>
    )
  return (
    <span className="keep-run">
      <span role="status" title={kept.file}>
        Kept beside the plan.
      </span>{' '}
      <button
        type="button"
        className="step"
        onClick={() => {
          forgetRun(files, kept)
          recordings.change(run.id, { kept: null })
        }}
      >
        Take it out
      </button>
    </span>
  )
}
