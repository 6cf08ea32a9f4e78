import type { ReactNode } from 'react'
import { Switch } from '../../fields/Switch.tsx'
import { shownSetup } from '../../state/selectors.ts'
import { shownTerrain } from '../../state/terrain.ts'
import { rideWholeCar, showTerrain } from '../../state/view.ts'
import { useSelect, useSelectGroup, useStore } from '../../window-context.ts'
import { goToField } from '../measurements/go-to-field.ts'
import { describeTerrain, terrainName } from './describe.ts'
import type { Pace, Playback } from './use-playback.ts'

/** More terrains than this go into a list. */
const IN_SIGHT = 4

const PACES = [
  { value: 'real', label: 'Real time' },
  { value: 'slow', label: 'Slow' },
] as const satisfies readonly { value: Pace; label: string }[]

function Chooser() {
  const store = useStore()
  const terrains = useSelect(state => state.plan.terrains)
  const shown = useSelect(state => shownTerrain(state)?.terrain.id ?? '')
  const options = terrains.map(terrain => ({ value: terrain.id, label: terrainName(terrain) }))
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
  /** There is nothing to play. */
  readonly still: boolean
  /** How far the rides are. */
  readonly children: ReactNode
}

/** Which terrain is ridden and what it is like; going through the ride in time. */
export function TerrainStrip({ playback, still, children }: StripProps) {
  const store = useStore()
  const { terrain, index, units } = useSelectGroup(state => ({ ...shownTerrain(state), units: state.plan.units }))
  const { playing, pace, toggle, setPace } = playback
  if (terrain === undefined || index === undefined) return null
  return (
    <div className="terrain-strip">
      <Chooser />
      <p className="terrain-about">
        <span className="wide-only">{describeTerrain(terrain, units)}</span>
        <button type="button" className="step" onClick={() => goToField(store, `terrains.${index}`)}>
          Change it
        </button>
      </p>
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
