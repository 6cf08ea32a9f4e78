import { useMemo } from 'react'
import type { Finding } from '../../../core/budget/results.ts'
import { useLooked } from '../../looked.ts'
import { findingsShown } from '../../state/ledger.ts'

/** What is worth saying of the axle shown, its loads included, the worst first; worked out once what was typed is on screen. */
export function useFindings(): readonly Finding[] {
  const looked = useLooked()
  return useMemo(() => findingsShown(looked), [looked])
}
