import { type Host, HostGone, HostRefused } from '../host.ts'
import { closeGesture } from './edit.ts'
import { logFault, told } from './fault.ts'
import type { Keeper } from './keeper.ts'
import { notify } from './notices.ts'
import type { Store } from './store.ts'

/** What everything that touches files needs at hand. */
export interface Files {
  readonly store: Store
  readonly host: Host
  readonly keeper: Keeper
}

type Ends = Pick<Files, 'store' | 'host'>

/** A failure as a notice: the plan on screen is never lost by one. One of the program's own is in the log. */
export function fail({ store, host }: Ends, about: string, error: unknown): void {
  if (error instanceof HostGone) store.write({ ...store.read(), hostGone: true })
  else if (error instanceof HostRefused) notify(store, { about, text: told(error) })
  else {
    logFault({ host }, about, error)
    notify(store, { about, text: told(error), steps: [{ label: 'Show log', remedy: { kind: 'log' } }] })
  }
}

/** Runs something that may fail; null when it did, and the person has been told. */
export async function guarded<T>(ends: Ends, about: string, work: () => Promise<T>) {
  try {
    return await work()
  } catch (error) {
    fail(ends, about, error)
    return null
  }
}

/** Keeps what is on screen before something else takes its place. */
export async function leave({ store, keeper }: Files): Promise<void> {
  closeGesture(store)
  await keeper.flush()
}
