import { useEffect, useState } from 'react'
import type { Diagnosis } from '../../../core/loads/diagnosis.ts'
import type { UnitSystem } from '../../../core/plan/schema.ts'
import { shownAxle, shownSetup } from '../../state/selectors.ts'
import { type Answered, answerWhy, keepAnswer, sameAsk, sameCar, type WhyAsk } from '../../state/why.ts'
import { useSelectLate } from '../../window-context.ts'
import { whyPool } from '../../workers/why-pool.ts'

/** Hands rest this long before it is worked out, ms. */
const PAUSE = 400

/** Why, and whether it still is of what was there before the last edit. */
export interface Explained {
  readonly why: Diagnosis
  /** Those its sentences are in: for the moment after a switch, the units from before. */
  readonly units: UnitSystem
  readonly late: boolean
}

/**
 * Worked out beside the page once the hands rest, for it takes several frames. What was said before stays until then, marked as late; of
 * another axle or setup it is never shown. Other units are no other car: they are asked for at once, and what was said in them is kept.
 * Null where there is nothing to explain.
 */
export function useDiagnosis(): Explained | null {
  const now = useSelectLate(state => ({
    plan: state.plan,
    setup: shownSetup(state).setup,
    axle: shownAxle(state).axle.id,
    off: state.view.loadsOff,
  }))
  const wanted: WhyAsk = { plan: { ...now.plan, setups: [now.setup] }, axle: now.axle, off: now.off }
  const [answers, setAnswers] = useState<readonly Answered[]>([])
  const [ask, setAsk] = useState(wanted)
  if (!sameAsk(ask, wanted)) setAsk(wanted)
  const known = answers.some(each => sameAsk(each.ask, ask))
  const worded = answers.some(each => sameCar(each.ask, ask))
  useEffect(() => {
    if (known) return
    let callOff = () => {}
    const settle = (why: Diagnosis | null) => setAnswers(kept => keepAnswer(kept, { ask, why }))
    // Where no worker answers, the page does it by itself.
    const here = () => settle(answerWhy(ask))
    const timer = setTimeout(
      () => {
        try {
          callOff = whyPool().run(ask, 0, { done: settle, failed: here })
        } catch {
          here()
        }
      },
      worded ? 0 : PAUSE,
    )
    return () => {
      clearTimeout(timer)
      callOff()
    }
  }, [ask, known, worded])
  const found =
    answers.find(each => sameAsk(each.ask, wanted)) ??
    answers.find(each => each.ask.plan.setups[0]?.id === now.setup.id && each.ask.axle === now.axle)
  if (found === undefined || found.why === null) return null
  return { why: found.why, units: found.ask.plan.units, late: !sameCar(found.ask, wanted) }
}
