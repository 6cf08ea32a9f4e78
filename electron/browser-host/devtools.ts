import { type ChildProcess, spawn } from 'node:child_process'
import type { Readable, Writable } from 'node:stream'

type Reply = Record<string, unknown>

/** A browser without a window, told what to do over a pipe (Chrome DevTools Protocol, one JSON text after another, each ended by a zero byte). */
export interface Told {
  /** What it answers; rejects with what it says it could not do, and when it ends first. */
  ask(method: string, parameters: object, session?: string): Promise<Reply>
  /** Settles when something happens for the first time. */
  once(method: string): Promise<void>
  end(): void
}

interface Message {
  readonly id?: number
  readonly method?: string
  readonly result?: Reply
  readonly error?: { readonly message: string }
}

/** Starts a browser and listens to it. */
export function tellBrowser(browser: string, flags: readonly string[]): Told {
  const child: ChildProcess = spawn(browser, [...flags, '--remote-debugging-pipe'], {
    stdio: ['ignore', 'ignore', 'ignore', 'pipe', 'pipe'],
  })
  const [toIt, fromIt] = [child.stdio[3] as Writable, child.stdio[4] as unknown as Readable]
  const waiting = new Map<number, { resolve(reply: Reply): void; reject(error: Error): void }>()
  const awaited = new Map<string, () => void>()
  let last = 0
  let ended: Error | null = null
  const end = (why: string): void => {
    ended ??= new Error(why)
    for (const { reject } of waiting.values()) reject(ended)
    waiting.clear()
  }
  child.once('error', error => end(`the browser ${browser} could not be started (${error.message})`))
  child.once('exit', (code, signal) => end(`the browser ${browser} ended with ${signal ?? `code ${code}`}`))
  // A browser that ends takes its pipe along; that it ended is told above.
  toIt.on('error', () => undefined)
  fromIt.on('error', () => undefined)

  function hear({ id, method, result, error }: Message): void {
    if (method !== undefined) awaited.get(method)?.()
    const asked = id === undefined ? undefined : waiting.get(id)
    if (id === undefined || asked === undefined) return
    waiting.delete(id)
    if (error === undefined) asked.resolve(result ?? {})
    else asked.reject(new Error(`the browser ${browser} says: ${error.message}`))
  }

  let rest = ''
  fromIt.setEncoding('utf8')
  fromIt.on('data', (chunk: string) => {
    const texts = `${rest}${chunk}`.split('\0')
    rest = texts.pop() ?? ''
    for (const text of texts) hear(JSON.parse(text) as Message)
  })
  return {
    ask: (method, params, sessionId) =>
      new Promise((resolve, reject) => {
        if (ended !== null) return reject(ended)
        last += 1
        waiting.set(last, { resolve, reject })
        toIt.write(`${JSON.stringify({ id: last, method, params, ...(sessionId && { sessionId }) })}\0`)
      }),
    once: method => new Promise(resolve => awaited.set(method, resolve)),
    end: () => void child.kill('SIGKILL'),
  }
}
