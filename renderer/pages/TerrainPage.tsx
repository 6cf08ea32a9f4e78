import { memo, useCallback, useMemo } from 'react'
import type { Finding } from '../../core/budget/results.ts'
import type { AxleId } from '../../core/plan/schema.ts'
import type { MeasuredCourse } from '../../core/ride/measured-road.ts'
import { CAR_SIZE, CarDrawing } from '../charts/terrain/CarDrawing.tsx'
import { carGeometry } from '../charts/terrain/car-geometry.ts'
import { highestMoment } from '../charts/terrain/moment.ts'
import { TerrainPlate } from '../charts/terrain/TerrainPlate.tsx'
import { durationOf, hasStop, type RiddenSetup, type TerrainView } from '../charts/terrain/terrain-scene.ts'
import { goToFinding } from '../panels/findings/go-to-finding.ts'
import { ResultAnnouncer } from '../panels/notices/ResultAnnouncer.tsx'
import { terrainName } from '../panels/terrain/describe.ts'
import { figureRows, spokenFigures } from '../panels/terrain/figures.ts'
import { NoTerrain } from '../panels/terrain/NoTerrain.tsx'
import { noRideWords, standsWords } from '../panels/terrain/outcome-words.ts'
import { type Bringing, looksLikeRoad, useBringing, useOwnRoad } from '../panels/terrain/own-road.ts'
import { RideFindings } from '../panels/terrain/RideFindings.tsx'
import { RideSweep } from '../panels/terrain/RideSweep.tsx'
import { RideTable } from '../panels/terrain/RideTable.tsx'
import { RideWork } from '../panels/terrain/RideWork.tsx'
import { useRides } from '../panels/terrain/runs-context.ts'
import { TerrainStrip } from '../panels/terrain/TerrainStrip.tsx'
import { usePlayback } from '../panels/terrain/use-playback.ts'
import { landingLimit } from '../state/landing-limit.ts'
import { comparedSetup, resultsShown, shownAxle, shownSetup } from '../state/selectors.ts'
import type { State } from '../state/state.ts'
import { shownTerrain } from '../state/terrain.ts'
import { focusFinding } from '../state/view.ts'
import { useSelect, useSelectGroup, useStore } from '../window-context.ts'
import type { Ridden } from '../workers/messages.ts'

/** The car in time: over whoops, off a drop, along a rough road. */
export function TerrainPage() {
  const road = useOwnRoad()
  const bringing = useBringing()
  const terrain = useSelect(state => shownTerrain(state, road)?.terrain.id ?? null)
  return (
    <main
      className="terrain"
      aria-label="Terrain"
      onDrop={event => {
        const file = event.dataTransfer.files[0]
        if (file === undefined || !looksLikeRoad(file)) return
        event.preventDefault()
        bringing.bring(file)
      }}
    >
      {terrain === null ? <NoTerrain {...bringing} /> : <Riding key={terrain} bringing={bringing} />}
    </main>
  )
}

const shownParts = (state: State, road: MeasuredCourse | null) => {
  const compared = comparedSetup(state)
  const { setup, index } = shownSetup(state)
  return {
    terrain: shownTerrain(state, road)!.terrain,
    axle: shownAxle(state).axle,
    setup,
    /** The one compared comes first in the plan. */
    after: compared !== null && state.plan.setups.indexOf(compared.setup) < index,
    ...resultsShown(state),
    otherSetup: compared?.setup ?? null,
    otherBudget: compared?.results.budget ?? null,
    otherModel: compared?.results.model ?? null,
    system: state.plan.units,
    wheelbase: state.plan.vehicle.wheelbase,
  }
}

const NONE: readonly Finding[] = []

/** Not drawn anew for each point of a sweep. */
const StillPlate = memo(TerrainPlate)

const rode = (ridden: Ridden | null | undefined) => (ridden?.ok ? ridden : null)

