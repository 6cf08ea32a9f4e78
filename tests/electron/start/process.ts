import { type ChildProcess, spawn } from 'node:child_process'
import { once } from 'node:events'
import { join } from 'node:path'
import { onTestFinished, vi } from 'vitest'

const root = join(import.meta.dirname, '../../..')

export interface Run {
  child: ChildProcess
  /** Everything printed so far, errors too. */
  said(): string
  /** When that has come. */
  says(pattern: RegExp): Promise<RegExpExecArray>
  exit(): Promise<number | null>
}

/** The start program from source, in an environment without displays and without what the tests do not give it. */
export function startProgram(args: string[], env: Record<string, string>): Run {
  const bare = Object.fromEntries(
    Object.entries(process.env).filter(([name]) => !/^(DISPLAY|WAYLAND_DISPLAY|INIT_CWD|STOPGAP_.*)$/.test(name)),
  )
  const child = spawn(process.execPath, ['--import', 'tsx', 'electron/start/main.ts', ...args], {
    cwd: root,
    env: { ...bare, ...env },
    stdio: ['ignore', 'pipe', 'pipe'],
  })
  let text = ''
  for (const stream of [child.stdout, child.stderr]) stream?.on('data', chunk => (text += chunk))
  const exited = once(child, 'close')
  onTestFinished(async () => {
    child.kill('SIGKILL')
    await exited
  })
  return {
    child,
    said: () => text,
    says: pattern =>
      vi.waitFor(
        () => {
          const found = pattern.exec(text)
          if (found === null) throw new Error(`Not said: ${pattern}. Said: ${text}`)
          return found
        },
        { timeout: 15_000, interval: 50 },
      ),
    exit: async () => (await exited)[0] as number | null,
  }
}
