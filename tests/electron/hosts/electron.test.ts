import { EventEmitter } from 'node:events'
import type { IpcMain, IpcMainInvokeEvent, IpcRenderer, WebFrameMain, WebUtils } from 'electron'
import { expect, it, vi } from 'vitest'
import type { Bridge } from '../../../electron/contract/bridge.ts'
import { openDoors } from '../../../electron/main/doors.ts'
import { hostOver } from '../../../renderer/host.ts'
import { bridgeLink } from '../../../renderer/links/bridge-link.ts'
import { newDesk } from '../desk.ts'
import { planText } from '../plan.ts'
import { contractSuite } from './contract-suite.ts'

type Handler = (event: IpcMainInvokeEvent, ...args: unknown[]) => unknown

const wires = vi.hoisted(() => ({
  handlers: new Map<string, Handler>(),
  exposed: new Map<string, unknown>(),
  /** The frame the next call comes from. */
  event: null as unknown as IpcMainInvokeEvent,
  toPage: null as unknown as EventEmitter,
}))

vi.mock('electron', () => ({
  ipcMain: {
    handle: (channel, handler) => void wires.handlers.set(channel, handler as Handler),
  } satisfies Partial<IpcMain>,
  ipcRenderer: {
    // Structured cloning is what really happens in between.
    invoke: async (channel, ...args) =>
      structuredClone(await wires.handlers.get(channel)!(wires.event, ...structuredClone(args))),
    on: (channel, listener) => {
      wires.toPage.on(channel, listener)
      return null as never
    },
    off: (channel, listener) => {
      wires.toPage.off(channel, listener)
      return null as never
    },
  } satisfies Partial<IpcRenderer>,
  webUtils: {
    getPathForFile: file => (file as File & { path?: string }).path ?? '',
  } satisfies WebUtils,
  contextBridge: { exposeInMainWorld: (name: string, api: unknown) => void wires.exposed.set(name, api) },
}))

const frame = (url: string) => ({ url }) as WebFrameMain
const from = (senderFrame: WebFrameMain | null, mainFrame = senderFrame) =>
  ({ senderFrame, sender: { mainFrame } }) as unknown as IpcMainInvokeEvent

async function connect(desk: Awaited<ReturnType<typeof newDesk>>) {
  wires.toPage = new EventEmitter()
  wires.event = from(frame('stopgap://window/'))
  const services = desk.run({
    tell: (name, payload) => wires.toPage.emit('stopgap:event', {}, name, structuredClone(payload)),
  })
  openDoors(services, error => {
    throw error
  })
  await import('../../../electron/preload/preload.ts')
  const bridge = wires.exposed.get('stopgap') as Bridge
  return { host: hostOver(bridgeLink(bridge)), bridge, services, end: services.settled }
}

contractSuite('Electron’s wiring', connect)

it('exposes one bridge, with nothing else on it', async () => {
  await connect(await newDesk())
  expect([...wires.exposed.keys()]).toEqual(['stopgap'])
  expect(Object.keys(wires.exposed.get('stopgap') as Bridge).sort()).toEqual(['call', 'fileToken', 'listen'])
})

it.each([
  ['a frame inside our page', from(frame('stopgap://window/'), frame('stopgap://window/'))],
  ['another page', from(frame('https://example.org/'))],
  ['an address that begins alike', from(frame('stopgap://window.example.org/'))],
  ['a frame that is gone', from(null)],
])('hears nothing from %s', async (_, event) => {
  const desk = await newDesk()
  const { host, bridge } = await connect(desk)
  const path = await desk.put('Rear.stopgap')
  wires.event = event
  await expect(host.call('start', {})).rejects.toThrow('its own window only')
  expect(await bridge.fileToken(Object.assign(new File([], 'Rear.stopgap'), { path }))).toBe(null)
})

it('opens a dropped file by its token; one that is nowhere on the machine, by its text', async () => {
  const desk = await newDesk()
  const { host } = await connect(desk)
  const path = await desk.put('Rear.stopgap')
  const onDisk = Object.assign(new File([], 'Rear.stopgap'), { path })
  expect(await host.drop(onDisk)).toMatchObject({ document: { name: 'Rear', savedText: planText('A plan') } })
  const nowhere = new File([planText('Mail')], 'Mail.stopgap')
  expect(await host.drop(nowhere)).toMatchObject({ document: { name: 'Mail', token: null, text: planText('Mail') } })
  const torn = new File([planText('Mail').slice(0, -400)], 'Mail.stopgap')
  expect(await host.drop(torn)).toMatchObject({
    kind: 'failed',
    reason: expect.stringContaining('“Mail.stopgap”'),
    instead: { document: { name: 'Mail', token: null }, report: expect.stringContaining('what can be read of “Mail”') },
  })
  const picture = new File([new Uint8Array([0x89, 0x50, 0xff])], 'car.png')
  expect(await host.drop(picture)).toMatchObject({ kind: 'failed', reason: expect.stringContaining('“car.png”') })
})
