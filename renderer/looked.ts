import { useDeferredValue } from 'react'
import { type Looked, lookedAt, sameLooked } from './state/selectors.ts'
import { useSelect } from './window-context.ts'

/**
 * What results are worked out from, put off until what was typed is on screen: typing never waits for a budget, for loads or for the
 * drawing of them. All that is drawn from it is of one plan.
 */
export const useLooked = (): Looked => useDeferredValue(useSelect(lookedAt, sameLooked))
