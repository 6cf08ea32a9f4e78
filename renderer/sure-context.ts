import { createContext, useContext, useEffect, useMemo, useSyncExternalStore } from 'react'
import { shownAxle, shownSetup } from './state/selectors.ts'
import { createSure, type Sure, type SureHand, type SureView } from './state/sure.ts'
import { useSelectGroup } from './window-context.ts'

const hire = (): SureHand =>
  new Worker(new URL('./workers/sure-worker.ts', import.meta.url), { type: 'module', name: 'sure' })

const TOUCHES = ['keydown', 'pointerdown', 'wheel'] as const

/** Outside App nobody asks, and nothing is known. */
export const SureContext = createContext<Sure>(createSure(hire))

/** Trials of whatever axle is shown, begun anew as it changes. */
export function useTrials(): Sure {
  const sure = useMemo(() => createSure(hire), [])
  const { plan, setup, axle, off } = useSelectGroup(state => ({
    plan: state.plan,
    setup: shownSetup(state).setup,
    axle: shownAxle(state).axle,
    off: state.view.loadsOff,
  }))
  useEffect(() => sure.ask(plan, setup, axle, off), [sure, plan, setup, axle, off])
  useEffect(() => sure.close, [sure])
  useEffect(() => {
    // Told before anything comes of the key: the trials let go of the machine while the page works it out.
    const hands = (): void => sure.hands()
    for (const touch of TOUCHES) addEventListener(touch, hands, { capture: true, passive: true })
    return () => {
      for (const touch of TOUCHES) removeEventListener(touch, hands, { capture: true })
    }
  }, [sure])
  return sure
}

export const useSure = (): Sure => useContext(SureContext)

/** How sure the axle shown is, as far as that is known. */
export function useSureView(): SureView {
  const sure = useSure()
  return useSyncExternalStore(sure.subscribe, sure.read)
}
