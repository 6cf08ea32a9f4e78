import { BrowserWindow } from 'electron'

/**
 * A page as a PDF, printed by a window nobody sees, in which nothing runs. The page decides its own size. It comes from no place, so that
 * nothing of the machine and nothing from elsewhere can be put into it.
 */
export async function printHidden(html: string): Promise<Uint8Array> {
  const window = new BrowserWindow({
    show: false,
    webPreferences: { sandbox: true, contextIsolation: true, nodeIntegration: false, javascript: false },
  })
  try {
    await window.loadURL(`data:text/html;charset=utf-8;base64,${Buffer.from(html).toString('base64')}`)
    return await window.webContents.printToPDF({ preferCSSPageSize: true, printBackground: true })
  } finally {
    window.destroy()
  }
}
