import type { Plan } from '../../../core/plan/schema.ts'
import { Switch } from '../../fields/Switch.tsx'
import { sameNames, shownSetup } from '../../state/selectors.ts'
import { addSetup } from '../../state/setups.ts'
import { showSetup } from '../../state/view.ts'
import { useSelect, useSelectGroup, useStore } from '../../window-context.ts'
import { SetupList } from './SetupList.tsx'

/** Setups with a place in the bar; the others are in the list. */
const MOST = 3

type Setups = Plan['setups']

/** The baseline, the one shown and the one compared keep their place; others fill what is left, in order. */
export function setupsInBar(setups: Setups, shown: string, compared: string | null): Setups {
  const first = setups.filter(({ id }, i) => i === 0 || id === shown || id === compared)
  const rest = setups.filter(setup => !first.includes(setup)).slice(0, Math.max(0, MOST - first.length))
  return setups.filter(setup => first.includes(setup) || rest.includes(setup))
}

/** The line a setup is drawn with on the plate. */
const LineSample = ({ solid }: { solid: boolean }) => (
  <svg width="20" height="8" aria-hidden="true">
    <path
      d="M0 4h20"
      stroke="currentColor"
      strokeWidth={solid ? 2 : 1.25}
      strokeDasharray={solid ? undefined : '4 3'}
    />
  </svg>
)

export function SetupSwitch() {
  const store = useStore()
  const setups = useSelect(state => state.plan.setups, sameNames)
  const { shown, compared } = useSelectGroup(state => ({
    shown: shownSetup(state).setup.id,
    compared: state.view.compared,
  }))
  const inBar = setupsInBar(setups, shown, compared)
  const options = inBar.map(({ id, name }) => ({
    value: id,
    label: name === '' ? 'Setup without a name' : name,
    mark: id === shown || id === compared ? <LineSample solid={id === shown} /> : undefined,
  }))
  return (
    <>
      <Switch label="Setup" className="setup" options={options} value={shown} onChange={id => showSetup(store, id)}>
        <button type="button" aria-label="Add a setup" title="Add a copy of this setup" onClick={() => addSetup(store)}>
          <b>+</b>
        </button>
        <button type="button" popoverTarget="setup-list" aria-label="Setups: rename, compare, remove">
          <b>{inBar.length < setups.length ? `All ${setups.length}` : 'Edit'}</b>
        </button>
      </Switch>
      <SetupList />
    </>
  )
}
