import type { PlanRun } from '../../../core/plan/schema.ts'
import { Switch } from '../../fields/Switch.tsx'
import { isRead, type Recording } from '../../state/recording.ts'
import type { Recordings } from '../../state/recordings.ts'
import { KeepRun } from './KeepRun.tsx'
import { RecordingFile } from './RecordingFile.tsx'

export type Way = 'run' | 'how'

const WAYS = [
  { value: 'run', label: 'The run' },
  { value: 'how', label: 'How it is read' },
] as const satisfies readonly { value: Way; label: string }[]

const WORK: Readonly<Record<NonNullable<Recording['work']>['kind'], string>> = {
  looking: 'Looking at it',
  reading: 'Reading',
  opening: 'Opening it',
  keeping: 'Keeping it',
}

/** How far a file is read, with a way to stop it. */
function RunWork({ recordings, run }: { readonly recordings: Recordings; readonly run: Recording }) {
  const { work, id } = run
  if (work === null) return null
  return (
    <p className="ride-work">
      <progress
        className="work-bar"
        max={1}
        value={work.kind === 'reading' ? work.share : undefined}
        aria-label={WORK[work.kind]}
      />
      {WORK[work.kind]}
      {work.kind === 'reading' ? ` ${Math.round(100 * work.share)} %` : ''}{' '}
      <button type="button" className="step" onClick={() => recordings.cancel(id)}>
        Stop
      </button>
    </p>
  )
}

interface Props {
  readonly recordings: Recordings
  readonly runs: readonly Recording[]
  readonly shown: Recording | null
  /** Runs of the plan that are not open. */
  readonly kept: readonly PlanRun[]
  readonly way: Way
  readonly onWay: (way: Way) => void
  readonly onFile: (file: File) => void
  readonly onKept: (run: PlanRun) => void
}

const KEPT = 'kept '

/** Which run is looked at, and how; another one, from a file or from beside the plan. */
export function RunStrip({ recordings, runs, shown, kept, way, onWay, onFile, onKept }: Props) {
  return (
    <div className="terrain-strip run-strip">
      <select
        className="words terrain-list"
        aria-label="Run"
        value={shown?.id ?? ''}
        onChange={event => {
          const { value } = event.currentTarget
          const asked = value.startsWith(KEPT) ? kept.find(({ id }) => id === value.slice(KEPT.length)) : undefined
          if (asked === undefined) recordings.show(value)
          else onKept(asked)
        }}
      >
        {shown === null ? <option value="">choose a run</option> : null}
        {runs.map(({ id, name }) => (
          <option key={id} value={id}>
            {name}
          </option>
        ))}
        {kept.map(({ id, name }) => (
          <option key={`${KEPT}${id}`} value={`${KEPT}${id}`}>
            {name}, kept with the plan
          </option>
        ))}
      </select>
      <RecordingFile name="Open another" className="step" onFile={onFile} />
      {shown === null ? null : (
        <>
          <button type="button" className="step" onClick={() => recordings.close(shown.id)}>
            Close it
          </button>
          <Switch label="What is shown" options={WAYS} value={way} onChange={onWay} />
          <RunWork recordings={recordings} run={shown} />
          {isRead(shown) ? <KeepRun key={`${shown.id} ${shown.name}`} recordings={recordings} run={shown} /> : null}
        </>
      )}
    </div>
  )
}
