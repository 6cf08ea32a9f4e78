import type { ReactNode } from 'react'
import { Switch } from '../../fields/Switch.tsx'
import { shownSetup } from '../../state/selectors.ts'
import { shownTerrain } from '../../state/terrain.ts'
import { rideWholeCar, showTerrain } from '../../state/view.ts'
import { useSelect, useSelectGroup, useStore } from '../../window-context.ts'
import { goToField } from '../measurements/go-to-field.ts'
import { describeTerrain, terrainName } from './describe.ts'
import { type Bringing, useOwnRoad } from './own-road.ts'
import { RoadFile } from './RoadFile.tsx'
import { RoadSpeed } from './RoadSpeed.tsx'
import type { Pace, Playback } from './use-playback.ts'

/** More terrains than this go into a list. */
const IN_SIGHT = 4

const PACES = [
  { value: 'real', label: 'Real time' },
  { value: 'slow', label: 'Slow' },
] as const satisfies readonly { value: Pace; label: string }[]

function Chooser() {
  const store = useStore()
  const road = useOwnRoad()
  const terrains = useSelect(state => state.plan.terrains)
  const shown = useSelect(state => shownTerrain(state, road)?.terrain.id ?? '')
  const options = [...terrains, ...(road === null ? [] : [road])].map(terrain => ({
    value: terrain.id,
    label: terrainName(terrain),
  }))
  if (options.length <= IN_SIGHT)
    return <Switch label="Terrain" options={options} value={shown} onChange={id => showTerrain(store, id)} />
  return (
    <select
      className="words terrain-list"
      aria-label="Terrain"
      value={shown}
      onChange={event => showTerrain(store, event.currentTarget.value)}
    >
      {options.map(({ value, label }) => (
        <option key={value} value={value}>
          {label}
        </option>
      ))}
    </select>
  )
}

/** Whether both axles move under one body. */
function WholeCar() {
  const store = useStore()
  const { both, wholeCar } = useSelectGroup(state => ({
    both: shownSetup(state).setup.axles.length === 2,
    wholeCar: state.view.wholeCar,
  }))
  return both ? (
    <label className="whole-car">
      <input
        type="checkbox"
        checked={wholeCar}
        aria-label="Whole car: both axles under one body that heaves and pitches"
        onChange={event => rideWholeCar(store, event.currentTarget.checked)}
      />
      whole car
    </label>
  ) : null
}

interface StripProps {
  readonly playback: Playback
  /** Taking a road from a file. */
  readonly bringing: Bringing
  /** There is nothing to play. */
  readonly still: boolean
  /** How far the rides are. */
  readonly children: ReactNode
}

/** Which terrain is ridden and what it is like; going through the ride in time. */
export function TerrainStrip({ playback, bringing, still, children }: StripProps) {
  const store = useStore()
  const road = useOwnRoad()
  const { terrain, index, units } = useSelectGroup(state => ({
    ...shownTerrain(state, road),
    units: state.plan.units,
  }))
  const { playing, pace, toggle, setPace } = playback
  if (terrain === undefined || index === undefined) return null
  return (
    <div className="terrain-strip">
      <Chooser />
      <div className="terrain-about">
        <span className="wide-only">{describeTerrain(terrain, units)}</span>
        {index === null ? null : (
          <button type="button" className="step" onClick={() => goToField(store, `terrains.${index}`)}>
            Change it
          </button>
        )}
        {terrain.kind === 'measured' ? <RoadSpeed key={terrain.name} road={terrain} units={units} /> : null}
        <RoadFile name={road === null ? 'Own road' : 'Another file'} className="step" onFile={bringing.bring} />
      </div>
      <WholeCar />
      {children}
      <div className="terrain-play">
        <Switch label="Pace" options={PACES} value={pace} onChange={setPace} />
        <button type="button" className="chief" disabled={still} onClick={toggle}>
          {playing ? 'Pause' : 'Play'}
        </button>
      </div>
    </div>
  )
}
