import { spawn } from 'node:child_process'
import { existsSync } from 'node:fs'
import { mkdir, mkdtemp, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { setTimeout as pause } from 'node:timers/promises'
import { reason } from '../services/reason.ts'

export interface Launched {
  /**
   * Settles when the browser has ended and its profile is gone. `why` follows a colon, when it ended badly; `left` says what of
   * the profile could not be removed.
   */
  ended: Promise<{ why: string | null; left: string | null }>
  stop(): void
}

/** The window in a browser of its own: no address bar, no other tabs, a new profile that is removed afterwards. */
export async function launch(
  browser: string,
  address: string,
  size: { width: number; height: number },
  home: string,
): Promise<Launched> {
  const profile = await newProfile(browser, home)
  const child = spawn(browser, browserFlags(address, profile, size, process.getuid?.() === 0), { stdio: 'ignore' })
  const ended = new Promise<{ why: string | null }>(resolve => {
    child.once('error', error => resolve({ why: `it could not be started (${error.message})` }))
    child.once('exit', (code, signal) => {
      resolve({ why: code === 0 || signal === 'SIGTERM' ? null : `it ended with ${signal ?? `code ${code}`}` })
    })
  })
  return {
    ended: ended.then(async ({ why }) => ({ why, left: await removeProfile(profile) })),
    stop: () => child.kill(),
  }
}

/** Helpers of the browser can outlive it for a moment, and write once more into what was just removed. */
export async function removeProfile(profile: string): Promise<string | null> {
  let why = 'something writes in it'
  for (let tries = 0; tries < 20; tries++) {
    await rm(profile, { recursive: true, force: true }).catch((error: unknown) => {
      why = reason(error)
    })
    await pause(100)
    if (!existsSync(profile)) return null
  }
  return `The browser’s own folder ${profile} could not be removed: ${why}.`
}

/** A browser from a snap sees neither the temporary folder of others nor hidden folders, only its own. */
export async function newProfile(browser: string, home: string): Promise<string> {
  if (!browser.startsWith('/snap/')) return mkdtemp(join(tmpdir(), 'stopgap-window-'))
  const own = join(home, 'snap', 'chromium', 'common')
  await mkdir(own, { recursive: true })
  return mkdtemp(join(own, 'stopgap-window-'))
}

export const browserFlags = (
  address: string,
  profile: string,
  size: { width: number; height: number },
  isRoot: boolean,
): string[] => [
  `--app=${address}`,
  `--user-data-dir=${profile}`,
  `--window-size=${size.width},${size.height}`,
  '--no-first-run',
  '--no-default-browser-check',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
  '--disable-quic',
  // The browser refuses to run for root otherwise.
  ...(isRoot ? ['--no-sandbox', '--test-type'] : []),
]
