import { protocol } from 'electron'
import { pageHeaders } from '../contract/page.ts'
import { windowFile } from '../services/window-files.ts'
import { isOurs, windowScheme } from './origin.ts'

/** Before the application is ready: the window's scheme is to work as https does. */
export function announceScheme(): void {
  protocol.registerSchemesAsPrivileged([
    { scheme: windowScheme, privileges: { standard: true, secure: true, supportFetchAPI: true, codeCache: true } },
  ])
}

/** Files of the built window, under the same headers as in the browser host. */
export function serveScheme(folder: string): void {
  protocol.handle(windowScheme, async request => {
    const file = isOurs(request.url) ? await windowFile(folder, new URL(request.url).pathname) : null
    if (file === null) return new Response('There is nothing at this address.\n', { status: 404, headers: pageHeaders })
    return new Response(file.content, { headers: { ...pageHeaders, 'content-type': file.type } })
  })
}
