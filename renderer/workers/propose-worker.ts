import { evaluator } from '../../core/changes/evaluate.ts'
import type { ProposeAsk, ProposeWord } from '../state/proposing.ts'

/** Time between two words on what was worked out, ms. */
const EVERY = 60

const say = (word: ProposeWord): void => postMessage(word)

/** What runs beside the page: works some candidates out, and tells them as it goes. Whoever asked ends it when nobody waits any more. */
addEventListener('message', ({ data: { question, list } }: MessageEvent<ProposeAsk>) => {
  try {
    const evaluate = evaluator(question)
    let candidates: Extract<ProposeWord, { kind: 'candidates' }>['candidates'][number][] = []
    let told = performance.now()
    for (const { at, changes } of list) {
      candidates.push({ at, candidate: evaluate(changes) })
      if (performance.now() - told < EVERY) continue
      say({ kind: 'candidates', candidates })
      candidates = []
      told = performance.now()
    }
    if (candidates.length > 0) say({ kind: 'candidates', candidates })
  } catch (fault) {
    say({ kind: 'fault', fault: fault instanceof Error ? fault.message : String(fault) })
  }
})
