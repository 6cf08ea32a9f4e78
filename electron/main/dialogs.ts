import { join } from 'node:path'
import { app, type BrowserWindow, dialog, type FileFilter } from 'electron'
import { planEnding } from '../contract/plan-text.ts'
import { recordingEndings } from '../contract/recording.ts'
import { fileNameFor } from '../services/file-name.ts'
import type { Dialogs } from '../services/services.ts'

const filters = [{ name: 'Stopgap plan', extensions: [planEnding.slice(1)] }]

const recordings = [
  { name: 'Recording', extensions: [...recordingEndings] },
  { name: 'All files', extensions: ['*'] },
]

export const nativeDialogs = (window: () => BrowserWindow | null): Dialogs => ({
  open: () => chosen(window(), filters),
  recording: () => chosen(window(), recordings),
  async save(suggestedName) {
    const parent = window()
    if (parent === null) return null
    const named = fileNameFor(suggestedName)
    const fileName = named.ok ? named.fileName : `Plan${planEnding}`
    const { canceled, filePath } = await dialog.showSaveDialog(parent, {
      filters,
      defaultPath: join(app.getPath('documents'), fileName),
      properties: ['createDirectory', 'showOverwriteConfirmation'],
    })
    return canceled || filePath === '' ? null : filePath
  },
})

async function chosen(parent: BrowserWindow | null, filters: FileFilter[]): Promise<string | null> {
  if (parent === null) return null
  const { filePaths } = await dialog.showOpenDialog(parent, { filters, properties: ['openFile'] })
  return filePaths[0] ?? null
}
