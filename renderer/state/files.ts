import { type Host, HostGone } from '../host.ts'
import { closeGesture } from './edit.ts'
import type { Keeper } from './keeper.ts'
import { notify } from './notices.ts'
import type { Store } from './store.ts'

/** What everything that touches files needs at hand. */
export interface Files {
  readonly store: Store
  readonly host: Host
  readonly keeper: Keeper
}

/** A failure as a notice: the plan on screen is never lost by one. */
export function fail(store: Store, about: string, error: unknown): void {
  if (error instanceof HostGone) store.write({ ...store.read(), hostGone: true })
  else notify(store, { about, text: error instanceof Error ? error.message : String(error) })
}

/** Runs something that may fail; null when it did, and the person has been told. */
export async function guarded<T>({ store }: Pick<Files, 'store'>, about: string, work: () => Promise<T>) {
  try {
    return await work()
  } catch (error) {
    fail(store, about, error)
    return null
  }
}

/** Keeps what is on screen before something else takes its place. */
export async function leave({ store, keeper }: Files): Promise<void> {
  closeGesture(store)
  await keeper.flush()
}
