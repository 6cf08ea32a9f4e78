import { accessSync, constants } from 'node:fs'
import { delimiter, join } from 'node:path'

const onLinux = [
  'google-chrome-stable',
  'google-chrome',
  'chromium',
  'chromium-browser',
  'microsoft-edge-stable',
  'microsoft-edge',
  'brave-browser-stable',
  'brave-browser',
]
const onMac = ['Google Chrome', 'Chromium', 'Microsoft Edge', 'Brave Browser']
const onWindows = [
  ['Google', 'Chrome', 'Application', 'chrome.exe'],
  ['Chromium', 'Application', 'chrome.exe'],
  ['Microsoft', 'Edge', 'Application', 'msedge.exe'],
  ['BraveSoftware', 'Brave-Browser', 'Application', 'brave.exe'],
]

/** Where a browser that can show a window of its own may be, the likeliest first. */
export function browserPlaces(platform: NodeJS.Platform, env: NodeJS.ProcessEnv, home: string): string[] {
  if (env.STOPGAP_BROWSER) return [env.STOPGAP_BROWSER]
  if (platform === 'darwin') {
    const folders = ['/Applications', join(home, 'Applications')]
    return onMac.flatMap(name => folders.map(folder => join(folder, `${name}.app`, 'Contents', 'MacOS', name)))
  }
  if (platform === 'win32') {
    const folders = [env.PROGRAMFILES, env['PROGRAMFILES(X86)'], env.LOCALAPPDATA].filter(
      folder => folder !== undefined,
    )
    return onWindows.flatMap(parts => folders.map(folder => join(folder, ...parts)))
  }
  const folders = [...(env.PATH ?? '').split(delimiter), '/usr/bin', '/usr/local/bin', '/snap/bin'].filter(Boolean)
  return onLinux.flatMap(name => [...new Set(folders)].map(folder => join(folder, name)))
}

/** The first of them that is there. */
export const installedBrowser = (places: string[]): string | null => places.find(isProgram) ?? null

function isProgram(path: string): boolean {
  try {
    accessSync(path, constants.X_OK)
    return true
  } catch {
    return false
  }
}

/** Whether a window can be shown at all. */
export const hasDisplay = (platform: NodeJS.Platform, env: NodeJS.ProcessEnv): boolean =>
  platform === 'darwin' || platform === 'win32' || Boolean(env.DISPLAY) || Boolean(env.WAYLAND_DISPLAY)
