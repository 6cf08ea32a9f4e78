import { mkdir, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import { describe, expect, it, onTestFinished } from 'vitest'
import { type Served, serve } from '../../../electron/browser-host/serve.ts'
import { createWindows } from '../../../electron/browser-host/windows.ts'
import { HostGone, hostOver } from '../../../renderer/host.ts'
import { loopbackLink } from '../../../renderer/links/loopback-link.ts'
import { type Desk, newDesk } from '../desk.ts'
import { contractSuite } from './contract-suite.ts'
import { openPage } from './page.ts'

async function served(desk: Desk, grace = 5000) {
  const files = join(desk.home, '..', 'window')
  await mkdir(files, { recursive: true })
  await writeFile(join(files, 'index.html'), '<!doctype html>')
  let server: Served | null = null
  const windows = createWindows()
  const services = desk.run({ isHere: windows.isHere, tell: (name, payload) => server?.tell(name, payload) })
  const fault = (error: unknown) => {
    throw error
  }
  server = await serve({ handlers: services.forWindow, windows, files, fault, grace })
  return { server, services }
}

contractSuite('the browser host', async desk => {
  const { server, services } = await served(desk)
  const host = hostOver(loopbackLink(await openPage(server.newAddress())))
  return { host, services, end: server.end }
})

describe('the end of a host', () => {
  it('is told to the window, and every call after it says so', async () => {
    const { server } = await served(await newDesk())
    const host = hostOver(loopbackLink(await openPage(server.newAddress())))
    await host.call('start', {})
    const gone = new Promise<void>(resolve => host.onGone(resolve))
    await server.end()
    await gone
    await expect(host.call('recents', {})).rejects.toBeInstanceOf(HostGone)
    await new Promise<void>(resolve => host.onGone(resolve))
  })

  it('comes when the last window has been away for a while, not when one is loaded again', async () => {
    const { server } = await served(await newDesk(), 300)
    onTestFinished(server.end)
    let abandoned = false
    void server.abandoned.then(() => {
      abandoned = true
    })
    const page = await openPage(server.newAddress())
    const secret = { 'x-stopgap-page': page.location.hash.slice('#page='.length) }
    const open = async () => {
      const stop = new AbortController()
      await page.fetch('/events', { headers: secret, signal: stop.signal })
      return stop
    }
    expect(server.hadWindow()).toBe(false)
    const first = await open()
    expect(server.hadWindow()).toBe(true)
    first.abort()
    await new Promise(resolve => setTimeout(resolve, 100))
    const second = await open()
    await new Promise(resolve => setTimeout(resolve, 500))
    expect(abandoned).toBe(false)
    second.abort()
    await server.abandoned
    expect(abandoned).toBe(true)
  })
})
