import { describe, expect, it } from 'vitest'
import { bytesOf, textOf } from '../../../renderer/workers/base64.ts'
import { Cancelled, RunDesk } from '../../../renderer/workers/run-desk.ts'
import type { LaidOver, RunAnswers, RunAsk } from '../../../renderer/workers/run-messages.ts'
import { aPlan } from '../a-plan.ts'
import { rearOf, recordedRide } from '../runs/recorded-ride.ts'
import { CALIBRATION } from '../runs/some-recordings.ts'
import { terrains } from '../terrain/rode.ts'

const plan = aPlan(made => {
  made.terrains = [terrains.whoops]
})
const { axle, terrain } = rearOf(plan)
const over: LaidOver = { plan, setup: plan.setups[0]!.id, axle: 'rear' }
const channel = {
  measures: 'shaft',
  calibration: CALIBRATION,
  rideHeightAt: null,
  fullDroopAt: null,
  lowPass: null,
} as const

const asked = <K extends RunAsk['kind']>(
  desk: RunDesk,
  ask: Extract<RunAsk, { kind: K }>,
  working = { cancelled: () => false, tell: (_share: number) => {} },
) => desk.answer(ask, working) as Promise<RunAnswers[K]>

const run = recordedRide(axle, terrain)

async function opened(text = run.text, taken = [1, 2]) {
  const desk = new RunDesk()
  const file = new Blob([text])
  const { reading, preview } = await asked<'look'>(desk, { kind: 'look', file, encoding: null, reading: null })
  const read = await asked<'read'>(desk, { kind: 'read', run: 'a', file, reading, columns: preview.columns, taken })
  return { desk, file, reading, columns: preview.columns, read }
}

const laid = async (desk: RunDesk, place = 0, more: Partial<typeof channel | object> = {}, name = 'a') => {
  const answer = await asked<'lay'>(desk, { kind: 'lay', run: name, place, channel: { ...channel, ...more }, over })
  if (!answer.ok) throw new Error(answer.why)
  return answer
}

describe('the worker of recorded runs', () => {
  it('tells how a file is written from its beginning, and shows it as it is put right', async () => {
    const desk = new RunDesk()
    const file = new Blob([run.text])
    const { detected, preview, problems } = await asked<'look'>(desk, {
      kind: 'look',
      file,
      encoding: null,
      reading: null,
    })
    expect(detected.reading).toMatchObject({ delimiter: ';', decimalComma: true, headerRows: 3, unitsRow: 2 })
    expect(preview.columns.map(({ name }) => name)).toEqual(['time', 'rear left', 'rear right', 'battery'])
    expect([problems, preview.rows[1]?.time]).toEqual([[], 0.002])
    const wrong = { ...detected.reading, delimiter: ',' } as const
    const again = await asked<'look'>(desk, { kind: 'look', file, encoding: null, reading: wrong })
    expect(again.preview.columns.map(({ name }) => name)).not.toContain('rear left')
    expect(again.reading).toEqual(wrong)
  })

  it('reads to the end in pieces, telling how far it is, and holds what the ride did', async () => {
    const { desk, read } = await opened()
    expect(read).toMatchObject({ ok: true, rows: run.rows, start: 0, faults: { unreadable: 0, missing: 0 } })
    const { figures, run: even } = await laid(desk)
    const ridden = await asked<'ride'>(desk, { kind: 'ride', terrain, over })
    if (!ridden.ok) throw new Error(ridden.why)
    expect(even.stretches.length).toBe(1)
    expect(figures.wheelMax).toBeCloseTo(ridden.figures.wheelMax, 3)
    expect(figures.hits).toBe(ridden.figures.hits)
    expect((await laid(desk, 1)).figures.wheelMax).toBeLessThan(figures.wheelMax)
  })

  it('sets zero and sign by the moments picked, and the scale by both and the plan', async () => {
    const off = recordedRide(axle, terrain, { off: 0.4 })
    const { desk } = await opened(off.text)
    const moments = { rideHeightAt: off.stands, fullDroopAt: off.hangs }
    const plain = await laid(await opened().then(each => each.desk))
    expect((await laid(desk)).figures.wheelMax).toBeGreaterThan(plain.figures.wheelMax + 0.02)
    expect((await laid(desk, 0, moments)).figures.wheelMax).toBeCloseTo(plain.figures.wheelMax, 3)
    const scaled = await asked<'scale'>(desk, {
      kind: 'scale',
      run: 'a',
      place: 0,
      measures: 'shaft',
      rideHeightAt: off.stands,
      fullDroopAt: off.hangs,
      over,
    })
    expect(scaled).toMatchObject({ ok: true, calibration: { scale: expect.closeTo(CALIBRATION.scale, 4) } })
    const same = await asked<'scale'>(desk, { ...scaleAsk, rideHeightAt: 1, fullDroopAt: 1.2 })
    expect(same).toEqual({ ok: false, why: 'no difference' })
    const none = await asked<'scale'>(desk, { ...scaleAsk, rideHeightAt: -50 })
    expect(none).toEqual({ ok: false, why: 'nothing at ride height' })
  })
  const scaleAsk = {
    kind: 'scale',
    run: 'a',
    place: 0,
    measures: 'shaft',
    rideHeightAt: 1.5,
    fullDroopAt: 6.5,
    over,
  } as const

  it('stops reading when nobody waits, and then holds nothing', async () => {
    const { desk, file, reading, columns } = await opened()
    const long = new Blob([await file.text(), ...Array(40).fill('9,9;2,5;2,5;12\r\n'.repeat(4000))])
    const shares: number[] = []
    const working = { cancelled: () => shares.length > 1, tell: (share: number) => void shares.push(share) }
    const ask = { kind: 'read', run: 'a', file: long, reading, columns, taken: [1] } as const
    await expect(asked<'read'>(desk, ask, working)).rejects.toThrow(Cancelled)
    expect(shares.length).toBe(2)
    await expect(laid(desk)).rejects.toThrow('not held any more')
  })

  it('writes a run that is to be kept, and takes it up again as it was', async () => {
    const { desk, columns } = await opened()
    const choice = { ...channel, column: 2, axle: 'rear', side: 'right', lowPass: 40 } as const
    const kept = await asked<'keep'>(desk, {
      kind: 'keep',
      run: 'a',
      name: 'Before',
      source: 'pit.csv',
      longestPause: null,
      columns,
      channels: [choice],
      places: [1],
    })
    if (!kept.ok) throw new Error('too large')
    const restored = await asked<'restore'>(desk, { kind: 'restore', run: 'b', base64: kept.base64 })
    const { column: _, ...rest } = choice
    expect(restored).toMatchObject({
      ok: true,
      rows: run.rows,
      run: { name: 'Before', source: { name: 'pit.csv' }, channels: [{ ...rest, name: 'rear right', unit: 'v' }] },
    })
    expect(await laid(desk, 0, {}, 'b')).toEqual(await laid(desk, 1))
    const spoilt = bytesOf(kept.base64)
    spoilt[spoilt.length >> 1]! ^= 1
    expect(await asked<'restore'>(desk, { kind: 'restore', run: 'b', base64: textOf(spoilt) })).toMatchObject({
      ok: false,
    })
  })

  it('writes bytes as base64 and back', () => {
    const bytes = Uint8Array.from({ length: 100_001 }, (_, i) => (i * 7 + (i >> 5)) % 256)
    expect(textOf(bytes)).toBe(Buffer.from(bytes).toString('base64'))
    expect(Buffer.from(bytesOf(textOf(bytes))).equals(Buffer.from(bytes))).toBe(true)
  })
})
