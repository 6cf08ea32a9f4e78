import { bridgeLink } from './links/bridge-link.ts'
import { loopbackLink } from './links/loopback-link.ts'
import { remembering } from './links/remembering.ts'

/**
 * A small program of its own that runs as soon as it is here: the host is asked what to show while the window's program is on its way.
 * Electron's bridge where the page has it, else the server the page came from.
 */
export const link = remembering(window.stopgap === undefined ? loopbackLink(window) : bridgeLink(window.stopgap))

export const started = link.ask('start', {})
// The window tells what went wrong, once it is here to wait for it.
started.catch(() => undefined)
