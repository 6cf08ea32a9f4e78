import { termOfGroup } from '../../help/term-of-group.ts'
import { shownAxle } from '../../state/selectors.ts'
import { fold, openDialog } from '../../state/view.ts'
import { useSelect, useStore } from '../../window-context.ts'
import { isOpen, toggled } from './folding.ts'
import { type GroupSpec, groupOf, groups } from './groups.ts'

const fieldOf = (place: string): string => place.replace(/^setups\.\d+\.axles\.\d+\./, '')

/** One group of measurements: its fields, or one line with what matters of them. */
export function Group({ group, narrow }: { group: GroupSpec; narrow: boolean }) {
  const store = useStore()
  const refused = useSelect(({ view }) =>
    Object.keys(view.refused).some(place => groupOf(fieldOf(place))?.id === group.id),
  )
  const folds = useSelect(({ view }) => view.folds)
  const open = isOpen(group, { folds, narrow, refused })
  const said = useSelect(state => group.keyValues(shownAxle(state).axle, state.plan))
  const { Body } = group
  return (
    <section className={open ? 'group' : 'group fold'} id={`group-${group.id}`}>
      <h3>
        <button
          type="button"
          aria-expanded={open}
          aria-controls={`body-${group.id}`}
          onClick={() => fold(store, toggled(groups, group.id, !open, narrow))}
        >
          {group.title}
          {open ? null : <span>{said}</span>}
        </button>
      </h3>
      {open ? (
        <button
          type="button"
          className="explain"
          aria-label={`Explain ${group.title.toLowerCase()}`}
          title="What the words here mean"
          onClick={() => openDialog(store, { kind: 'help', term: termOfGroup(group.id) })}
        >
          ?
        </button>
      ) : null}
      <fieldset id={`body-${group.id}`} aria-label={group.title} hidden={!open}>
        {open ? <Body /> : null}
      </fieldset>
    </section>
  )
}
