import type { Answer } from './answer.ts'

/** Names of the channels between the window's process and Electron's main process. */
export const channels = { call: 'stopgap:call', dropped: 'stopgap:dropped', event: 'stopgap:event' } as const

/** What Electron's preload puts into the page as `window.stopgap`, and the only thing it puts there. */
export interface Bridge {
  call(name: string, request: unknown): Promise<Answer>
  /** Hear every event; the result stops it. */
  listen(hear: (name: string, payload: unknown) => void): () => void
  /** A token for a file dropped on the window; null when it is not a file on this machine. */
  fileToken(file: unknown): Promise<string | null>
}
