import { Row } from '../../fields/Row.tsx'
import { Switch } from '../../fields/Switch.tsx'
import { TextField } from '../../fields/TextField.tsx'
import { putSuspension } from '../../state/parts.ts'
import { shownAxle } from '../../state/selectors.ts'
import { addAxle, removeAxle } from '../../state/setups.ts'
import { useSelect, useStore } from '../../window-context.ts'

const KINDS = [
  { value: 'independent', label: 'Independent' },
  { value: 'solid', label: 'Solid' },
] as const

const NOT_KNOWN = { value: undefined, word: 'unknown' } as const

export function AxleGroup() {
  const store = useStore()
  const suspension = useSelect(state => shownAxle(state).axle.suspension)
  const id = useSelect(state => shownAxle(state).axle.id)
  const alone = useSelect(state => state.plan.setups.every(setup => setup.axles.length === 1))
  const other = id === 'front' ? 'rear' : 'front'
  const solid = suspension === 'solid'
  return (
    <>
      <Switch
        label="Suspension"
        className="inner"
        options={KINDS}
        value={suspension}
        onChange={kind => putSuspension(store, kind)}
      />
      <Row field="track" />
      <Row field="antiRollRate" />
      <Row field="shockSpacing" empty={solid ? null : NOT_KNOWN} />
      <Row field="stopSpacing" empty={solid ? null : NOT_KNOWN} />
      <button type="button" className="step" onClick={() => (alone ? addAxle(store, other) : removeAxle(store, id))}>
        {alone ? `Add a ${other} axle` : `Take the ${id} axle out of the plan`}
      </button>
    </>
  )
}

export const VehicleGroup = () => (
  <>
    <div className="row wide">
      <label htmlFor="vehicle-name">Name</label>
      <TextField
        field="vehicle.name"
        id="vehicle-name"
        name="Name of the vehicle"
        called="vehicle name"
        longest={200}
      />
    </div>
    <Row field="vehicle.wheelbase" />
    <Row field="vehicle.cgHeight" />
    <Row field="vehicle.rollAxisHeight" />
  </>
)

export const NotesGroup = () => (
  <>
    <div className="row wide">
      <label htmlFor="plan-title">Title</label>
      <TextField field="title" id="plan-title" name="Title of the plan" called="title" longest={200} />
    </div>
    <TextField field="notes" id="plan-notes" name="Notes" called="notes" longest={100_000} lines={5} />
  </>
)