function Riding({ bringing }: { readonly bringing: Bringing }) {
  const { runs, request, view: found } = useRides()
  const road = useOwnRoad()
  const { terrain, axle, setup, after, budget, model, otherSetup, otherBudget, otherModel, system, wheelbase } =
    useSelectGroup(useCallback((state: State) => shownParts(state, road), [road]))
  const [ridden = null, otherRidden = null] = found.rides
  const view = useMemo((): TerrainView => {
    const shown: RiddenSetup = { name: setup.name, budget, model, ride: rode(ridden) }
    const other =
      otherSetup === null || otherBudget === null || otherModel === null
        ? null
        : { name: otherSetup.name, budget: otherBudget, model: otherModel, ride: rode(otherRidden) }
    return { shown, other, system }
  }, [setup.name, budget, model, ridden, otherSetup, otherBudget, otherModel, otherRidden, system])
  const { shown, other } = view
  const trace = shown.ride?.trace ?? null
  const telling = useMemo(() => (trace === null ? 0 : highestMoment(trace)), [trace])
  const findings = found.findings ?? NONE
  const store = useStore()
  const focusedFinding = useSelect(state => state.view.finding)
  const onFocusFinding = useCallback((id: string | null) => focusFinding(store, id), [store])
  const playback = usePlayback(durationOf(view), telling)

  const radiusOf = (id: AxleId): number => setup.axles.find(each => each.id === id)?.corner.tire.radius ?? 0
  const moments = shown.ride?.car ?? null
  const car =
    moments === null || trace === null
      ? null
      : carGeometry(
          moments,
          trace.time,
          playback.time,
          { wheelbase, radius: { front: radiusOf('front'), rear: radiusOf('rear') } },
          CAR_SIZE,
        )

  const landing = terrain.kind === 'landing'
  const sweep = request?.sweep ?? null
  const columns = [
    { setup, model, ride: shown.ride, swept: found.swept[0], solid: true },
    ...(otherSetup === null || otherModel === null
      ? []
      : [{ setup: otherSetup, model: otherModel, ride: other?.ride ?? null, swept: found.swept[1], solid: false }]),
  ]
  if (after) columns.reverse()
  const rows = figureRows(
    columns.map(({ ride, swept, model: { corner } }) => ({
      stop: corner.stop !== null,
      ride,
      limit: landing && swept !== undefined ? landingLimit(swept) : null,
    })),
    system,
  )
  const failed = [
    ridden === null || ridden.ok ? null : noRideWords(setup.name, ridden),
    otherSetup === null || otherRidden === null || otherRidden.ok ? null : noRideWords(otherSetup.name, otherRidden),
  ].filter(words => words !== null)
  const cautions = [shown, ...(other === null ? [] : [other])]
    .map(each => standsWords(each, landing, system))
    .filter(words => words !== null)
  const waiting = failed.length > 0 || (found.work !== null && !found.settled)
  return (
    <>
      <TerrainStrip playback={playback} bringing={bringing} still={trace === null}>
        <RideWork runs={runs} view={found} />
      </TerrainStrip>
      <div className={waiting ? 'terrain-show waiting' : 'terrain-show'}>
        <StillPlate
          axle={axle}
          view={view}
          subject={terrainName(terrain)}
          time={playback.time}
          onTime={playback.seek}
          onPlay={playback.toggle}
          findings={findings}
          focusedFinding={focusedFinding}
          onFocusFinding={onFocusFinding}
          onTakeFinding={goToFinding}
        />
        {car === null ? null : <CarDrawing car={car} />}
        {bringing.trouble === null ? null : (
          <p className="road-trouble" role="alert">
            {bringing.trouble}{' '}
            <button type="button" className="step" onClick={bringing.forget}>
              Close
            </button>
          </p>
        )}
        {failed.length === 0 ? null : (
          <div className="terrain-told" role="alert">
            {failed.map(words => (
              <p key={words}>{words}</p>
            ))}
          </div>
        )}
      </div>
      <ResultAnnouncer
        said={
          found.settled
            ? spokenFigures(
                terrainName(terrain),
                columns.map(each => each.setup.name),
                rows,
              )
            : ''
        }
      />
      <div className="terrain-below">
        <RideTable
          rows={rows}
          cautions={cautions}
          setups={columns.map(({ setup: { id, name }, ride, solid }) => ({
            id,
            name,
            shown: solid,
            dampingAssumed: ride?.dampingAssumed ?? false,
          }))}
        />
        {sweep === null ? null : (
          <RideSweep
            sweep={sweep}
            swept={found.swept}
            names={[setup.name, ...(otherSetup === null ? [] : [otherSetup.name])]}
            budget={budget}
            otherBudget={otherBudget}
            system={system}
            stop={hasStop(view)}
          />
        )}
      </div>
      <RideFindings findings={found.findings} name={setup.name} />
    </>
  )
}
