import { spawn } from 'node:child_process'
import { existsSync, readFileSync } from 'node:fs'
import { join } from 'node:path'

/** How long a fetch may take: long enough for a good line, short enough to wait for. */
const patience = 60_000
/** A program that ends badly within this time never showed its window. */
const tooSoon = 8000

/** Electron's program, when it is installed; looked for without importing electron, which would start a download. */
export function electronBinary(app: string): string | null {
  const folder = join(app, 'node_modules', 'electron')
  const named = join(folder, 'path.txt')
  if (!existsSync(named)) return null
  const program = join(
    process.env.ELECTRON_OVERRIDE_DIST_PATH ?? join(folder, 'dist'),
    readFileSync(named, 'utf8').trim(),
  )
  return existsSync(program) ? program : null
}

/** Lets Electron's own installer fetch the program, once. null when it has; else why not, to follow a colon. */
export async function fetchElectron(app: string, interrupted: Promise<void>): Promise<string | null> {
  const installer = join(app, 'node_modules', 'electron', 'install.js')
  if (!existsSync(installer)) return 'its package is not installed'
  const child = spawn(process.execPath, [installer], { stdio: 'ignore', timeout: patience })
  void interrupted.then(() => child.kill())
  return new Promise(resolve => {
    child.once('error', error => resolve(error.message))
    child.once('exit', code => {
      if (code === 0) resolve(null)
      else resolve(code === null ? `it took longer than ${patience / 1000} s` : 'its download did not succeed')
    })
  })
}

/** Runs the application in Electron until it is closed. `why` is there when it never came up. */
export async function runElectron(
  program: string,
  app: string,
  file: string | null,
  interrupted: Promise<void>,
): Promise<{ why: string | null }> {
  const isRoot = process.platform === 'linux' && process.getuid?.() === 0
  // Chromium refuses to run for root with its sandbox.
  const flags = isRoot ? ['--no-sandbox'] : []
  const { ELECTRON_RUN_AS_NODE: _plainNode, ...env } = process.env
  const begun = Date.now()
  const child = spawn(program, [app, ...flags, ...(file === null ? [] : [file])], { stdio: 'inherit', env })
  void interrupted.then(() => child.kill())
  return new Promise(resolve => {
    child.once('error', error => resolve({ why: error.message }))
    child.once('exit', (code, signal) => {
      const failed = code !== 0 && signal !== 'SIGTERM' && signal !== 'SIGINT' && Date.now() - begun < tooSoon
      resolve({ why: failed ? `it ended at once with ${signal ?? `code ${code}`}` : null })
    })
  })
}
