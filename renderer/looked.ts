import { useDeferredValue, useLayoutEffect } from 'react'
import { type Looked, lookedAt, sameLooked } from './state/selectors.ts'
import { useSelect } from './window-context.ts'

/** A key held down comes again after 33 ms: drawing may take so much of that, ms, for the window to keep up with it. */
const KEEPS_UP = 30
/** Below this, ms, it will keep up again. */
const CAUGHT_UP = 20

/** How long drawing all that is worked out takes here, ms, lately. */
let lately = 0
let behind = false

/**
 * What results are worked out from. Results are drawn in the same picture as the key that changed them; where that takes so long that
 * typing would have to wait, they are put off until what was typed is on screen. Either way all that is drawn from it is of one plan.
 */
export function useLooked(): Looked {
  const now = useSelect(lookedAt, sameLooked)
  const late = useDeferredValue(behind ? now : null)
  return behind ? (late ?? now) : now
}

/** Times what is drawn from `looked`, from here until it stands in the page: to be called where most of it is drawn. */
export function useDrawingTimed(looked: Looked): void {
  const begun = performance.now()
  // biome-ignore lint/correctness/useExhaustiveDependencies: only a drawing of something new is timed
  useLayoutEffect(() => {
    lately += (performance.now() - begun - lately) / 5
    if (lately > KEEPS_UP) behind = true
    else if (lately < CAUGHT_UP) behind = false
  }, [looked])
}
