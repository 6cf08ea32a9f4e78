import { useCallback, useMemo, useState } from 'react'
import { useLater } from '../../pages/use-later.ts'
import { countMeasurements } from '../../state/counts.ts'
import { logFault } from '../../state/fault.ts'
import { shownAxle, shownSetup } from '../../state/selectors.ts'
import { useFiles, useSelectGroup } from '../../window-context.ts'
import { column } from './late-column.ts'

/** The column of everything that is measured. */
export function Measurements() {
  const [attempt, setAttempt] = useState(0)
  return (
    <aside className="meas" aria-label="Measurements">
      <header>
        <h2>Measurements</h2>
        <Counted />
      </header>
      <Fields key={attempt} onAgain={() => setAttempt(attempt + 1)} />
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

function Fields({ onAgain }: { readonly onAgain: () => void }) {
  const files = useFiles()
  const [missing, setMissing] = useState(false)
  const Column = useLater(
    column,
    useCallback(
      (error: unknown) => {
        logFault(files, 'measurements', error)
        setMissing(true)
      },
      [files],
    ),
  )
  if (Column !== null) return <Column />
  if (!missing) return <div className="groups" aria-busy="true" />
  return (
    <div className="groups fields-missing" role="alert">
      <p>The fields could not be fetched. Try again, or load the window again.</p>
      <button type="button" className="step" onClick={onAgain}>
        Try again
      </button>
    </div>
  )
}
