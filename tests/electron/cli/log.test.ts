import { createHash } from 'node:crypto'
import { readdir, readFile, rm, writeFile } from 'node:fs/promises'
import path from 'node:path'
import { describe, expect, it } from 'vitest'
import { formatPlan } from '../../../core/plan/file-text.ts'
import { readPlan } from '../../../core/plan/parse.ts'
import { close } from '../../close.ts'
import { newFolder } from '../folder.ts'
import { plainAxle, plainPlan } from './plain-plan.ts'
import { ran } from './terminal.ts'

async function logged(file: string | Buffer, ...args: readonly string[]) {
  const folder = await newFolder()
  await writeFile(path.join(folder, 'car.stopgap'), formatPlan(plainPlan))
  await writeFile(path.join(folder, 'run.csv'), file)
  return { folder, ...(await ran(folder, 'log', 'run.csv', '--plan', 'car.stopgap', ...args)) }
}

/** Two seconds at ride height, one from +60 mm of shaft down to +59, one from −40 mm up; pad and stop meet at +50.8 mm of shaft. */
const shaft = (time: number): number => (time < 2 ? 0 : time < 3 ? 62 - time : -43 + time)
const times = Array.from({ length: 401 }, (_, i) => i / 100)
const text = `Zeit (s);Höhe;Front left (mm);Rear left (mm)\r\n${times
  .map(time => `${time};1;${shaft(time)};0`.replaceAll('.', ','))
  .join('\r\n')}\r\n`
const figures = ({ out }: { out: string }) => JSON.parse(out)

