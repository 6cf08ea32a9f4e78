import { useEffect, useState } from 'react'
import type { Finding } from '../../../core/budget/results.ts'
import { changesText, diagnose, diagnosisFinding } from '../../../core/loads/diagnosis.ts'
import { loadsShown } from '../../state/ledger.ts'
import { shownAxle } from '../../state/selectors.ts'
import { useSelectLate } from '../../window-context.ts'

/** Why the axle shown rests on or near its stop, in words. */
export interface Why {
  readonly finding: Finding
  /** Each change that alone would mend it. */
  readonly changes: string
  /** What the driver feels. */
  readonly feel: readonly string[]
}

/** Hands rest this long before it is worked out, ms: it takes several frames. */
const PAUSE = 400

/** Worked out once the hands rest, and forgotten as soon as what it explains has changed; null where there is nothing to explain. */
export function useDiagnosis(): Why | null {
  const { plan, loads, axle } = useSelectLate(state => ({
    plan: state.plan,
    loads: loadsShown(state),
    axle: shownAxle(state).axle,
  }))
  const [found, setFound] = useState<{ loads: unknown; axle: unknown; why: Why | null } | null>(null)
  useEffect(() => {
    const timer = setTimeout(() => {
      const diagnosis = diagnose(plan, loads, axle.id)
      const finding = diagnosis === null ? null : diagnosisFinding(diagnosis, plan)
      const why =
        diagnosis === null || finding === null
          ? null
          : { finding, changes: changesText(diagnosis, plan), feel: diagnosis.feel }
      setFound({ loads, axle, why })
    }, PAUSE)
    return () => clearTimeout(timer)
  }, [plan, loads, axle])
  return found !== null && found.loads === loads && found.axle === axle ? found.why : null
}
