import { mkdir, writeFile } from 'node:fs/promises'
import { Agent, request } from 'node:http'
import { networkInterfaces } from 'node:os'
import { join } from 'node:path'
import { beforeEach, describe, expect, it, onTestFinished } from 'vitest'
import { longestBody } from '../../../electron/browser-host/body.ts'
import { type Served, serve } from '../../../electron/browser-host/serve.ts'
import { createWindows } from '../../../electron/browser-host/windows.ts'
import { pageHeaders } from '../../../electron/contract/page.ts'
import { newDesk } from '../desk.ts'

interface Sent {
  status: number
  headers: NodeJS.Dict<string | string[]>
  body: string
}

/** Sends exactly this, over a real connection: fetch would tidy paths and headers up. */
function send(port: number, method: string, path: string, headers: Record<string, string>, body = ''): Promise<Sent> {
  return new Promise((resolve, reject) => {
    const sent = request({ agent: false, host: '127.0.0.1', port, method, path, headers }, response => {
      const chunks: Buffer[] = []
      response.on('data', chunk => chunks.push(chunk))
      response.on('end', () =>
        resolve({
          status: response.statusCode ?? 0,
          headers: response.headers,
          body: Buffer.concat(chunks).toString(),
        }),
      )
    })
    sent.on('error', reject)
    sent.end(body)
  })
}

let server: Served
let port: number
let cookie: string
let secret: string

beforeEach(async () => {
  const desk = await newDesk()
  const files = join(desk.home, '..', 'window')
  await mkdir(files)
  await writeFile(join(files, 'index.html'), '<!doctype html>')
  await writeFile(join(files, 'window.js'), 'window code')
  await writeFile(join(files, 'secret.txt'), 'of a kind no window has')
  await writeFile(join(files, '..', 'outside.js'), 'outside')
  server = await serve({ handlers: desk.run().forWindow, windows: createWindows(), files, fault: rethrow, grace: 5000 })
  onTestFinished(server.end)
  const address = new URL(server.newAddress())
  port = Number(address.port)
  const entered = await send(port, 'GET', address.pathname + address.search, { host: address.host })
  cookie = String(entered.headers['set-cookie']).split(';')[0]!
  secret = String(entered.headers.location).slice('/#page='.length)
})

function rethrow(error: unknown) {
  throw error
}

/** The headers of our own page, with some changed or, where null, left out. */
function headers(changes: Record<string, string | null> = {}): Record<string, string> {
  const ours = {
    host: `127.0.0.1:${port}`,
    origin: `http://127.0.0.1:${port}`,
    cookie,
    'sec-fetch-site': 'same-origin',
    'x-stopgap-page': secret,
    'content-type': 'application/json',
    ...changes,
  }
  return Object.fromEntries(Object.entries(ours).filter(([, value]) => value !== null)) as Record<string, string>
}

const call = (changes: Record<string, string | null> = {}, body = '{}') =>
  send(port, 'POST', '/call/recents', headers(changes), body)

const get = (path: string, changes: Record<string, string | null> = {}) =>
  send(port, 'GET', path, headers({ origin: null, 'content-type': null, 'x-stopgap-page': null, ...changes }))

/** A refusal is a sentence, and tells nothing of what is behind it. */
function expectRefusal(sent: Sent, status: number) {
  expect(sent.status).toBe(status)
  expect(sent.body).toMatch(/^[A-Z].*\.\n$/)
  expect(sent.headers['content-type']).toBe('text/plain; charset=utf-8')
  expect(sent.headers['access-control-allow-origin']).toBe(undefined)
}

it('answers its own page', async () => {
  expect(await call()).toMatchObject({ status: 200, body: '{"recents":[]}' })
  expect(await get('/')).toMatchObject({ status: 200, body: '<!doctype html>' })
  expect(await get('/window.js?v=1')).toMatchObject({ status: 200, body: 'window code' })
  expect(await send(port, 'HEAD', '/', headers({ origin: null }))).toMatchObject({ status: 200, body: '' })
})

it('cannot be reached but on the loopback address', async () => {
  const others = Object.values(networkInterfaces())
    .flatMap(all => all ?? [])
    .filter(({ internal, family }) => !internal && family === 'IPv4')
  const reached = await Promise.all(
    others.map(({ address }) =>
      fetch(`http://${address}:${port}/`).then(
        () => true,
        () => false,
      ),
    ),
  )
  expect(reached.filter(Boolean)).toEqual([])
})