describe('log', () => {
  it('gives the figures of the axle’s own channel, from shaft to wheel', async () => {
    const { code, out, err, folder } = await logged(Buffer.from(text, 'latin1'), '--axle', 'front', '--json')
    expect({ code, err }).toEqual({ code: 0, err: '' })
    const log = figures({ out })
    expect(log.file).toEqual({
      encoding: 'windows-1252',
      lineEnd: 'crlf',
      delimiter: ';',
      decimal: ',',
      headerRows: 1,
      unitsRow: null,
      time: { kind: 'numbers', column: 0, unit: 1 },
      rows: 401,
      unreadable: 0,
      repeated: 0,
      backward: 0,
      missing: 0,
      firstLines: { unreadable: null, repeated: null, backward: null, missing: null },
      startedAt: null,
      doubts: [],
    })
    expect(log.channels).toHaveLength(1)
    const [channel] = log.channels
    expect(channel).toMatchObject({ name: 'Front left', measures: 'shaft', hits: 1, gaps: 0 })
    // Half an inch of shaft an inch of wheel.
    close(channel.wheelMax, 0.12, { abs: 1e-9 })
    close(channel.wheelMin, -0.08, { abs: 1e-9 })
    close(channel.duration, 4, { abs: 1e-9 })
    close(channel.share.onStop, 0.25, { abs: 3e-3 })
    close(channel.still, 0, { abs: 1e-9 })
    expect(channel.findings.map(({ id }: { id: string }) => id)).toEqual(['run-on-stop'])
    expect((await readFile(path.join(folder, 'run.csv'))).equals(Buffer.from(text, 'latin1'))).toBe(true)
  })

  it('says the same to people, in the plan’s units', async () => {
    const { code, out } = await logged(text, '--axle', 'front')
    expect(code).toBe(0)
    expect(out).toContain('decimal comma')
    expect(out).toMatch(/on the stop +2\d\.\d %/)
    expect(out).toMatch(/highest wheel +4 3\/4 in/)
    expect(out).toContain('Caution: The car was on its stop')
  })

  it('takes zero and sign from moments, and volts by two points', async () => {
    const volts = `time (s),Front (V)\n${times.map(time => `${time},${2.5 - shaft(time) / 50}`).join('\n')}\n`
    const args = ['--axle', 'front', '--calibrate', '0.5=0 mm,4.5=200 mm', '--ride-height-at', '1'] as const
    const upright = figures(await logged(volts, ...args, '--full-droop-at', '3.5', '--json'))
    close(upright.channels[0].wheelMax, 0.12, { abs: 1e-9 })
    close(upright.channels[0].wheelMin, -0.08, { abs: 1e-9 })
    const reversed = figures(await logged(volts, ...args, '--reversed', '--json'))
    expect(reversed.channels[0].wheelMax).toBe(upright.channels[0].wheelMax)
  })

  it.each([
    ['an unknown axle', text, ['--axle', 'rear'], 'There is no axle “rear”'],
    ['an unknown setup', text, ['--axle', 'front', '--setup', 'x'], 'There is no setup “x”'],
    ['an unknown column', text, ['--axle', 'front', '--channel', 'x'], 'There is no column “x”. The file has “Zeit”'],
    ['volts without a calibration', 't (s),Front (V)\n0,1\n1,2\n', ['--axle', 'front'], '“Front” is in v.'],
    ['no unit', 'time,Front\n0,1\n1,2\n', ['--axle', 'front'], 'The unit of “Front” is not in the file.'],
    [
      'a bad calibration',
      text,
      ['--axle', 'front', '--calibrate', '1=2'],
      '--calibrate 1=2: it should be two readings',
    ],
    ['a bad moment', text, ['--axle', 'front', '--ride-height-at', 'soon'], '--ride-height-at soon: it should be'],
    ['a moment outside', text, ['--axle', 'front', '--ride-height-at', '99'], 'nothing was recorded at the moment'],
    ['a moment for the sign alone', text, ['--axle', 'front', '--full-droop-at', '1'], 'give --ride-height-at as well'],
    ['a cutoff too high', text, ['--axle', 'front', '--low-pass', '50'], 'no more than 35.0 Hz'],
    ['no table', 'hello', ['--axle', 'front'], 'run.csv cannot be used: it is no table'],
    ['no channel for the axle', 'time,a,b\n0,1,2\n1,2,3\n', ['--axle', 'front'], 'Which column is the front axle?'],
  ] as const)('%s is refused with what would be right', async (_, file, args, why) => {
    const { code, out, err } = await logged(file, ...args)
    expect({ code, out }).toEqual({ code: 2, out: '' })
    expect(err).toContain(why)
  })

  it('without times takes the rows a second, and a rise of its own clock is seen', async () => {
    const bare = `Front (mm)\n${times.map(shaft).join('\n')}\n`
    const { code, err } = await logged(bare, '--axle', 'front')
    expect({ code, err }).toEqual({ code: 2, err: expect.stringContaining('give the rows a second with --rate') })
    const log = figures(await logged(bare, '--axle', 'front', '--rate', '100', '--json'))
    expect(log.file.time).toEqual({ kind: 'rate', rowsPerSecond: 100 })
    close(log.channels[0].duration, 4, { abs: 1e-9 })
    expect((await logged(bare, '--axle', 'front', '--rate', '0')).err).toContain('--rate 0: it should be rows a second')
    expect((await logged(bare, '--axle', 'front', '--rate', '9', '--time', '1')).err).toContain('not both')
  })

  it('says what the run shows of engagement beside what the plan computes', async () => {
    const { out } = await logged(text, '--axle', 'front')
    expect(out.replace(/\s+/g, ' ')).toContain(
      'Where pad and stop meet cannot be told from this run: that takes 200 rows a second or more. The plan computes +4 in.',
    )
    const log = figures(await logged(text, '--axle', 'front', '--json'))
    expect(log.channels[0].engagement).toEqual({
      computed: expect.closeTo(0.1016, 9),
      seen: false,
      why: 'too few rows a second',
    })
  })

  it('a file that is not there is said', async () => {
    const folder = await newFolder()
    await writeFile(path.join(folder, 'car.stopgap'), formatPlan(plainPlan))
    const { code, err } = await ran(folder, 'log', 'lost.csv', '--plan', 'car.stopgap', '--axle', 'front')
    expect(code).toBe(2)
    expect(err).toContain('lost.csv could not be read')
  })
})

