import { madeDifferences } from '../../../core/changes/differences.ts'
import { comparedSetup, shownAxle } from '../../state/selectors.ts'
import { showChanges } from '../../state/view.ts'
import { useSelectLate, useStore } from '../../window-context.ts'

/** Differences told in the line; the others are counted, and stand on the page of changes. */
const TOLD = 3

/** What the setup drawn as a ghost has otherwise, in a few words, and the way to all of it. */
export function BesideOther() {
  const store = useStore()
  const { name, differences } = useSelectLate(state => {
    const other = comparedSetup(state)
    const found = other === null ? [] : madeDifferences(shownAxle(state).axle, other.axle, state.plan.units)
    return {
      name: other?.setup.name ?? null,
      differences: found.map(({ what, after }) => `${what} ${after}`).join('\n'),
    }
  })
  if (name === null) return null
  const all = differences === '' ? [] : differences.split('\n')
  const more = all.length - TOLD
  return (
    <p className="beside-other">
      <span className="beside-words">
        {name === '' ? 'The other setup' : name}:{' '}
        {all.length === 0 ? 'the same on this axle' : all.slice(0, TOLD).join(', ')}
        {more > 0 ? `, ${more} more` : ''}.
      </span>{' '}
      <button type="button" className="step beside-step" onClick={() => showChanges(store, 'compare')}>
        Before and after
      </button>
    </p>
  )
}
