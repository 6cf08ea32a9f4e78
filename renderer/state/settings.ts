import type { Settings } from '../../electron/contract/contract.ts'
import { type Files, guarded } from './files.ts'

export const withSettings = ({ store }: Pick<Files, 'store'>, settings: Settings): void =>
  store.write({ ...store.read(), settings })

/** Shown at once; the host keeps it for the next start. */
export async function showTheme(files: Files, theme: Settings['theme']): Promise<void> {
  withSettings(files, { ...files.store.read().settings, theme })
  const reply = await guarded(files, 'settings', () => files.host.call('settings', { theme }))
  if (reply !== null) withSettings(files, reply)
}
