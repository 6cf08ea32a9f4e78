import { app, type Session } from 'electron'
import { isOurs } from './origin.ts'

/** No page leads anywhere else, opens another window, or embeds another page. */
export function fenceContents(): void {
  app.on('web-contents-created', (_event, contents) => {
    contents.on('will-navigate', event => {
      if (!isOurs(event.url)) event.preventDefault()
    })
    contents.on('will-frame-navigate', event => {
      if (!event.isMainFrame || !isOurs(event.url)) event.preventDefault()
    })
    contents.on('will-redirect', event => event.preventDefault())
    contents.on('will-attach-webview', event => event.preventDefault())
    contents.setWindowOpenHandler(() => ({ action: 'deny' }))
  })
}

/** No camera, no place, no notifications, no devices: nothing Stopgap does needs a permission. */
export function fenceSession(session: Session): void {
  session.setPermissionRequestHandler((_contents, _permission, decide) => decide(false))
  session.setPermissionCheckHandler(() => false)
  session.setDevicePermissionHandler(() => false)
}
