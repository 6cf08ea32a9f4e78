import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { unsaid } from '../../core/budget/findings/rule.ts'
import { setupLoads } from '../../core/loads/ledger.ts'
import { byTravel, readingOf, travelOf, twoPoint, zeroed } from '../../core/runs/calibration.ts'
import { encodingOf } from '../../core/runs/encoding.ts'
import { layRun } from '../../core/runs/lay.ts'
import { previewRows } from '../../core/runs/preview.ts'
import { readingProblems } from '../../core/runs/reading-problems.ts'
import { close } from '../close.ts'
import { wholePlan } from '../core/plan/whole-plan.ts'
import { detected, imported, tokenize } from '../core/runs/tables.ts'

const seed = 20261125
const number = fc.integer({ min: -999_999, max: 999_999 }).map(each => each / 1000)
/** Rows of a rising time and two travels. */
const rowsOf = fc
  .array(fc.tuple(fc.integer({ min: 1, max: 9 }), number, number), { minLength: 3, maxLength: 40 })
  .map(rows => {
    let time = 0
    return rows.map(([step, a, b]) => {
      time += step
      return [time / 100, a + 0.0005, b]
    })
  })

const written = (rows: readonly number[][], delimiter: string, comma: boolean, end: string, quoted = false): string =>
  [['time', 'left', 'right'], ...rows.map(row => row.map(value => String(value).replace('.', comma ? ',' : '.')))]
    .map(cells => cells.map(cell => (quoted ? `"${cell}"` : cell)).join(delimiter) + end)
    .join('')

const taken = (text: string, size?: number) => {
  const end = imported(text, size, { time: { kind: 'numbers', column: 0, unit: 1 } })
  return end.ok ? [end.table.time, ...end.table.values].map(list => Array.from(list)) : end.why
}

describe('a table is the same table', () => {
  it('however it is delimited, with decimal point or comma', () =>
    fc.assert(
      fc.property(rowsOf, rows => {
        const expected = [0, 1, 2].map(column => rows.map(row => row[column]!))
        for (const delimiter of [',', ';', '\t', '|', ' '])
          for (const end of ['\n', '\r\n', '\r'])
            for (const quoted of [false, true]) {
              expect(taken(written(rows, delimiter, false, end, quoted))).toEqual(expected)
              if (delimiter !== ',' || quoted)
                expect(taken(written(rows, delimiter, true, end, quoted))).toEqual(expected)
            }
      }),
      { seed, numRuns: 8 },
    ))

  it('however it is encoded', () =>
    fc.assert(
      fc.property(rowsOf, rows => {
        const text = `Höhe °\n${written(rows, ';', true, '\r\n')}`
        for (const bytes of [
          Buffer.from(text, 'utf8'),
          Buffer.from(`\uFEFF${text}`, 'utf8'),
          Buffer.from(`\uFEFF${text}`, 'utf16le'),
          Buffer.from(`\uFEFF${text}`, 'utf16le').swap16(),
          Buffer.from(text, 'latin1'),
        ])
          expect(taken(new TextDecoder(encodingOf(bytes)).decode(bytes))).toEqual(taken(text))
      }),
      { seed, numRuns: 20 },
    ))

  it('however it is cut into pieces', () =>
    fc.assert(
      fc.property(rowsOf, fc.integer({ min: 1, max: 60 }), fc.boolean(), (rows, size, quoted) => {
        const text = written(rows, ';', true, '\r\n', quoted)
        expect(taken(text, size)).toEqual(taken(text))
      }),
      { seed, numRuns: 20 },
    ))

  it('however a long one is cut, past the part its shape is told from', () => {
    const rows = Array.from({ length: 4000 }, (_, i) => [i / 100, Math.sin(i), Math.cos(i)])
    const text = written(rows, ',', false, '\n')
    const whole = taken(text)
    for (const size of [997, 65_536, 65_537, 100_000]) expect(taken(text, size)).toEqual(whole)
    expect(whole[0]).toHaveLength(4000)
  })
})

