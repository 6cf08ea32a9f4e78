import { BrowserWindow, type Rectangle, screen } from 'electron'
import type { StoredSettings } from '../services/settings.ts'
import { windowAddress } from './origin.ts'

/** Smallest the layout is drawn for, and the largest part of it a small screen can show. */
const least = { width: 1024, height: 700 }

/** The one window, where and as large as it was left. */
export function createWindow(preload: string, remembered: StoredSettings['window']): BrowserWindow {
  const { width, height, x, y } = remembered
  const placed = x !== undefined && y !== undefined && isOnScreen({ x, y, width, height }) ? { x, y } : {}
  const window = new BrowserWindow({
    ...placed,
    width: Math.max(width, least.width),
    height: Math.max(height, least.height),
    minWidth: least.width,
    minHeight: least.height,
    show: false,
    webPreferences: {
      preload,
      contextIsolation: true,
      sandbox: true,
      nodeIntegration: false,
      webviewTag: false,
      spellcheck: false,
    },
  })
  if (remembered.maximized === true) window.maximize()
  window.once('ready-to-show', () => window.show())
  void window.loadURL(windowAddress)
  return window
}

export const placeOf = (window: BrowserWindow): StoredSettings['window'] => ({
  ...window.getNormalBounds(),
  maximized: window.isMaximized(),
})

/** Enough of the title bar to take hold of is on a screen that is there now. */
function isOnScreen({ x, y, width }: Rectangle): boolean {
  return screen.getAllDisplays().some(({ workArea }) => {
    const across = Math.min(x + width, workArea.x + workArea.width) - Math.max(x, workArea.x)
    return across > 100 && y >= workArea.y && y < workArea.y + workArea.height - 50
  })
}
