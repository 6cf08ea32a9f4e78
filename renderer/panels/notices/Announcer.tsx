import { useEffect, useState } from 'react'
import { formatMeasure } from '../../../core/units/format.ts'
import { resultsShown } from '../../state/selectors.ts'
import type { State } from '../../state/state.ts'
import { useSelect } from '../../window-context.ts'
import { countedFindings } from '../findings/counted.ts'

/** Quiet before a new result is read out, ms: typing is not interrupted. */
const PAUSE = 1000

const sentence = (state: State): string => {
  const { engagement, findings } = resultsShown(state).budget
  const meets =
    engagement === null
      ? 'The stop is not met.'
      : `Engagement at ${formatMeasure(engagement.wheel, 'length', state.plan.units, { unit: true })}.`
  return `${meets} Findings: ${countedFindings(findings)}.`
}

/** Reads results out when they have changed and the hands rest. */
export function Announcer() {
  const said = useSelect(sentence)
  const [first] = useState(said)
  const [shown, setShown] = useState('')
  useEffect(() => {
    if (said === first && shown === '') return
    const timer = setTimeout(() => setShown(said), PAUSE)
    return () => clearTimeout(timer)
  }, [said, first, shown])
  return (
    <p className="spoken" aria-live="polite">
      {shown}
    </p>
  )
}
