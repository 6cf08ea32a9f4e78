import { useCallback, useEffect, useMemo, useState } from 'react'
import { HIGHEST_CUTOFF } from '../../../core/runs/low-pass.ts'
import { RunPlate } from '../../charts/runs/RunPlate.tsx'
import { readingLine } from '../../charts/runs/run-reading.ts'
import { highestIn, type RunView, timesOf } from '../../charts/runs/run-scene.ts'
import { addMeasuredDemand } from '../../state/demands.ts'
import type { Recording } from '../../state/recording.ts'
import type { Recordings } from '../../state/recordings.ts'
import { resultsShown, shownAxle, shownSetup } from '../../state/selectors.ts'
import { showAxle } from '../../state/view.ts'
import { useSelect, useSelectGroup, useStore } from '../../window-context.ts'
import { ResultAnnouncer } from '../notices/ResultAnnouncer.tsx'
import { WorkFault } from '../notices/WorkFault.tsx'
import { RideTable } from '../terrain/RideTable.tsx'
import { usePlayback } from '../terrain/use-playback.ts'
import { BeyondLoads } from './BeyondLoads.tsx'
import { runCautions } from './cautions.ts'
import { Moments } from './Moments.tsx'
import { NotTold } from './NotTold.tsx'
import { RunFindings } from './RunFindings.tsx'
import { runRows, spokenRun } from './run-figures.ts'
import { notLaidWords } from './trouble-words.ts'
import { useBeside } from './use-beside.ts'
import { useLaid } from './use-laid.ts'
import { useSeen } from './use-seen.ts'
import { WheelStrip } from './WheelStrip.tsx'
import { type WheelOf, wheelName, wheelsOf, wheelWords } from './wheels.ts'

interface Props {
  readonly recordings: Recordings
  readonly runs: readonly Recording[]
  readonly run: Recording
}

/** A run over the axle shown. */
export function RunOverPlan({ recordings, runs, run }: Props) {
  const store = useStore()
  const axle = useSelect(state => shownAxle(state).axle.id)
  const wheels = wheelsOf(run, axle)
  const [chosen, choose] = useState<number | null>(null)
  const wheel = wheels.find(({ at }) => at === chosen) ?? wheels[0]
  const other = axle === 'front' ? 'rear' : 'front'
  if (wheel === undefined)
    return (
      <p className="run-none">
        This run has no channel of the {axle} axle. It has {run.channels.map(wheelWords).join(', ')}.{' '}
        <button type="button" className="step" onClick={() => showAxle(store, other)}>
          Show the {other} axle
        </button>
      </p>
    )
  return <WheelOverPlan {...{ recordings, runs, run, wheels, wheel }} onWheel={choose} />
}

interface WheelProps extends Props {
  readonly wheels: readonly WheelOf[]
  readonly wheel: WheelOf
  readonly onWheel: (at: number) => void
}

function WheelOverPlan({ recordings, runs, run, wheels, wheel, onWheel }: WheelProps) {
  const store = useStore()
  const { plan, axle, setup, budget, model } = useSelectGroup(state => ({
    plan: state.plan,
    axle: shownAxle(state).axle,
    setup: shownSetup(state).setup,
    ...resultsShown(state),
  }))
  const { units } = plan
  const { laid, notLaid, fault, working, of } = useLaid(recordings, run, wheel.at, {
    plan,
    setup: setup.id,
    axle: axle.id,
  })
  const seen = useSeen(recordings, laid === null ? null : of)
  const beside = useBeside({ recordings, runs, run, wheels, wheel, plan, setup, axle })
  const { rideHeightAt, fullDroopAt } = wheel.channel
  const view = useMemo(
    (): RunView => ({
      shown: { name: run.name, budget, model, ride: laid?.figures ?? null, laid },
      other: beside.wheel,
      picked: { rideHeightAt, fullDroopAt },
      system: units,
    }),
    [run.name, budget, model, laid, beside.wheel, rideHeightAt, fullDroopAt, units],
  )

  const times = laid === null ? { start: 0, end: 0 } : timesOf(laid.run)
  const telling = useMemo(() => (laid === null ? 0 : highestIn(laid.run) - timesOf(laid.run).start), [laid])
  const playback = usePlayback(times.end - times.start, telling)
  const { seek } = playback
  const onTime = useCallback((at: number) => seek(at - times.start), [seek, times.start])
  const time = times.start + playback.time

  useEffect(() => {
    if (laid !== null) recordings.wasUsed(run.id, wheel.at, laid.calibration)
  }, [recordings, run.id, wheel.at, laid])

  const name = wheels.length > 1 ? wheelName(run, wheel.channel) : run.name
  const others = beside.name === null ? [] : [beside.name]
  const rows = runRows(
    [
      {
        stop: model.corner.stop !== null,
        figures: laid?.figures ?? null,
        strokes: laid?.strokes ?? null,
        recorded: true,
      },
      ...others.map(() => ({
        stop: beside.stop,
        figures: beside.figures,
        strokes: beside.strokes,
        recorded: beside.recorded,
      })),
    ],
    units,
  )
  const findings = useMemo(
    () => (laid === null ? null : [...laid.findings, ...(seen?.finding == null ? [] : [seen.finding])]),
    [laid, seen],
  )
  const problems = [...(notLaid === null ? [] : [notLaidWords(name, notLaid)]), ...beside.problems]
  return (
    <>
      <WheelStrip
        recordings={recordings}
        run={run}
        wheels={wheels}
        at={wheel.at}
        onWheel={onWheel}
        beside={beside}
        playback={playback}
        highest={laid === null ? null : HIGHEST_CUTOFF / laid.run.step}
        still={laid === null}
      >
        <Moments recordings={recordings} run={run} at={wheel.at} plan={plan} time={time} />
      </WheelStrip>
      <div className={notLaid !== null || fault !== null ? 'terrain-show waiting' : 'terrain-show'}>
        <RunPlate axle={axle} view={view} subject={name} time={time} onTime={onTime} onPlay={playback.toggle} />
        {laid === null ? null : <p className="run-reading">{readingLine(view, time)}</p>}
        {fault === null ? null : (
          <WorkFault className="terrain-told" what="It could not be worked out." about="run" fault={fault} />
        )}
        {beside.fault === null ? null : (
          <WorkFault
            className="terrain-told"
            what="What is beside it could not be worked out."
            about="beside a run"
            fault={beside.fault}
          />
        )}
        {problems.length === 0 ? null : (
          <div className="terrain-told" role="alert">
            {problems.map(words => (
              <p key={words}>{words}</p>
            ))}
          </div>
        )}
      </div>
      <ResultAnnouncer said={laid === null || working ? '' : spokenRun(name, rows)} />
      <div className="terrain-below">
        <RideTable
          rows={rows}
          cautions={runCautions(run, laid, setup, plan.setups)}
          setups={[name, ...others].map((called, i) => ({
            id: String(i),
            name: called,
            shown: i === 0,
            dampingAssumed: false,
          }))}
        />
        <div className="run-tells">
          {laid === null ? null : (
            <>
              <BeyondLoads
                beyond={laid.figures.beyond}
                other={beside.figures?.beyond ?? null}
                names={[name, ...others]}
                system={units}
              />
              <NotTold
                demand={laid.demand}
                seen={seen}
                system={units}
                onDemand={amplitude => addMeasuredDemand(store, run.name, amplitude)}
              />
            </>
          )}
        </div>
      </div>
      <RunFindings findings={findings} name={name} />
    </>
  )
}
