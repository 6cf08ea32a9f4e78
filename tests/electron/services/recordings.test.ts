import { mkdir, truncate, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { recordingPiece } from '../../../electron/contract/recording.ts'
import type { Host } from '../../../renderer/host.ts'
import { fileOf } from '../../../renderer/state/chosen-recording.ts'
import { newDesk } from '../desk.ts'

/** A desk whose dialog gives the file of this name. */
async function withDialog(name: string | null) {
  const desk = await newDesk()
  const path = join(desk.home, name ?? '')
  const dialogs = {
    open: async () => null,
    save: async () => null,
    recording: async () => (name === null ? null : path),
  }
  const { handlers } = desk.run({ dialogs })
  const host = { call: (of: keyof typeof handlers, request: never) => handlers[of](request) } as unknown as Host
  const choose = async () => {
    const chosen = await host.call('openRecording', {})
    if (chosen.kind !== 'recording') throw new Error(chosen.kind)
    return chosen
  }
  return { desk, path, host, choose }
}

describe('a recording chosen in a dialog of the host', () => {
  it('becomes a file of the window, byte for byte, however many pieces it takes', async () => {
    const { path, host, choose } = await withDialog('pit.csv')
    const bytes = Buffer.from(Uint8Array.from({ length: 2 * recordingPiece + 5 }, (_, i) => (i * i) % 251))
    await writeFile(path, bytes)
    const file = await fileOf(host, await choose())
    expect(file.name).toBe('pit.csv')
    expect(bytes.equals(Buffer.from(await file.arrayBuffer()))).toBe(true)
  })

  it('that is empty is an empty file', async () => {
    const { path, host, choose } = await withDialog('empty.csv')
    await writeFile(path, '')
    expect((await fileOf(host, await choose())).size).toBe(0)
  })

  it('that becomes shorter, or goes, while it is read is told', async () => {
    const { path, host, choose } = await withDialog('pit.csv')
    await writeFile(path, Buffer.alloc(10))
    const chosen = await choose()
    await truncate(path, 4)
    await expect(fileOf(host, chosen)).rejects.toThrow('“pit.csv” became shorter while it was read')
    await expect(fileOf(host, { ...chosen, token: 'A'.repeat(22) })).rejects.toThrow('choose it again')
  })

  it('is no way to any other file the window knows by a token', async () => {
    const { desk, host } = await withDialog('pit.csv')
    await desk.put('Rear.stopgap')
    const folder = await host.call('folder', { token: null })
    if (folder.kind !== 'folder') throw new Error(folder.reason)
    for (const token of [folder.token, folder.entries[0]!.token])
      expect(await host.call('recordingPiece', { token, at: 0 })).toMatchObject({ kind: 'failed' })
  })

  it('says what is no file, and what is not there', async () => {
    const folder = await withDialog('runs.csv')
    await mkdir(folder.path)
    expect(await folder.host.call('openRecording', {})).toEqual({
      kind: 'failed',
      reason: '“runs.csv” could not be opened: it is not a file.',
    })
    const { host } = await withDialog('gone.csv')
    expect(await host.call('openRecording', {})).toMatchObject({ reason: expect.stringContaining('deleted') })
  })

  it('none is chosen: nothing happens; without a dialog the window asks itself', async () => {
    expect(await (await withDialog(null)).host.call('openRecording', {})).toEqual({ kind: 'cancelled' })
    expect(await (await newDesk()).run().handlers.openRecording({})).toEqual({ kind: 'choose' })
  })
})
