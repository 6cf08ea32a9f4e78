import type { Bridge } from '../../electron/contract/bridge.ts'
import type { Link } from './link.ts'

declare global {
  interface Window {
    readonly stopgap?: Bridge
  }
}

/** Through Electron's preload. Its main process owns the window, so it cannot go away first. */
export const bridgeLink = (bridge: Bridge): Link => ({
  ask: (name, request) => bridge.call(name, request),
  listen: hear => bridge.listen(hear),
  fileToken: file => bridge.fileToken(file),
  onGone: () => () => undefined,
})
