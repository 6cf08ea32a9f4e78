import { useCallback, useMemo } from 'react'
import { useLater } from '../../pages/use-later.ts'
import { countMeasurements } from '../../state/counts.ts'
import { fail } from '../../state/files.ts'
import { shownAxle, shownSetup } from '../../state/selectors.ts'
import { useFiles, useSelectGroup } from '../../window-context.ts'
import { column } from './late-column.ts'

/** The column of everything that is measured. */
export function Measurements() {
  const files = useFiles()
  const Column = useLater(
    column,
    useCallback(error => fail(files, 'measurements', error), [files]),
  )
  return (
    <aside className="meas" aria-label="Measurements">
      <header>
        <h2>Measurements</h2>
        <Counted />
      </header>
      {Column === null ? <div className="groups" aria-busy="true" /> : <Column />}
    </aside>
  )
}

function Counted() {
  const { plan, setup, axle } = useSelectGroup(state => ({
    plan: state.plan,
    setup: shownSetup(state).index,
    axle: shownAxle(state).index,
  }))
  const { taken, assumed } = useMemo(() => countMeasurements(plan, setup, axle), [plan, setup, axle])
  return (
    <span>
      <span className="wide-only">{taken} taken, </span>
      {assumed} assumed
    </span>
  )
}