describe('who is refused', () => {
  it.each([
    ['a name made to point here', 'rebound.example'],
    ['localhost by name', 'localhost'],
    ['another port', '127.0.0.1:1'],
  ])('a request for another host: %s', async (_, host) => {
    const named = host.includes(':') ? host : `${host}:${port}`
    expectRefusal(await call({ host: named, origin: `http://${named}` }), 403)
    expectRefusal(await get('/', { host: named }), 403)
    const { pathname, search } = new URL(server.newAddress())
    expectRefusal(await get(pathname + search, { host: named }), 403)
  })

  it.each(['https://example.org', 'null', 'http://127.0.0.1:1', 'http://localhost'])('a page of %s', async origin => {
    expectRefusal(await call({ origin }), 403)
    expectRefusal(await get('/', { origin }), 403)
  })

  it('a call without an origin', async () => expectRefusal(await call({ origin: null }), 403))

  it.each(['cross-site', 'same-site'])('what the browser itself calls %s', async site => {
    expectRefusal(await call({ 'sec-fetch-site': site }), 403)
    expectRefusal(await get('/', { 'sec-fetch-site': site }), 403)
  })

  it('a browser without the cookie, or with another one', async () => {
    for (const other of [null, 'a=b', `${cookie}x`, `x${cookie}`]) {
      expectRefusal(await call({ cookie: other }), 403)
      expectRefusal(await get('/', { cookie: other }), 403)
      expectRefusal(await get('/events', { cookie: other, 'x-stopgap-page': secret }), 403)
    }
  })

  it('a page without the secret, though the browser has the cookie', async () => {
    for (const other of [null, '', `${secret}x`, secret.slice(1)]) {
      expectRefusal(await call({ 'x-stopgap-page': other }), 403)
      expectRefusal(await get('/events', { 'x-stopgap-page': other }), 403)
    }
  })

  it('whoever comes second with the same address, or makes one up', async () => {
    const { pathname, search } = new URL(server.newAddress())
    expect((await get(pathname + search)).status).toBe(303)
    expectRefusal(await get(pathname + search), 403)
    expectRefusal(await get('/enter?ticket=made-up'), 403)
    expectRefusal(await get('/enter'), 403)
  })
})

describe('what is refused', () => {
  it('other methods', async () => {
    for (const method of ['GET', 'PUT', 'DELETE', 'OPTIONS']) {
      const sent = await send(port, method, '/call/recents', headers())
      expectRefusal(sent, 405)
      expect(sent.headers.allow).toBe('POST')
    }
    for (const path of ['/', '/events', '/window.js']) expectRefusal(await send(port, 'POST', path, headers()), 405)
  })

  it('other types of content', async () => {
    for (const type of [null, 'text/plain', 'application/x-www-form-urlencoded', 'multipart/form-data; boundary=a']) {
      expectRefusal(await call({ 'content-type': type }), 415)
    }
  })

  it('a body that is too long, by what it says and by what it is', async () => {
    expectRefusal(await call({ 'content-length': String(longestBody + 1) }, ''), 413)
    expectRefusal(await flood(), 413)
  })

  it('a window of a name that cannot be', async () => {
    for (const name of ['a b', '../a', 'a'.repeat(65), '%00']) {
      expectRefusal(await call({ 'x-stopgap-window': name }), 400)
    }
    expect(await call({ 'x-stopgap-window': 'b3c0-1' })).toMatchObject({ status: 200 })
  })

  it('a body that is not JSON', async () => expectRefusal(await call({}, '{"half":'), 400))

  it('messages nobody knows', async () => {
    for (const name of ['nothing', '', 'recents/', 'constructor', '__proto__', '..%2frecents']) {
      expectRefusal(await send(port, 'POST', `/call/${name}`, headers(), '{}'), 404)
    }
  })

  it.each([
    '/../outside.js',
    '/%2e%2e/outside.js',
    '/..%2foutside.js',
    '/%2e%2e%2foutside.js',
    '/..%5coutside.js',
    '/a/../../outside.js',
    '/%00window.js',
    '/%',
    '//window.js',
    '/secret.txt',
    '/none.js',
    '/assets/',
  ])('the path %s', async path => expectRefusal(await get(path), 404))
})

it('sends the same strict headers with everything', async () => {
  for (const sent of [await get('/'), await get('/none'), await call(), await call({ origin: null })]) {
    expect(sent.headers).toMatchObject(pageHeaders)
  }
})

it('gives a cookie scripts cannot read and other sites cannot send, and a secret that is never served', async () => {
  const { pathname, search } = new URL(server.newAddress())
  const entered = await get(pathname + search)
  expect(String(entered.headers['set-cookie'])).toMatch(/; HttpOnly; SameSite=Strict$/)
  expect((await get('/')).body).not.toContain(secret)
})

/** Posts without saying how long it will be, and does not stop; the connection is one that stays, as a browser's are. */
function flood(): Promise<Sent> {
  const agent = new Agent({ keepAlive: true })
  onTestFinished(() => agent.destroy())
  return new Promise((resolve, reject) => {
    const path = '/call/recents'
    const sent = request({ agent, host: '127.0.0.1', port, method: 'POST', path, headers: headers() }, response => {
      const chunks: Buffer[] = []
      response.on('data', chunk => chunks.push(chunk))
      response.on('end', () => {
        resolve({
          status: response.statusCode ?? 0,
          headers: response.headers,
          body: Buffer.concat(chunks).toString(),
        })
        sent.destroy()
      })
    })
    sent.on('error', reject)
    const chunk = Buffer.alloc(1024 * 1024, ' ')
    const more = () => {
      while (!sent.destroyed && sent.write(chunk));
      sent.once('drain', more)
    }
    more()
  })
}
