import { useEffect, useState } from 'react'
import type { Diagnosis } from '../../../core/loads/diagnosis.ts'
import { shownAxle, shownSetup } from '../../state/selectors.ts'
import { answerWhy, type WhyAsk } from '../../state/why.ts'
import { useSelectLate } from '../../window-context.ts'
import { whyPool } from '../../workers/why-pool.ts'

/** Hands rest this long before it is worked out, ms. */
const PAUSE = 400

/** Why, and whether it still is of what was there before the last edit. */
export interface Explained {
  readonly why: Diagnosis
  readonly late: boolean
}

/**
 * Worked out beside the page once the hands rest, for it takes several frames. What was said before stays until then, marked as late; of
 * another axle or setup it is never shown. Null where there is nothing to explain.
 */
export function useDiagnosis(): Explained | null {
  const { plan, setup, axle, off } = useSelectLate(state => ({
    plan: state.plan,
    setup: shownSetup(state).setup,
    axle: shownAxle(state).axle.id,
    off: state.view.loadsOff,
  }))
  const { loads, vehicle, units, targets } = plan
  const [found, setFound] = useState<{ setup: string; ask: WhyAsk; why: Diagnosis | null } | null>(null)
  const [ask, setAsk] = useState<WhyAsk>(() => ({ plan: { ...plan, setups: [setup] }, axle, off }))
  const same =
    ask.plan.setups[0] === setup &&
    ask.plan.loads === loads &&
    ask.plan.vehicle === vehicle &&
    ask.plan.units === units &&
    ask.plan.targets === targets &&
    ask.axle === axle &&
    ask.off === off
  if (!same) setAsk({ plan: { ...plan, setups: [setup] }, axle, off })
  useEffect(() => {
    let callOff = () => {}
    const settle = (why: Diagnosis | null) => setFound({ setup: ask.plan.setups[0]!.id, ask, why })
    // Where no worker answers, the page does it by itself.
    const here = () => settle(answerWhy(ask))
    const timer = setTimeout(() => {
      try {
        callOff = whyPool().run(ask, 0, { done: settle, failed: here })
      } catch {
        here()
      }
    }, PAUSE)
    return () => {
      clearTimeout(timer)
      callOff()
    }
  }, [ask])
  if (found === null || found.why === null || found.setup !== setup.id || found.ask.axle !== axle) return null
  return { why: found.why, late: found.ask !== ask }
}
