import { type ChildProcess, execFile, spawn } from 'node:child_process'
import { once } from 'node:events'
import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import { promisify } from 'node:util'
import { onTestFinished } from 'vitest'
import type { Desk } from '../desk.ts'

const services = pathToFileURL(join(import.meta.dirname, '../../../electron/services/services.ts')).href

/** What a program of its own begins with: services on the desk named by its arguments, the document in a file, and its saves. */
const head = `
const { createServices } = await import(${JSON.stringify(services)})
const [home, data, demos, file, ...rest] = process.argv.slice(1)
const { handlers, tokenFor } = createServices({ host: 'browser', version: '0', data, home, demos, file: null, dialogs: null, tell() {} })
const say = value => process.stdout.write(JSON.stringify(value) + '\\n')
const opened = await handlers.openFile({ token: await tokenFor(file) })
const { document } = opened
const saveOf = text => ({ key: document.key, token: document.token, text, basis: document.basis, replace: false })
const keepOf = text => ({ key: document.key, token: document.token, name: document.name, text, basis: document.basis, history: 'h' })
`

const argumentsFor = (desk: Desk, file: string, script: string, more: readonly string[]): string[] => [
  '--import',
  'tsx',
  '--input-type=module',
  '-e',
  head + script,
  desk.home,
  desk.data,
  desk.demos,
  file,
  ...more,
]

/** What a Stopgap in a process of its own says to `say`, once it has ended. @param shell goes before it on a command line */
export async function saidApart(
  desk: Desk,
  file: string,
  script: string,
  { more = [], shell = '' }: { more?: readonly string[]; shell?: string } = {},
): Promise<unknown[]> {
  const all = argumentsFor(desk, file, script, more)
  const [program, args] =
    shell === '' ? [process.execPath, all] : ['bash', ['-c', `${shell} "$0" "$@"`, process.execPath, ...all]]
  const { stdout } = await promisify(execFile)(program, args, { maxBuffer: 1e8 })
  return stdout
    .trim()
    .split('\n')
    .map(line => JSON.parse(line) as unknown)
}

export interface Apart {
  readonly child: ChildProcess
  /** The next thing it says. */
  next(): Promise<unknown>
  tell(line: string): void
}

/** A Stopgap in a process of its own that goes on until it is ended; it hears lines in \`lines\`. */
export function startApart(desk: Desk, file: string, script: string): Apart {
  const lines = `import { createInterface } from 'node:readline'\nconst lines = createInterface({ input: process.stdin })[Symbol.asyncIterator]()\n`
  const child = spawn(process.execPath, argumentsFor(desk, file, lines + script, []), {
    stdio: ['pipe', 'pipe', 'inherit'],
  })
  const closed = once(child, 'close')
  onTestFinished(async () => {
    child.kill('SIGKILL')
    await closed
  })
  const said: string[] = []
  let rest = ''
  let heard: () => void = () => undefined
  child.stdout.on('data', (chunk: Buffer) => {
    const parts = `${rest}${chunk}`.split('\n')
    rest = parts.pop() ?? ''
    said.push(...parts)
    heard()
  })
  return {
    child,
    next: async () => {
      while (said.length === 0)
        await new Promise<void>((resolve, reject) => {
          heard = resolve
          closed.then(() => reject(new Error('It ended without a word.')), reject)
        })
      return JSON.parse(said.shift()!) as unknown
    },
    tell: line => child.stdin.write(`${line}\n`),
  }
}
