import { type DragEvent, useCallback, useEffect, useMemo, useState } from 'react'
import type { AxleId, Plan, PlanRun } from '../../core/plan/schema.ts'
import { HowRead } from '../panels/runs/HowRead.tsx'
import { openKept, takeChanged } from '../panels/runs/keeping.ts'
import { NoRun } from '../panels/runs/NoRun.tsx'
import { RunOverPlan } from '../panels/runs/RunOverPlan.tsx'
import { RunStrip, type Way } from '../panels/runs/RunStrip.tsx'
import { useRecordings } from '../panels/runs/recordings-context.ts'
import { type NotOpened, Unopened } from '../panels/runs/Unopened.tsx'
import { takeRecordings } from '../state/brought-recording.ts'
import { isRead } from '../state/recording.ts'
import { shownSetup } from '../state/selectors.ts'
import { useFiles, useSelect } from '../window-context.ts'

/** Axles of a plan, whichever setup has them. */
const axlesOf = (plan: Plan): AxleId[] =>
  (['front', 'rear'] as const).filter(id => plan.setups.some(({ axles }) => axles.some(axle => axle.id === id)))

const NO_RUNS: readonly PlanRun[] = []

/** A plan dropped here is opened, as everywhere; what else is dropped is taken for a recording. */
const isPlanFile = ({ name }: File): boolean => /\.stopgap$/i.test(name)

/** What the car really did: recorded runs laid over the plan. */
export function LogsPage() {
  const files = useFiles()
  const { recordings, view } = useRecordings()
  const plan = useSelect(state => state.plan)
  const document = useSelect(state => state.document.key)
  const setup = useSelect(state => shownSetup(state).setup.id)
  const [way, setWay] = useState<Way | null>(null)
  const [unopened, setUnopened] = useState<NotOpened | null>(null)
  const kept = (plan.runs ?? NO_RUNS).filter(run => !view.runs.some(each => each.kept === run.id))
  const shown = view.runs.find(({ id }) => id === view.shown) ?? null
  const axles = useMemo(() => axlesOf(plan), [plan])

  const openFile = useCallback(
    (file: File): void => {
      setWay(null)
      setUnopened(null)
      void recordings.open(file, axles, setup)
    },
    [recordings, axles, setup],
  )
  useEffect(() => takeRecordings(files.store, openFile), [files, openFile])
  const openRun = useCallback(
    async (run: PlanRun): Promise<void> => {
      setWay(null)
      const opening = await openKept(files, recordings, run)
      setUnopened(opening.kind === 'opened' ? null : { run, opening })
    },
    [files, recordings],
  )
  // A plan that names runs shows the last of them, once.
  useEffect(() => {
    recordings.leaveOthers(document)
    const last = (files.store.read().plan.runs ?? NO_RUNS).at(-1)
    if (last !== undefined && recordings.read().runs.length === 0 && recordings.firstLook(document)) void openRun(last)
  }, [document, files, recordings, openRun])

  const nowWay: Way = way ?? (shown !== null && isRead(shown) ? 'run' : 'how')
  return (
    <main
      className="terrain runs"
      aria-label="Logs"
      onDrop={(event: DragEvent) => {
        const file = event.dataTransfer.files[0]
        if (file === undefined || isPlanFile(file)) return
        event.preventDefault()
        openFile(file)
      }}
    >
      {view.runs.length === 0 && kept.length === 0 ? (
        <NoRun onFile={openFile} />
      ) : (
        <>
          <div className="run-head">
            <RunStrip
              recordings={recordings}
              runs={view.runs}
              shown={shown}
              kept={kept}
              way={nowWay}
              onWay={setWay}
              onFile={openFile}
              onKept={run => void openRun(run)}
            />
            {unopened === null ? null : (
              <Unopened
                unopened={unopened}
                onTake={({ run, opening }) => {
                  setUnopened(null)
                  if (opening.kind === 'changed') void takeChanged(files, recordings, run, opening)
                }}
                onClose={() => setUnopened(null)}
              />
            )}
            {shown?.trouble == null ? null : (
              <p className="run-trouble" role="alert">
                {shown.trouble}
              </p>
            )}
          </div>
          {shown === null ? (
            <p className="run-none">Choose a run above, or open a recording.</p>
          ) : nowWay === 'how' || !isRead(shown) ? (
            <HowRead
              key={shown.id}
              recordings={recordings}
              run={shown}
              axles={axles}
              system={plan.units}
              onRead={() => setWay(null)}
            />
          ) : (
            <RunOverPlan key={shown.id} recordings={recordings} runs={view.runs} run={shown} />
          )}
        </>
      )}
    </main>
  )
}
