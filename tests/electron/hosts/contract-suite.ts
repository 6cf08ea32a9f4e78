import { readFile, rm, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import { beforeEach, describe, expect, it, onTestFinished } from 'vitest'
import { GENERIC_SHELF } from '../../../core/changes/shelf.ts'
import { formatShelf } from '../../../core/plan/shelf-file.ts'
import { messages } from '../../../electron/contract/contract.ts'
import type { Services } from '../../../electron/services/services.ts'
import { type Host, HostRefused } from '../../../renderer/host.ts'
import { type Desk, newDesk } from '../desk.ts'
import { planText } from '../plan.ts'
import { startApart } from '../services/apart.ts'

export interface Connected {
  host: Host
  services: Services
  end(): Promise<void>
}

/** What every host must do for the window, asked through the window's own side of it. */
export function contractSuite(name: string, connect: (desk: Desk) => Promise<Connected>): void {
  describe(`the contract, over ${name}`, () => {
    let desk: Desk
    let host: Host
    let services: Services

    beforeEach(async () => {
      desk = await newDesk()
      const connected = await connect(desk)
      onTestFinished(connected.end)
      host = connected.host
      services = connected.services
    })

    const choose = async () => {
      const folder = await host.call('folder', { token: null })
      if (folder.kind !== 'folder') throw new Error(folder.reason)
      return folder
    }

    it('takes a plan from the first start to a file and back', async () => {
      const { document, about } = await host.call('start', {})
      expect(about.version).toBe('0.0.0')
      const { key, name } = document
      const text = planText('Changed, with an inch sign ″ and a line\nbreak')
      const kept = await host.call('keep', { key, token: null, name, text, basis: null, history: '[]' })
      expect(kept).toEqual({ kind: 'kept' })
      const folder = await choose()
      const saved = await host.call('saveIn', {
        key,
        token: null,
        folder: folder.token,
        name: 'Car 7',
        text,
        replace: false,
      })
      if (saved.kind !== 'saved') throw new Error(saved.kind)
      expect(await readFile(join(desk.home, 'Car 7.stopgap'), 'utf8')).toBe(text)
      const { token, basis } = saved
      const twice = { key: saved.key, token, text: planText('Again'), basis, replace: false }
      expect(await host.call('save', twice)).toMatchObject({ kind: 'saved', token })
      expect(await host.call('save', { ...twice, text: planText('Third') })).toMatchObject({ kind: 'changed' })
      const { recents } = await host.call('recents', {})
      expect(recents).toMatchObject([{ token, name: 'Car 7', folder: 'home' }])
      const opened = await host.call('openFile', { token })
      expect(opened).toMatchObject({ kind: 'document', document: { name: 'Car 7', savedText: planText('Again') } })
      expect(await host.call('forget', { key: saved.key })).toEqual({})
    })

    it('carries a plan of several megabytes', async () => {
      const { document } = await host.call('start', {})
      const { key, name } = document
      const history = '"\\\n'.repeat(2_000_000)
      const text = planText('Large')
      expect(await host.call('keep', { key, token: null, name, text, basis: null, history })).toEqual({ kind: 'kept' })
    })

    it('keeps a run beside its plan, and says when it is changed or gone', async () => {
      await desk.put('Rear.stopgap')
      const folder = await choose()
      const token = folder.entries[0]!.token
      const content = Buffer.from(Uint8Array.from({ length: 3_000_000 }, (_, i) => (i * i) % 251))
      const base64 = content.toString('base64')
      await host.call('openFile', { token })
      const kept = await host.call('keepRun', { token, name: 'Before the work', base64 })
      expect(kept).toMatchObject({ kind: 'kept', file: 'Rear, Before the work.stopgap-run' })
      if (kept.kind !== 'kept') throw new Error(kept.reason)
      const path = join(desk.home, kept.file)
      expect(content.equals(await readFile(path))).toBe(true)
      const run = { token, file: kept.file, digest: kept.digest }
      expect(await host.call('openRun', run)).toEqual({ kind: 'run', base64 })
      await writeFile(path, 'other')
      expect(await host.call('openRun', run)).toMatchObject({ kind: 'changed', base64: btoa('other') })
      await rm(path)
      expect(await host.call('openRun', run)).toEqual({
        kind: 'missing',
        reason: `The run in “${kept.file}” could not be opened: it has been moved, renamed or deleted.`,
      })
    })

    it('remembers settings, and tells them', async () => {
      const told = new Promise(resolve => host.on('settings', resolve))
      // The stream of a window that has just opened may be a moment behind.
      await host.call('start', {})
      expect(await host.call('settings', { theme: 'dark' })).toEqual({ theme: 'dark' })
      expect(await told).toEqual({ theme: 'dark' })
      expect((await host.call('start', {})).settings).toEqual({ theme: 'dark' })
    })

    it('keeps a shelf of stops, springs and tubes across plans', async () => {
      expect(await host.call('shelf', {})).toEqual({ text: null })
      const text = formatShelf(GENERIC_SHELF)
      expect(await host.call('keepShelf', { text })).toEqual({ kind: 'kept' })
      expect(await host.call('shelf', {})).toEqual({ text })
      expect(await host.call('keepShelf', { text: '{}' })).toMatchObject({ kind: 'failed' })
      expect(await host.call('shelf', {})).toEqual({ text })
    })

    it('tells of a file opened from outside, until the window stops listening', async () => {
      await host.call('start', {})
      const names: string[] = []
      let heard = () => {}
      const stop = host.on('opened', opened => {
        names.push(opened.kind === 'document' ? opened.document.name : opened.reason)
        heard()
      })
      const first = new Promise<void>(resolve => {
        heard = resolve
      })
      await services.openOutside(await desk.put('One.stopgap'))
      await first
      stop()
      await services.openOutside(await desk.put('Two.stopgap'))
      await host.call('recents', {})
      expect(names).toEqual(['One'])
    })

    it('tells that another Stopgap has opened the plan too', async () => {
      const file = await desk.put('Rear.stopgap')
      const token = await services.tokenFor(file)
      await host.call('start', {})
      const opened = await host.call('openFile', { token })
      if (opened.kind !== 'document') throw new Error(opened.reason)
      const told = new Promise(resolve => host.on('shared', resolve))
      const other = startApart(desk, file, 'say(opened.report)\nawait lines.next()')
      expect(await other.next()).toMatch(/^“Rear” is open in another window too\./)
      expect(await told).toEqual({ key: opened.document.key })
    })

    it.each(Object.keys(messages))('refuses “%s” when its shape is wrong, in a sentence', async name => {
      const call = host.call as (name: string, request: unknown) => Promise<unknown>
      for (const wrong of [null, 'text', { unknown: 1 }, { token: '../../etc/passwd' }]) {
        const refused = await call(name, wrong).catch((error: unknown) => error)
        expect(refused).toBeInstanceOf(HostRefused)
        expect((refused as Error).message).toMatch(/^The request “\w+” does not have the right shape.*\.$/s)
      }
    })

    it.each(['nothing', 'constructor', '__proto__', 'toString'])('knows no message “%s”', async name => {
      const call = host.call as (name: string, request: unknown) => Promise<unknown>
      await expect(call(name, {})).rejects.toThrow('There is no such request')
    })

    it('never lets a path reach the window', async () => {
      await desk.put('Rear.stopgap')
      const folder = await choose()
      const opened = await host.call('openFile', { token: folder.entries[0]!.token })
      const replies = [folder, opened, await host.call('recents', {}), await host.call('start', {})]
      expect(JSON.stringify(replies)).not.toMatch(/[/\\]home|stopgap-test-/)
    })
  })
}