describe('a run that is kept', () => {
  const twoAxles = formatPlan({
    ...plainPlan,
    setups: [{ ...plainPlan.setups[0]!, axles: [plainAxle, { ...plainAxle, id: 'rear' }] }],
  })
  async function kept() {
    const folder = await newFolder()
    await writeFile(path.join(folder, 'car.stopgap'), twoAxles)
    await writeFile(path.join(folder, 'run.csv'), text)
    const log = (file: string, ...args: readonly string[]) =>
      ran(folder, 'log', file, '--plan', 'car.stopgap', '--axle', 'front', ...args)
    const first = await log('run.csv', '--keep', 'Before', '--ride-height-at', '1', '--json')
    return { folder, log, first }
  }
  const planIn = async (folder: string) => {
    const read = readPlan(await readFile(path.join(folder, 'car.stopgap'), 'utf8'))
    if (!read.ok) throw new Error('no plan')
    return read.plan
  }

  it('is a file beside the plan, named in it with its digest, and gives the same figures again', async () => {
    const { folder, log, first } = await kept()
    expect({ code: first.code, err: first.err }).toEqual({ code: 0, err: '' })
    const once = figures(first)
    expect(once.kept).toBe('car, Before.stopgap-run')
    const bytes = await readFile(path.join(folder, once.kept))
    const digest = createHash('sha256').update(bytes).digest('hex')
    expect((await planIn(folder)).runs).toEqual([
      { id: 'run-1', name: 'Before', setup: 'as-found', file: once.kept, digest },
    ])
    const again = figures(await log(once.kept, '--json'))
    expect(again.channels).toEqual(once.channels)
    expect(again).toMatchObject({ file: { kept: digest }, changed: false, kept: null })
    // The other axle is in it too.
    expect(
      figures(await ran(folder, 'log', once.kept, '--plan', 'car.stopgap', '--axle', 'rear', '--json')).channels,
    ).toMatchObject([{ name: 'Rear left' }])
    expect(await readFile(path.join(folder, 'run.csv'), 'utf8')).toBe(text)
  })

  it('is not written twice, nor named twice', async () => {
    const { folder, log } = await kept()
    await log('run.csv', '--keep', 'Before', '--ride-height-at', '1')
    expect(((await planIn(folder)).runs ?? []).length).toBe(1)
    expect((await readdir(folder)).sort()).toEqual(['car, Before.stopgap-run', 'car.stopgap', 'run.csv'])
  })

  it('that is damaged or another is said', async () => {
    const { folder, log, first } = await kept()
    const file = path.join(folder, figures(first).kept)
    const bytes = await readFile(file)
    await writeFile(
      file,
      bytes.map((byte, i) => (i === bytes.length - 40 ? byte ^ 1 : byte)),
    )
    expect(await log(figures(first).kept)).toMatchObject({ code: 2, err: expect.stringContaining('it is damaged') })
    await log('run.csv', '--keep', 'Other', '--channel', 'Rear left')
    await writeFile(file, await readFile(path.join(folder, 'car, Other.stopgap-run')))
    const other = await log(figures(first).kept)
    expect(other.code).toBe(0)
    expect(other.out.replace(/\s+/g, ' ')).toContain('has changed since it was kept: it is not the one the plan means')
  })

  it('that is gone or changed is said when the plan is checked, and is no fault of the plan', async () => {
    const { folder, first } = await kept()
    const file = path.join(folder, figures(first).kept)
    const checked = async () => {
      const { code, out, err } = await ran(folder, 'check', 'car.stopgap')
      expect({ code, err }).toEqual({ code: 0, err: '' })
      return out.replace(/\s+/g, ' ')
    }
    expect(await checked()).toContain('1 recorded run beside it, as the plan knows it.')
    await writeFile(file, 'other')
    expect(await checked()).toContain('The run in “car, Before.stopgap-run” has changed since it was kept')
    await rm(file)
    expect(await checked()).toContain('The run in “car, Before.stopgap-run” could not be opened')
  })

  it('is compared with another, from before the work', async () => {
    const { folder, log, first } = await kept()
    const softer = text.replaceAll(/;(\d+(?:,\d+)?);0\r/g, ';50;0\r')
    await writeFile(path.join(folder, 'after.csv'), softer)
    const before = figures(first).kept
    const { since } = figures(await log('after.csv', '--before', before, '--json'))
    expect(since).toHaveLength(1)
    const row = (id: string) => since[0].figures.find((each: { id: string }) => each.id === id)
    close(row('wheel-max').before, 0.12, { abs: 1e-9 })
    close(row('wheel-max').change, 0.1 - 0.12, { abs: 1e-9 })
    expect((await log('after.csv', '--before', before)).out).toMatch(
      /highest wheel +4 3\/4 in +3 15\/16 in +−13\/16 in/,
    )
    expect(await log('after.csv', '--before', 'lost.csv')).toMatchObject({
      code: 2,
      out: '',
      err: expect.stringContaining('lost.csv could not be read'),
    })
  })

  it('is laid as other options say, but has its own times', async () => {
    const { log, first } = await kept()
    const file = figures(first).kept
    const turned = figures(await log(file, '--unit', 'mm', '--reversed', '--json'))
    close(turned.channels[0].wheelMin, -0.12, { abs: 1e-9 })
    expect((await log(file, '--rate', '5')).err).toContain('has its times')
    expect((await log(file, '--keep', 'Twice')).err).toContain('is kept already')
    expect((await log(file, '--channel', 'x')).err).toContain('has no such channel of the front axle')
  })
})
