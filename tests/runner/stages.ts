import { spawn } from 'node:child_process'
import { existsSync } from 'node:fs'
import { readFile, rm } from 'node:fs/promises'
import path from 'node:path'
import { type Outcome, settle } from './outcome.ts'

const root = path.join(import.meta.dirname, '../..')
/** Escape codes are for terminals; a log stays readable without. */
const plain = process.stdout.isTTY ? {} : { NO_COLOR: '1', FORCE_COLOR: '0' }
/** A stage that takes longer hangs, ms. */
const patience = 20 * 60_000
const cache = path.join(root, '.cache')

export interface Stage {
  /** For `npm test -- lint unit`. */
  name: string
  title: string
  command: readonly string[]
  /** Where a test run leaves its counts; a stage without is one check, passed or failed. */
  report?: { variable: string; file: string }
}

const types = (layer: string): Stage => ({
  name: 'types',
  title: `types of ${layer}`,
  command: ['tsc', '--pretty', 'false', '-p', layer],
})

/** Checks that read the files only: they run side by side. */
export const staticStages: readonly Stage[] = [
  {
    name: 'lint',
    title: 'format, lint and layers',
    command: [
      'biome',
      'check',
      '--colors=off',
      '--diagnostic-level=warn',
      '--error-on-warnings',
      '--max-diagnostics=40',
    ],
  },
  ...['core', 'electron/contract', 'electron', 'renderer', 'tests'].map(types),
  { name: 'unused', title: 'nothing unused', command: ['knip', '--no-progress', '--treat-config-hints-as-errors'] },
]

/** Run one after the other: the window tests need what is built. */
export const runningStages: readonly Stage[] = [
  { name: 'build', title: 'build', command: ['tsx', 'electron/build.ts'] },
  {
    name: 'unit',
    title: 'unit tests',
    command: ['vitest', 'run', '--config', 'tests/vitest.config.ts'],
    report: { variable: 'UNIT_REPORT', file: path.join(cache, 'unit.json') },
  },
  {
    name: 'e2e',
    title: 'window tests',
    command: ['playwright', 'test', '--config', 'tests/e2e/playwright.config.ts'],
    report: { variable: 'WINDOW_REPORT', file: path.join(cache, 'window.json') },
  },
]

/** Runs one stage to its end. A check is silent unless it fails; a test run speaks as it goes. */
export async function run(stage: Stage): Promise<{ outcome: Outcome; output: string }> {
  if (stage.report) await rm(stage.report.file, { force: true })
  const { exitCode, output } = await execute(stage)
  if (stage.report === undefined) {
    const failed = exitCode === 0 ? 0 : 1
    return { outcome: { passed: 1 - failed, failed, skipped: 0, notes: [] }, output: failed ? output : '' }
  }
  const reported = existsSync(stage.report.file)
    ? (JSON.parse(await readFile(stage.report.file, 'utf8')) as Outcome)
    : undefined
  return { outcome: settle(stage.title, exitCode, reported), output }
}

function execute({ command, report }: Stage): Promise<{ exitCode: number; output: string }> {
  const [program, ...args] = command
  return new Promise((resolve, reject) => {
    const child = spawn(path.join(root, 'node_modules/.bin', program!), args, {
      cwd: root,
      stdio: ['ignore', report ? 'inherit' : 'pipe', report ? 'inherit' : 'pipe'],
      shell: process.platform === 'win32',
      timeout: patience,
      env: { ...process.env, ...plain, ...(report && { [report.variable]: report.file }) },
    })
    let output = ''
    for (const stream of [child.stdout, child.stderr])
      stream?.on('data', (chunk: Buffer) => {
        output += chunk.toString()
      })
    child.on('error', reject)
    child.on('close', (code, signal) => {
      if (signal !== null) output += `Stopped by ${signal}; a stage may take ${patience / 60_000} minutes.\n`
      resolve({ exitCode: code ?? 1, output })
    })
  })
}
