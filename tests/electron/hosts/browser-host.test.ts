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
  const services = desk.run({
    isHere: windows.isHere,
    tell: (name, payload, window) => server?.tell(name, payload, window),
  })
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

describe('two windows of one host', () => {
  const link = async (server: Served) => hostOver(loopbackLink(await openPage(server.newAddress())))

  it('have changes of their own on one file: the second is told, and the first that there is a second', async () => {
    const desk = await newDesk()
    await desk.put('Rear.stopgap')
    const { server } = await served(desk)
    onTestFinished(server.end)
    const hosts = [await link(server), await link(server)]
    const opened = []
    const shared: number[] = []
    const told = new Promise<string>(resolve => {
      hosts.forEach((host, i) => {
        host.on('shared', ({ key }) => {
          shared.push(i)
          resolve(key)
        })
      })
    })
    for (const host of hosts) {
      const folder = await host.call('folder', { token: null })
      if (folder.kind !== 'folder') throw new Error(folder.reason)
      opened.push(await host.call('openFile', { token: folder.entries[0]!.token }))
    }
    expect(opened[0]).not.toHaveProperty('report')
    expect(opened[1]).toMatchObject({ report: expect.stringMatching(/^“Rear” is open in another window too\./) })
    expect(opened[0]).toMatchObject({ document: { key: await told } })
    await Promise.all(hosts.map(host => host.call('recents', {})))
    expect(shared).toEqual([0])
  })

  it('a window that has closed holds nothing', async () => {
    const desk = await newDesk()
    await desk.put('Rear.stopgap')
    const windows = createWindows()
    windows.listens('a')
    const services = desk.run({ isHere: windows.isHere })
    const token = await services.tokenFor(join(desk.home, 'Rear.stopgap'))
    await services.forWindow('a').openFile({ token })
    windows.stops('a')
    expect(await services.forWindow('b').openFile({ token })).toMatchObject({ kind: 'document', report: undefined })
  })
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
