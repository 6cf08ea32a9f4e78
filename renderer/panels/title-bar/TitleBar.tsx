import type { AxleId } from '../../../core/plan/schema.ts'
import { Switch } from '../../fields/Switch.tsx'
import { keysOf, run } from '../../shortcuts.ts'
import { sameNames, shownAxle, shownSetup } from '../../state/selectors.ts'
import { showUnits } from '../../state/units.ts'
import { showAxle } from '../../state/view.ts'
import { useFiles, useSelect, useStore } from '../../window-context.ts'
import { Pages } from './Pages.tsx'
import { PlanMenu } from './PlanMenu.tsx'
import { SetupSwitch } from './SetupSwitch.tsx'

const axleNames: Readonly<Record<AxleId, string>> = { front: 'Front', rear: 'Rear' }

const UNITS = [
  { value: 'inch', label: 'Inch' },
  { value: 'metric', label: 'Metric' },
] as const

export const TitleBar = () => (
  <header className="bar">
    <PlanMenu />
    <AxleSwitch />
    <SetupSwitch />
    <Pages />
    <UnitSwitch />
    <UndoRedo />
  </header>
)

function AxleSwitch() {
  const store = useStore()
  const axles = useSelect(state => shownSetup(state).setup.axles, sameNames)
  const shown = useSelect(state => shownAxle(state).axle.id)
  const options = axles.map(({ id }) => ({ value: id, label: axleNames[id] }))
  return <Switch label="Axle" className="axle" options={options} value={shown} onChange={id => showAxle(store, id)} />
}

function UnitSwitch() {
  const store = useStore()
  const units = useSelect(state => state.plan.units)
  return (
    <Switch
      label="Units"
      className="units"
      options={UNITS}
      value={units}
      onChange={system => showUnits(store, system)}
    />
  )
}

function UndoRedo() {
  const files = useFiles()
  const undone = useSelect(state => state.history.past.at(-1)?.label ?? null)
  const redone = useSelect(state => state.history.future.at(-1)?.label ?? null)
  return (
    <div className="hist">
      {(
        [
          ['undo', 'Undo', undone],
          ['redo', 'Redo', redone],
        ] as const
      ).map(([command, name, label]) => (
        <button
          key={command}
          type="button"
          disabled={label === null}
          title={label === null ? `Nothing to ${command}` : `${name}: ${label} (${keysOf(command)})`}
          aria-label={label === null ? name : `${name}: ${label}`}
          onClick={() => run(files, command)}
        >
          <b>{name}</b>
        </button>
      ))}
    </div>
  )
}
