import { useEffect, useState } from 'react'
import type { LayAsk } from '../../state/laid-slot.ts'
import type { Recordings } from '../../state/recordings.ts'
import type { SeenBeside } from '../../workers/run-messages.ts'

/** It is looked for once the hands rest, ms: what is laid meanwhile comes first. */
const PAUSE = 500

/** Where a run shows pad and stop meet, beside the plan's; null while it is looked for. @param of what is laid, once it is */
export function useSeen(recordings: Recordings, of: LayAsk | null): SeenBeside | null {
  const [seen, setSeen] = useState<SeenBeside | null>(null)
  useEffect(() => {
    setSeen(null)
    if (of === null) return
    let left = false
    const timer = setTimeout(() => {
      void recordings.client.ask<'see'>({ ...of, kind: 'see' }).done.then(end => {
        if (left) return
        setSeen(
          end.kind === 'answer' && end.answer !== null
            ? end.answer
            : { words: 'It could not be looked for in this run.', finding: null },
        )
      })
    }, PAUSE)
    return () => {
      left = true
      clearTimeout(timer)
    }
  }, [recordings, of])
  return seen
}
