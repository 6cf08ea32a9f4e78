import type { Settings } from '../../electron/contract/shapes.ts'
import { type Files, guarded } from './files.ts'

export const withSettings = ({ store }: Pick<Files, 'store'>, settings: Settings): void =>
  store.write({ ...store.read(), settings })

/** Holds at once; the host keeps it for the next start. */
export async function remember(files: Files, part: Partial<Settings>): Promise<void> {
  withSettings(files, { ...files.store.read().settings, ...part })
  const reply = await guarded(files, 'settings', () => files.host.call('settings', part))
  if (reply !== null) withSettings(files, reply)
}

/** Each page that is turned to is the one the next start begins on. */
export function rememberPages(files: Files): void {
  let last = files.store.read().view.page
  files.store.subscribe(() => {
    const { page } = files.store.read().view
    if (page === last) return
    last = page
    // It is drawn first.
    requestAnimationFrame(() => setTimeout(() => void remember(files, { page })))
  })
}
