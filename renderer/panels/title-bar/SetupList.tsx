import { type ToggleEvent, useId } from 'react'
import { closeGesture } from '../../state/edit.ts'
import { sameNames, shownSetup } from '../../state/selectors.ts'
import { removeSetup, renameSetup } from '../../state/setups.ts'
import { compareWith, showSetup } from '../../state/view.ts'
import { useSelect, useStore } from '../../window-context.ts'

const focusFirstName = (list: HTMLElement | null): void => list?.querySelector<HTMLElement>('.words')?.focus()

const focusName = (event: ToggleEvent<HTMLElement>): void => {
  if (event.newState === 'open') focusFirstName(event.currentTarget)
}

/** All setups: what they are called, which one is shown, which one is drawn beside it. */
export function SetupList() {
  const store = useStore()
  const group = useId()
  const setups = useSelect(state => state.plan.setups, sameNames)
  const shown = useSelect(state => shownSetup(state).setup.id)
  const compared = useSelect(state => state.view.compared)
  const others = setups.length > 1
  return (
    <section id="setup-list" popover="auto" aria-label="Setups" className="menu setup-list" onToggle={focusName}>
      <table>
        <thead>
          <tr>
            <th scope="col">Setup</th>
            <th scope="col">Show</th>
            <th scope="col">Compare</th>
            <th>
              <span className="spoken">Remove</span>
            </th>
          </tr>
        </thead>
        <tbody>
          {setups.map(({ id, name }, i) => (
            <tr key={id}>
              <td>
                <input
                  className="words"
                  aria-label={`Name of setup ${i + 1}`}
                  maxLength={200}
                  value={name}
                  onChange={event => renameSetup(store, id, event.currentTarget.value, `rename-${id}`)}
                  onBlur={() => closeGesture(store)}
                />
              </td>
              <td>
                <input
                  type="radio"
                  name={`${group}-shown`}
                  aria-label={`Show ${name}`}
                  checked={id === shown}
                  onChange={() => showSetup(store, id)}
                />
              </td>
              <td>
                <input
                  type="radio"
                  name={`${group}-compared`}
                  aria-label={`Compare with ${name}`}
                  disabled={id === shown}
                  checked={id === compared && id !== shown}
                  onChange={() => compareWith(store, id)}
                />
              </td>
              <td>
                {others ? (
                  <button
                    type="button"
                    className="step"
                    aria-label={`Remove ${name}`}
                    onClick={event => {
                      const list = event.currentTarget.closest('section')
                      removeSetup(store, id)
                      requestAnimationFrame(() => focusFirstName(list))
                    }}
                  >
                    Remove
                  </button>
                ) : null}
              </td>
            </tr>
          ))}
          {others ? (
            <tr>
              <td className="nothing" colSpan={2}>
                Compare with nothing
              </td>
              <td>
                <input
                  type="radio"
                  name={`${group}-compared`}
                  aria-label="Compare with nothing"
                  checked={compared === null || compared === shown}
                  onChange={() => compareWith(store, null)}
                />
              </td>
              <td />
            </tr>
          ) : null}
        </tbody>
      </table>
    </section>
  )
}
