import { createServer, type IncomingMessage, type ServerResponse } from 'node:http'
import type { AddressInfo } from 'node:net'
import { answer, type Handlers } from '../contract/answer.ts'
import type { Tell } from '../contract/contract.ts'
import { pageHeaders, windowNameHeader } from '../contract/page.ts'
import { windowFile } from '../services/window-files.ts'
import { jsonBody } from './body.ts'
import { createGuard, type Guard } from './guard.ts'
import { Refusal } from './refusal.ts'
import { createStreams } from './streams.ts'
import type { Windows } from './windows.ts'

export interface ServeOptions {
  /** What the window of this name may ask. */
  handlers(window: string): Handlers
  /** Windows come and go. */
  windows: Windows
  /** Folder of the built window. */
  files: string
  /** Hears of errors that ought not to happen. */
  fault(error: unknown): void
  /** How long a window may be away, ms, before it counts as closed. */
  grace: number
  /** A window has closed. */
  closed?(window: string): void
}

export interface Served {
  /** An address that lets one browser in, once. */
  newAddress(): string
  tell: Tell
  hadWindow(): boolean
  /** Settles when the last window has closed. */
  abandoned: Promise<void>
  end(): Promise<void>
}

/** Serves the window on a free port of 127.0.0.1, to whoever holds an address given out here. */
export async function serve(options: ServeOptions): Promise<Served> {
  const streams = createStreams(options.grace, options.windows, options.closed)
  const server = createServer()
  await new Promise<void>((resolve, reject) => {
    server.once('error', reject)
    server.listen(0, '127.0.0.1', resolve)
  })
  const guard = createGuard((server.address() as AddressInfo).port)
  server.on('request', (request, response) => {
    for (const [name, value] of Object.entries(pageHeaders)) response.setHeader(name, value)
    route(request, response, guard, streams.add, options).catch((error: unknown) => {
      refuse(response, error, options)
      // What is still coming is read and dropped: a page that is cut off while it sends never sees the answer.
      request.resume()
    })
  })
  return {
    newAddress: guard.newAddress,
    tell: streams.tell,
    hadWindow: streams.hadWindow,
    abandoned: streams.abandoned,
    end: () => {
      streams.close()
      return new Promise(resolve => {
        server.close(() => resolve())
        server.closeIdleConnections()
        setTimeout(() => server.closeAllConnections(), 1000).unref()
      })
    },
  }
}

async function route(
  request: IncomingMessage,
  response: ServerResponse,
  guard: Guard,
  listen: (stream: ServerResponse, window: string) => void,
  options: ServeOptions,
): Promise<void> {
  guard.checkSource(request)
  const { pathname, searchParams } = addressOf(request, guard.origin)
  if (pathname === '/enter') {
    allow(request, 'GET')
    response.writeHead(303, guard.enter(searchParams.get('ticket'))).end()
    return
  }
  guard.checkCookie(request)
  if (pathname === '/events') {
    guard.checkSecret(request)
    allow(request, 'GET')
    listen(response, nameOfWindow(request))
    return
  }
  if (pathname.startsWith('/call/')) {
    guard.checkSecret(request)
    allow(request, 'POST')
    const window = nameOfWindow(request)
    const body = await jsonBody(request)
    options.windows.heard(window)
    const done = await answer(options.handlers(window), pathname.slice('/call/'.length), body, options.fault)
    if (done.kind === 'refused') throw new Refusal(done.status, done.sentence)
    response.writeHead(200, { 'content-type': 'application/json; charset=utf-8' }).end(JSON.stringify(done.value))
    return
  }
  allow(request, 'GET', 'HEAD')
  const file = await windowFile(options.files, pathname)
  if (file === null) throw new Refusal(404, 'There is nothing at this address.')
  response.writeHead(200, { 'content-type': file.type, 'content-length': file.content.byteLength })
  response.end(request.method === 'HEAD' ? undefined : file.content)
}

function addressOf(request: IncomingMessage, origin: string): URL {
  const target = request.url ?? '/'
  if (!target.startsWith('/') || target.startsWith('//')) throw new Refusal(404, 'There is nothing at this address.')
  return new URL(target, origin)
}

/** Each page makes itself a name when it is loaded. */
function nameOfWindow({ headers }: IncomingMessage): string {
  const name = String(headers[windowNameHeader] ?? '')
  if (/^[\w-]{0,64}$/.test(name)) return name
  throw new Refusal(400, 'This window has a name that cannot be. Reload it.')
}

function allow(request: IncomingMessage, ...methods: string[]): void {
  if (methods.includes(request.method ?? '')) return
  throw new Refusal(405, `This address takes ${methods.join(' and ')} only.`, { allow: methods.join(', ') })
}

function refuse(response: ServerResponse, error: unknown, options: ServeOptions): void {
  if (!(error instanceof Refusal)) options.fault(error)
  if (response.headersSent) {
    response.destroy()
    return
  }
  const { status, message, headers } =
    error instanceof Refusal ? error : new Refusal(500, 'Stopgap met a fault of its own. Start it again.')
  response.writeHead(status, { ...headers, 'content-type': 'text/plain; charset=utf-8' }).end(`${message}\n`)
}
