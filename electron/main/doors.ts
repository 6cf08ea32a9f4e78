import { isAbsolute } from 'node:path'
import { type IpcMainInvokeEvent, ipcMain } from 'electron'
import { type Answer, answer } from '../contract/answer.ts'
import { channels } from '../contract/bridge.ts'
import type { Services } from '../services/services.ts'
import { isOurs } from './origin.ts'

/** The two ways in for the window; only the top frame of our own page is heard. */
export function openDoors(services: Services, fault: (error: unknown) => void): void {
  ipcMain.handle(channels.call, (event, name: unknown, request: unknown): Promise<Answer> | Answer => {
    if (!fromOurPage(event)) {
      return {
        kind: 'refused',
        status: 403,
        sentence: 'Another page asked for this, and Stopgap answers its own window only.',
      }
    }
    return answer(services.handlers, name, request, fault)
  })
  // Only the preload knows this channel, and it sends what the system says of a file the person let go of.
  ipcMain.handle(channels.dropped, (event, path: unknown) =>
    fromOurPage(event) && typeof path === 'string' && isAbsolute(path) ? services.tokenFor(path) : null,
  )
}

function fromOurPage({ sender, senderFrame }: IpcMainInvokeEvent): boolean {
  return senderFrame !== null && senderFrame === sender.mainFrame && isOurs(senderFrame.url)
}
