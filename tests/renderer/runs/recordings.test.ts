import { describe, expect, it } from 'vitest'
import { isRead, whyNotRead } from '../../../renderer/state/recording.ts'
import { MOST_OPEN } from '../../../renderer/state/recordings.ts'
import { aPlan } from '../a-plan.ts'
import { terrains } from '../terrain/rode.ts'
import { rearOf, recordedRide } from './recorded-ride.ts'
import { CALIBRATION, someRecordings } from './some-recordings.ts'

const plan = aPlan(made => {
  made.terrains = [terrains.ledge]
})
const { axle, terrain } = rearOf(plan)
const { text, rows } = recordedRide(axle, terrain)
const fileOf = (content = text, name = 'pit.csv') => new File([content], name)
const axles = ['front', 'rear'] as const

const calibrated = ({ recordings }: ReturnType<typeof someRecordings>, id: string) => {
  const { channels } = recordings.find(id)!
  recordings.setChannels(
    id,
    channels.map(channel => ({ ...channel, calibration: CALIBRATION })),
  )
}

async function opened(some = someRecordings(), file = fileOf()) {
  await some.recordings.open(file, axles, 'as-found')
  const id = some.recordings.read().shown!
  return { ...some, id, run: () => some.recordings.find(id)! }
}

describe('recordings', () => {
  it('look at a file first, and say what is missing before it can be read', async () => {
    const { recordings, run, id } = await opened()
    expect(run()).toMatchObject({ name: 'pit', work: null, found: null, recipe: null, driven: 'as-found' })
    expect(run().channels.map(({ axle: of, side }) => [of, side])).toEqual([
      ['rear', 'left'],
      ['rear', 'right'],
    ])
    expect(whyNotRead(run())).toBe('What “rear left” means is not said yet: choose its unit, or enter two points.')
    calibrated({ recordings } as ReturnType<typeof someRecordings>, id)
    expect(whyNotRead(run())).toBeNull()
    recordings.setChannels(id, [])
    expect(whyNotRead(run())).toMatch(/^No column is taken yet/)
  })

  it('read a file to its end, and the next of its kind at once, in the same way', async () => {
    const shelf = { text: '' }
    const first = await opened(someRecordings(shelf))
    calibrated(first, first.id)
    await first.recordings.readWhole(first.id)
    expect(isRead(first.run())).toBe(true)
    expect(first.run().found).toMatchObject({ rows, faults: { unreadable: 0 } })
    first.recordings.wasUsed(first.id, 0, { scale: CALIBRATION.scale, offset: -0.3 })
    const next = await opened(someRecordings(shelf), fileOf(text, 'later.csv'))
    expect(next.run()).toMatchObject({ name: 'later', recipe: 'pit.csv', found: { rows } })
    expect(next.run().channels.map(({ calibration }) => calibration)).toEqual([
      { scale: CALIBRATION.scale, offset: -0.3 },
      CALIBRATION,
    ])
    const other = await opened(someRecordings(shelf), fileOf(text.replace('battery', 'lap'), 'other.csv'))
    expect(other.run()).toMatchObject({ recipe: null, found: null })
  })

  it('are read as they are put right, and tell it from the file again when asked to', async () => {
    const { recordings, run, id } = await opened()
    const reading = run().reading!
    await recordings.correct(id, { ...reading, headerRows: 5 }, axles)
    expect(run().looked?.preview.rows[0]?.line).toBe(6)
    await recordings.correct(id, { ...reading, delimiter: ',' }, axles)
    expect(whyNotRead(run())).not.toBeNull()
    await recordings.tellAgain(id, null, axles)
    expect(run().reading).toEqual(reading)
    expect(run().columns.length).toBe(4)
  })

  it('keep what was asked for last: another file stops the one that is being read', async () => {
    const some = await opened()
    const { recordings, id, run } = some
    calibrated(some, id)
    const reading = recordings.readWhole(id)
    expect(run().work?.kind).toBe('reading')
    await Promise.all([reading, recordings.open(fileOf(text, 'second.csv'), axles, 'as-found')])
    expect([run().work, run().found]).toEqual([null, null])
    expect(recordings.find(recordings.read().shown!)?.name).toBe('second')
  })

  it('are stopped, and say why a file that is no table cannot be used', async () => {
    const some = await opened()
    calibrated(some, some.id)
    const reading = some.recordings.readWhole(some.id)
    some.recordings.cancel(some.id)
    await reading
    expect(some.run()).toMatchObject({ work: null, found: null, trouble: null })
    const words = await opened(someRecordings(), fileOf('Dear driver,\nthank you for the day.\n', 'letter.txt'))
    expect(whyNotRead(words.run())).toMatch(/^No row can be read in this way/)
    const empty = await opened(someRecordings(), fileOf('', 'empty.csv'))
    expect(whyNotRead(empty.run())).toBe('The file is empty: open another.')
    const rows = Array.from({ length: 50 }, (_, i) => `${i / 10},${i / 20}`).join('\n')
    const untimed = await opened(someRecordings(), fileOf(`rear left (in),rear right (in)\n${rows}\n`, 'no time.csv'))
    expect(whyNotRead(untimed.run())).toMatch(/^No column tells the time: enter the rows a second/)
  })

  it('tell when the worker broke with all it held', async () => {
    const some = await opened()
    calibrated(some, some.id)
    await some.recordings.readWhole(some.id)
    some.hands[0]!.onerror?.({ message: 'out of memory' } as ErrorEvent)
    expect(some.run()).toMatchObject({ found: null, trouble: expect.stringContaining('Open it again') })
    await some.recordings.readWhole(some.id)
    expect(isRead(some.run())).toBe(true)
  })

  it('hold so many at once and no more', async () => {
    const { recordings } = await opened()
    for (let i = 0; i < MOST_OPEN; i += 1) await recordings.open(fileOf(text, `run ${i}.csv`), axles, 'as-found')
    const { runs, shown } = recordings.read()
    expect(runs.map(({ name }) => name)).toEqual(['run 0', 'run 1', 'run 2', 'run 3'])
    expect(shown).toBe(runs.at(-1)?.id)
    recordings.close(shown!)
    expect(recordings.read().shown).toBe(runs.at(-2)?.id)
  })

  it('leave runs kept beside another plan with it', async () => {
    const some = await opened()
    calibrated(some, some.id)
    await some.recordings.readWhole(some.id)
    const base64 = await some.recordings.encode(some.id)
    some.recordings.leaveOthers('one')
    const entry = { id: 'before', name: 'Before', setup: 'as-found', file: 'a.stopgap-run' }
    expect(await some.recordings.restore(entry, base64!, true)).toBe(true)
    expect(some.recordings.read().runs.map(({ name, kept }) => [name, kept])).toEqual([
      ['pit', null],
      ['Before', 'before'],
    ])
    some.recordings.leaveOthers('another')
    expect(some.recordings.read().runs.map(({ name }) => name)).toEqual(['pit'])
    expect(await some.recordings.restore(entry, btoa('no run'), true)).toBe(false)
    expect(some.recordings.read().runs.at(-1)?.trouble).toMatch(/^“a.stopgap-run” cannot be used: /)
  })
})
