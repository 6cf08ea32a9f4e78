import { setupSurenessSteps } from '../../core/tolerance/steps.ts'
import type { SureAsk, SureWord } from '../state/sure.ts'

/** Blocks of trials between two words on how far it is. */
const EVERY = 4

const say = (word: SureWord): void => postMessage(word)

/** What runs beside the page: the trials of one axle. It is ended from outside when nobody waits for it any more. */
addEventListener('message', ({ data }: MessageEvent<SureAsk>) => {
  const { plan, axle } = data
  try {
    const steps = setupSurenessSteps(plan, plan.setups[0]!, { axle })
    for (let n = 1; ; n += 1) {
      const { done, value } = steps.next()
      if (done) {
        say({ kind: 'done', sureness: value.axles[0]! })
        return
      }
      if (n % EVERY === 0) say({ kind: 'progress', share: value.done / value.of })
    }
  } catch (fault) {
    say({ kind: 'fault', fault: fault instanceof Error ? fault.message : String(fault) })
  }
})
