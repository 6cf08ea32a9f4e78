import { Cancelled, RunDesk } from './run-desk.ts'
import type { RunReply, RunWord } from './run-messages.ts'

/** The memory of an answer that may change hands instead of being copied. */
function handedOver(answer: unknown): ArrayBuffer[] {
  const run = (answer as { run?: { stretches?: readonly { values: Float64Array }[] } } | null)?.run
  return (run?.stretches ?? []).map(({ values }) => values.buffer as ArrayBuffer)
}

/** Takes what the page says about recorded runs, and says what comes of it. That an answer is not waited for any more is heard in between. */
export function runAttendant(say: (reply: RunReply, transfer: ArrayBuffer[]) => void): (word: RunWord) => void {
  const desk = new RunDesk()
  const off = new Set<number>()

  async function work({ id, ask }: Extract<RunWord, { ask: unknown }>): Promise<void> {
    let told = -1
    try {
      const answer = await desk.answer(ask, {
        cancelled: () => off.has(id),
        tell: share => {
          const percent = Math.floor(share * 100)
          if (percent !== told) say({ id, share }, [])
          told = percent
        },
      })
      say({ id, answer }, handedOver(answer))
    } catch (fault) {
      if (fault instanceof Cancelled) say({ id, cancelled: true }, [])
      else say({ id, fault: fault instanceof Error ? fault.message : String(fault) }, [])
    } finally {
      off.delete(id)
    }
  }

  return word => {
    if ('cancel' in word) off.add(word.cancel)
    else void work(word)
  }
}