describe('any text at all', () => {
  const marks = [',', ';', '\t', '|', ' ', '\n', '\r\n', '\r', '"', '\0']
  const cells = [
    '1',
    '-2.5',
    '1e300',
    '1e-320',
    'NaN',
    'x',
    'Infinity',
    '12:30:01',
    '2026-11-25',
    '25/11/2026 10:00:00',
    '-0',
    '9'.repeat(400),
    'time',
    'front (mm)',
    'é',
  ]
  const plan = wholePlan()
  const { model, ledger } = setupLoads(plan, plan.setups[0]!)
  /** Rows of which now and then one is broken. */
  const broken = fc
    .array(fc.tuple(number, fc.integer({ min: 0, max: 40 }), fc.constantFrom(...cells, ...marks)), { maxLength: 40 })
    .map(rows =>
      rows
        .map(([value, odd, what], i) => [odd === 0 ? what : i * 0.01, value, odd === 1 ? what : -value].join(';'))
        .join('\n'),
    )
  const anything = fc.array(fc.constantFrom(...marks, ...cells), { maxLength: 120 }).map(list => list.join(''))

  it('is refused, or comes to times that rise and figures that are numbers', () =>
    fc.assert(
      fc.property(fc.oneof(broken, anything), fc.constantFrom('left out', 'goes on'), (text, backward) => {
        const { reading, columns } = detected(text)
        const time = reading.time.kind === 'rate' ? ({ kind: 'rate', rowsPerSecond: 100 } as const) : reading.time
        previewRows(text, { ...reading, time }, 20, tokenize)
        expect(readingProblems({ ...reading, time }, Math.max(1, columns.length))).toEqual([])
        const end = imported(text, 7, { time, backward })
        if (!end.ok) return
        const { time: times, values } = end.table
        expect(times.every((at, i) => Number.isFinite(at) && (i === 0 || at > times[i - 1]!))).toBe(true)
        for (const readings of values) {
          const channel = {
            measures: 'wheel',
            calibration: { scale: 1e-3, offset: 0 },
            rideHeightAt: null,
            fullDroopAt: null,
            lowPass: null,
          } as const
          const laid = layRun(
            model.axles[0]!,
            ledger[0]!,
            { time: times, readings, longestPause: null },
            channel,
            unsaid,
          )
          if (!laid.ok) continue
          const { figures } = laid
          const { share, histogram, shaftSpeeds, wheelMax, wheelMin, wheelMean, stopSpeedMax, duration } = figures
          const all = [
            ...Object.values(share),
            ...histogram,
            ...shaftSpeeds,
            wheelMax,
            wheelMin,
            wheelMean,
            stopSpeedMax,
          ]
          expect([all.filter(value => !Number.isFinite(value)), duration > 0]).toEqual([[], true])
          close(share.droop + share.coilover + share.engagement, 1, { abs: 1e-9 })
        }
      }),
      { seed, numRuns: 400 },
    ))
})

describe('a calibration', () => {
  const apart = (a: number, b: number) => Math.abs(a - b) > 0.01
  it('goes through its two points, and there and back again', () =>
    fc.assert(
      fc.property(number, number, number, number, number, (r1, t1, r2, t2, reading) => {
        fc.pre(apart(r1, r2) && apart(t1, t2))
        const line = twoPoint({ reading: r1, travel: t1 }, { reading: r2, travel: t2 })!
        // Lines this steep lose five digits of sixteen.
        const tolerance = { abs: 1e-6 * (1 + Math.abs(line.scale)) }
        close(travelOf(line, r1), t1, tolerance)
        close(travelOf(line, r2), t2, tolerance)
        close(readingOf(line, travelOf(line, reading)), reading, { abs: 1e-6 * (1 + 1 / Math.abs(line.scale)) })
      }),
      { seed },
    ))

  it('has its zero at ride height and droop below it, whichever way the sensor is mounted', () =>
    fc.assert(
      fc.property(number, number, fc.constantFrom(1e-3, -1e-3), (ride, droop, scale) => {
        fc.pre(apart(ride, droop))
        const set = zeroed({ scale, offset: 0.5 }, ride, droop)
        close(travelOf(set, ride), 0, { abs: 1e-12 })
        close(travelOf(set, droop), -1e-3 * Math.abs(ride - droop), { rel: 1e-9, abs: 1e-12 })
      }),
      { seed },
    ))

  it('from the two moments alone has the plan’s droop where it hung', () =>
    fc.assert(
      fc.property(number, number, fc.integer({ min: -400, max: -1 }), (ride, droop, mm) => {
        fc.pre(apart(ride, droop))
        const line = byTravel(ride, droop, mm / 1000)!
        close(travelOf(line, ride), 0, { abs: 1e-9 })
        close(travelOf(line, droop), mm / 1000, { abs: 1e-9 })
      }),
      { seed },
    ))

  it('is none from two points that are one', () =>
    expect(twoPoint({ reading: 1, travel: 0 }, { reading: 1, travel: 1 })).toBeNull())
})
