import { useDeferredValue } from 'react'
import { useNarrow } from '../../narrow.ts'
import { countMeasurements } from '../../state/counts.ts'
import { shownAxle, shownSetup } from '../../state/selectors.ts'
import { useSelectGroup } from '../../window-context.ts'
import { Group } from './Group.tsx'
import { groups } from './groups.ts'
import { HowToMeasure } from './HowToMeasure.tsx'

/** The column of everything that is measured. */
export function Measurements() {
  const narrow = useNarrow()
  const { taken, assumed } = useSelectGroup(state =>
    countMeasurements(state.plan, shownSetup(state).index, shownAxle(state).index),
  )
  // At a start what they come to is drawn first, and they follow as soon as that is on screen.
  const follow = useDeferredValue(true, false)
  return (
    <aside className="meas" aria-label="Measurements">
      <header>
        <h2>Measurements</h2>
        <span>
          <span className="wide-only">{taken} taken, </span>
          {assumed} assumed
        </span>
      </header>
      <div className="groups">
        {follow ? groups.map(group => <Group key={group.id} group={group} narrow={narrow} />) : null}
      </div>
      <HowToMeasure />
    </aside>
  )
}
