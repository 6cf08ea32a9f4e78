import { formatPlan } from '../../core/plan/file-text.ts'
import type { Host } from '../host.ts'
import { fail } from './files.ts'
import { historyText } from './kept-history.ts'
import { dismiss, notify } from './notices.ts'
import type { State } from './state.ts'
import type { Store } from './store.ts'

/** Keeps the plan with the host as it changes, so that nothing is lost whatever happens to the window. */
export interface Keeper {
  /** Keeps the plan although it has not changed: it is new. */
  touch(): void
  /** Sends what is not kept yet, now. */
  flush(): Promise<void>
  stop(): void
}

/** Quiet time after a change before it is kept, ms. */
const PAUSE = 250

const marks = ({ plan, history, document }: State): unknown[] => [plan, history.past, history.future, document.key]

export function startKeeper(store: Store, host: Host): Keeper {
  let timer: ReturnType<typeof setTimeout> | null = null
  let kept = marks(store.read())
  let sending: Promise<void> = Promise.resolve()

  const send = async (state: State): Promise<void> => {
    const { plan, history, document } = state
    const { key, token, name, basis } = document
    try {
      const text = formatPlan(plan)
      const answer = await host.call('keep', { key, token, name, text, basis, history: historyText(history) })
      if (answer.kind === 'kept') dismiss(store, 'keep')
      else
        notify(store, {
          about: 'keep',
          text: `Changes are not being kept: ${answer.reason}`,
          steps: [{ label: 'Save in a file', remedy: { kind: 'saveAs' } }],
        })
    } catch (error) {
      fail({ store, host }, 'keep', error)
    }
  }

  const flush = (): Promise<void> => {
    if (timer === null) return sending
    clearTimeout(timer)
    timer = null
    sending = send(store.read())
    return sending
  }

  const touch = (): void => {
    if (store.read().hostGone) return
    if (timer !== null) clearTimeout(timer)
    timer = setTimeout(() => void flush(), PAUSE)
  }

  const stop = store.subscribe(() => {
    const state = store.read()
    const now = marks(state)
    if (now.every((mark, i) => mark === kept[i])) return
    // Another plan under another key was opened just now: whoever gave it has it.
    const opened = now[0] !== kept[0] && now[3] !== kept[3]
    kept = now
    if (!opened) touch()
  })

  return { touch, flush, stop }
}
