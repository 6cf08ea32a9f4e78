import { createHash } from 'node:crypto'
import { describe, expect, it } from 'vitest'
import { decodeRun, encodeRun, isKeptRun } from '../../../core/plan/kept-run-file.ts'
import type { KeptRun, Sha256 } from '../../../core/runs/kept-run.ts'
import { packingOf } from '../../../core/runs/packed.ts'

const sha256: Sha256 = bytes => createHash('sha256').update(bytes).digest()

const channel = (readings: Float64Array): KeptRun['channels'][number] => ({
  name: 'Höhe 前',
  unit: 'mm',
  axle: 'front',
  side: 'left',
  measures: 'shaft',
  calibration: { scale: -1e-3, offset: 0.02 },
  rideHeightAt: 1.5,
  fullDroopAt: null,
  lowPass: 60,
  readings,
})
const run: KeptRun = {
  name: 'Before “the work”',
  source: { name: 'run.csv', digest: 'ab'.repeat(32) },
  longestPause: null,
  time: Float64Array.of(0, 0.001, 0.002, 0.5),
  channels: [
    channel(Float64Array.of(1.25, Number.NaN, -300.001, 1e5)),
    channel(Float64Array.of(0.1, 1 / 3, -1e-7, Number.NaN)),
  ],
}

/** A file with something else in it at a place, and a checksum that is right for it. */
async function forged(change: (head: Record<string, unknown>) => void): Promise<Uint8Array<ArrayBuffer>> {
  const { bytes } = await encodeRun(run, sha256)
  const [first, length] = Buffer.from(bytes).toString('latin1').split('\n', 2) as [string, string]
  const from = first.length + length.length + 2
  const head = JSON.parse(Buffer.from(bytes.subarray(from, from + Number(length))).toString()) as Record<
    string,
    unknown
  >
  change(head)
  const text = Buffer.from(JSON.stringify(head).replace(/[^ -~]/g, '?'))
  const body = Buffer.concat([
    Buffer.from(`${first}\n${text.length}\n`),
    text,
    bytes.subarray(from + Number(length), -32),
  ])
  return new Uint8Array(Buffer.concat([body, await sha256(new Uint8Array(body))]))
}

describe('the file of a kept run', () => {
  it('holds all of it to the last digit, and is known by its digest', async () => {
    const { bytes, digest } = await encodeRun(run, sha256)
    expect(isKeptRun(bytes)).toBe(true)
    expect(await decodeRun(bytes, sha256)).toEqual({ ok: true, run, digest })
    expect(digest).toBe(createHash('sha256').update(bytes).digest('hex'))
  })

  it('is laid out as it is described: two lines, a head in ASCII, lists, and the digest of all before', async () => {
    const { bytes } = await encodeRun(run, sha256)
    const text = Buffer.from(bytes).toString('latin1')
    const [first, length] = text.split('\n', 2)
    const from = first!.length + length!.length + 2
    const head = JSON.parse(text.slice(from, from + Number(length)))
    expect(first).toBe('stopgap-run 1')
    expect(head.channels[0].name).toBe('Höhe 前')
    // 0, 1, 2, 500 ms: steps 0, 1, 1, 498, twice each, plus one.
    expect(head.time).toEqual({ as: 'steps', places: 3, bytes: 5 })
    expect(Array.from(bytes.subarray(from + Number(length)).subarray(0, 5))).toEqual([1, 3, 3, 0xe5, 7])
    expect(Buffer.from(bytes.subarray(-32)).equals(Buffer.from(await sha256(bytes.slice(0, -32))))).toBe(true)
  })

  it('takes little more than a byte or two a number', async () => {
    const time = Float64Array.from({ length: 100_000 }, (_, i) => i / 1000)
    const readings = time.map(at => Math.round(60_000 * Math.sin(20 * at)) / 1000)
    const { bytes } = await encodeRun({ ...run, time, channels: [channel(readings)] }, sha256)
    expect(bytes.length).toBeLessThan(100_000 * (1 + 2) + 1000)
    expect(packingOf(Float64Array.of(1 / 3))).toEqual({ as: 'float64' })
  })

  it('with any of its bytes changed is damaged', async () => {
    const { bytes } = await encodeRun(run, sha256)
    for (let i = 0; i < bytes.length; i += 1) {
      const changed = bytes.slice()
      changed[i]! ^= 1
      expect((await decodeRun(changed, sha256)).ok, `byte ${i}`).toBe(false)
    }
    for (const length of [0, 1, 14, 20, 60, bytes.length - 1])
      expect((await decodeRun(bytes.slice(0, length), sha256)).ok, `${length} bytes`).toBe(false)
  })

  it.each([
    ['another version', new TextEncoder().encode('stopgap-run 2\n{}'), 'version 2, and this Stopgap reads version 1'],
    ['something else', new TextEncoder().encode('{"format":"stopgap-plan"}'), 'it is not a run kept by Stopgap'],
  ])('%s is refused with what it is', async (_, bytes, why) =>
    expect(await decodeRun(bytes, sha256)).toEqual({ ok: false, why: expect.stringContaining(why) }),
  )

  it.each([
    ['more rows than there are', (head: Record<string, unknown>) => ({ ...head, rows: 5 }), 'not as many'],
    ['fewer rows', (head: Record<string, unknown>) => ({ ...head, rows: 3 }), 'not as many'],
    ['a huge count', (head: Record<string, unknown>) => ({ ...head, rows: 1e12 }), 'rows'],
    ['an unknown key', (head: Record<string, unknown>) => ({ ...head, more: 1 }), 'its head is not right'],
  ])('a head that claims %s is not believed', async (_, changed, why) => {
    const bytes = await forged(head => Object.assign(head, changed(head)))
    expect(await decodeRun(bytes, sha256)).toEqual({ ok: false, why: expect.stringContaining(why) })
  })

  it('with times that do not rise is refused', async () => {
    const { bytes } = await encodeRun({ ...run, time: Float64Array.of(0, 2, 1, 3) }, sha256)
    expect(await decodeRun(bytes, sha256)).toEqual({ ok: false, why: 'its times do not rise from row to row' })
  })
})
