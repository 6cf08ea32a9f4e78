import { useCallback } from 'react'
import { useLater } from '../../pages/use-later.ts'
import { countMeasurements } from '../../state/counts.ts'
import { fail } from '../../state/files.ts'
import { shownAxle, shownSetup } from '../../state/selectors.ts'
import { useFiles, useSelectGroup } from '../../window-context.ts'
import { column } from './late-column.ts'

/** The column of everything that is measured. */
export function Measurements() {
  const files = useFiles()
  const { taken, assumed } = useSelectGroup(state =>
    countMeasurements(state.plan, shownSetup(state).index, shownAxle(state).index),
  )
  const Column = useLater(
    column,
    useCallback(error => fail(files, 'measurements', error), [files]),
  )
  return (
    <aside className="meas" aria-label="Measurements">
      <header>
        <h2>Measurements</h2>
        <span>
          <span className="wide-only">{taken} taken, </span>
          {assumed} assumed
        </span>
      </header>
      {Column === null ? <div className="groups" aria-busy="true" /> : <Column />}
    </aside>
  )
}
