import type { Finding } from '../../../core/budget/results.ts'
import { loadFindingsShown, mergedFindings } from '../../state/ledger.ts'
import { resultsShown, shownAxle } from '../../state/selectors.ts'
import { useSelectGroup, useSelectLate } from '../../window-context.ts'

/** What is worth saying of the axle shown, its loads included, the worst first. What is said of loads is a moment late while somebody types. */
export function useFindings(): readonly Finding[] {
  const { own, axle } = useSelectGroup(state => ({
    own: resultsShown(state).budget.findings,
    axle: shownAxle(state).axle.id,
  }))
  return mergedFindings(own, useSelectLate(loadFindingsShown), axle)
}
