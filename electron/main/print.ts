import { mkdtemp, rm, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { BrowserWindow } from 'electron'

/** A page as a PDF, printed by a window nobody sees, in which nothing runs. The page decides its own size. */
export async function printHidden(html: string): Promise<Uint8Array> {
  const folder = await mkdtemp(join(tmpdir(), 'stopgap-print-'))
  const file = join(folder, 'sheet.html')
  const window = new BrowserWindow({
    show: false,
    webPreferences: { sandbox: true, contextIsolation: true, nodeIntegration: false, javascript: false },
  })
  try {
    await writeFile(file, html)
    await window.loadFile(file)
    return await window.webContents.printToPDF({ preferCSSPageSize: true, printBackground: true })
  } finally {
    window.destroy()
    await rm(folder, { recursive: true, force: true })
  }
}
