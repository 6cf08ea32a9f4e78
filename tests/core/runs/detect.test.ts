import { describe, expect, it } from 'vitest'
import { numberIn } from '../../../core/runs/cell.ts'
import { clockIn } from '../../../core/runs/clock.ts'
import { encodingOf } from '../../../core/runs/encoding.ts'
import { previewRows } from '../../../core/runs/preview.ts'
import { readingProblems } from '../../../core/runs/reading-problems.ts'
import { detected, tokenize } from './tables.ts'

describe('how a table is written', () => {
  it.each([
    ['time,travel\n0,1.5\n0.1,1.6', ',', false, 1],
    ['0;1,5\n0,1;1,6\n0,2;-3', ';', true, 0],
    ['"time","travel"\n"0,0","1,5"\n"0,1","1,6"', ',', true, 1],
    ['a note, with a comma\nt\tx\n0.0\t1.5\n0.1\t1.6', '\t', false, 2],
    ['t | x\n0.0 | 1.5\n0.1 | 1.6', '|', false, 1],
    ['  0.0   1.5\n  0.1  -1.6', ' ', false, 0],
    ['  0,0   1,5\n  0,1  -1,6', ' ', true, 0],
    ['25.11.2026 10:00:00,00;1,5\n25.11.2026 10:00:00,01;1,6', ';', true, 0],
    ['front\n1.5\n1.6\n1.7', '\t', false, 1],
  ])('%j: cells between %j, decimal comma %s, %i head lines', (text, delimiter, decimalComma, headerRows) =>
    expect(detected(text)).toMatchObject({ readable: true, reading: { delimiter, decimalComma, headerRows } }),
  )

  it.each([
    ['t,x\n0,1\n1,2\n', 'lf'],
    ['t,x\r\n0,1\r\n1,2\r\n', 'crlf'],
    ['t,x\r0,1\r1,2\r', 'cr'],
  ])('%j: lines end in %s', (text, lineEnd) =>
    expect(detected(text)).toMatchObject({
      reading: { lineEnd, headerRows: 1 },
      columns: [{ name: 't' }, { name: 'x' }],
    }),
  )

  it('reads units behind names, and a row of units below them', () => {
    const columns = [
      { name: 'Time', unit: 's' },
      { name: 'Front left', unit: 'mm' },
    ]
    expect(detected('Time (s),Front left [mm]\n0,1\n1,2')).toMatchObject({ reading: { unitsRow: null }, columns })
    expect(detected('Run 4\nTime,Front left\ns,mm\n0,1\n1,2')).toMatchObject({
      reading: { unitsRow: 2, headerRows: 3 },
      columns,
    })
  })

  it('names columns without a head by their place, and takes a head that ends otherwise than its rows', () => {
    const names = (text: string) => detected(text).columns.map(({ name }) => name)
    expect(names('0,1\n1,2')).toEqual(['column 1', 'column 2'])
    expect(names('t,x,y\n0,1,2,\n1,2,3,\n')).toEqual(['t', 'x', 'y', 'column 4'])
  })

  it('is none where nothing reads as numbers, and says so', () => {
    for (const text of ['Dear all,\nhere is, as promised, the run', '', '\n\n'])
      expect(detected(text)).toMatchObject({ readable: false, doubts: [{ about: 'table' }], columns: [] })
  })
})

describe('where the time comes from', () => {
  it.each([
    ['Time (ms),x\n0,5\n10,6\n20,5', { kind: 'numbers', column: 0, unit: 1e-3 }, []],
    ['x,time\n5,0\n6,0.01\n5,0.02', { kind: 'numbers', column: 1, unit: 1 }, ['time unit']],
    ['time,x\n0,5\n10,6\n20,5', { kind: 'numbers', column: 0, unit: 1e-3 }, ['time unit']],
    ['time,x\n0,5\n2000,6\n4000,5', { kind: 'numbers', column: 0, unit: 1e-6 }, ['time unit']],
    ['a,b\n5,0\n6,0.01\n5,0.02', { kind: 'numbers', column: 1, unit: 1 }, ['time', 'time unit']],
    ['sample,x\n1,5\n2,6\n3,5', { kind: 'rate', rowsPerSecond: 0 }, ['time']],
    ['front,rear\n5,6\n6,6\n5,7', { kind: 'rate', rowsPerSecond: 0 }, ['time']],
    ['day,at,x\n2026-11-25,10:00:01,5\n2026-11-25,10:00:02,6', { kind: 'clock', column: 1, dates: 'day first' }, []],
    ['at,x\n2026-11-25 10:00:01,5\n2026-11-25 10:00:02,6', { kind: 'clock', column: 0, dates: 'year first' }, []],
    ['at,x\n11/25/2026 10:00:01,5\n11/25/2026 10:00:02,6', { kind: 'clock', column: 0, dates: 'month first' }, []],
    ['at,x\n11/05/2026 10:00:01,5\n11/05/2026 10:00:02,6', { kind: 'clock', column: 0, dates: 'day first' }, ['dates']],
  ])('%j', (text, time, doubts) => {
    const { reading, doubts: had } = detected(text)
    expect([reading.time, had.map(({ about }) => about)]).toEqual([time, doubts])
  })
})

describe('a reading', () => {
  const { reading, columns } = detected('t (s),x\n0,1\n1,2\n')
  it('told from a table may be used, and is refused with what would be right', () => {
    expect(readingProblems(reading, columns.length)).toEqual([])
    const wrong = (more: object) => readingProblems({ ...reading, ...more }, columns.length).map(({ path }) => path)
    expect(wrong({ headerRows: -1 })).toEqual(['headerRows'])
    expect(wrong({ unitsRow: 1 })).toEqual(['unitsRow'])
    expect(wrong({ time: { kind: 'rate', rowsPerSecond: 0 } })).toEqual(['time.rowsPerSecond'])
    expect(wrong({ time: { kind: 'numbers', column: 2, unit: Number.NaN } })).toEqual(['time.column', 'time.unit'])
    expect(wrong({ longestPause: 0 })).toEqual(['longestPause'])
  })

  it('that is corrected cuts the same lines another way', () => {
    const text = 'a note\nt,x\n0;1,5\n1;2,5\n1;3\n2;x\n'
    const told = detected(text)
    const asTold = previewRows(text, told.reading, 10, tokenize)
    expect(asTold.columns.map(({ name }) => name)).toEqual(['column 1', 'column 2'])
    expect(asTold.rows.map(({ line, time, numbers, fault }) => [line, time, numbers, fault])).toEqual([
      [3, 0, [0, 1.5], null],
      [4, 0.001, [1, 2.5], null],
      [5, 0.001, [1, 3], 'repeated'],
      [6, 0.002, [2, null], null],
    ])
    const corrected = previewRows(
      text,
      { ...told.reading, delimiter: ',', decimalComma: false, headerRows: 2 },
      1,
      tokenize,
    )
    expect(corrected).toMatchObject({
      head: [['a note'], ['t', 'x']],
      columns: [{ name: 't' }, { name: 'x' }],
      rows: [{ cells: ['0;1', '5'], time: null, fault: 'time' }],
    })
  })
})

describe('a cell', () => {
  it.each([
    ['1.5', false, 1.5],
    [' 1,5 ', true, 1.5],
    ['−2', false, -2],
    ['1e-3', false, 1e-3],
    ['0', false, 0],
    ['', false, Number.NaN],
    ['  ', false, Number.NaN],
    ['NaN', false, Number.NaN],
    ['0x1f', false, Number.NaN],
    ['Infinity', false, Number.NaN],
    ['1e300', false, Number.NaN],
    ['9'.repeat(400), false, Number.NaN],
    ['1764061234000000000', false, 1764061234000000000],
    ['1,5', false, Number.NaN],
    ['x', false, Number.NaN],
  ])('%j, decimal comma %s, is %d', (cell, comma, value) => expect(numberIn(cell, comma)).toBe(value))

  it.each([
    ['01:02:03.5', 3723.5],
    ['1:02:03,5', 3723.5],
    ['02:03.25', 123.25],
    ['12:00:00 AM', 0],
    ['1:00:00 pm', 46_800],
    ['10:20:30:250', 37_230.25],
    ['2000-01-02T00:00:01+02:00', 86_401],
    ['2000/01/01 00:00:01', 1],
    ['25:00:00', Number.NaN],
    ['10:61:00', Number.NaN],
    ['2000-13-01 00:00:00', Number.NaN],
    ['noon', Number.NaN],
  ])('%j as a time of day is %d', (cell, value) => expect(clockIn(cell, 'year first')).toBe(value))
})

describe('encoding', () => {
  const utf16 = (text: string, mark = '\uFEFF') => new Uint8Array(Buffer.from(mark + text, 'utf16le'))
  it.each([
    ['plain', new TextEncoder().encode('time,travel'), 'utf-8'],
    ['UTF-8', new TextEncoder().encode('Zeit,Höhe °'), 'utf-8'],
    ['UTF-8 cut within a letter', new TextEncoder().encode('Höhe °').slice(0, -1), 'utf-8'],
    ['UTF-16 with a mark', utf16('Zeit,Höhe'), 'utf-16le'],
    ['UTF-16 without', utf16('0.0,1.5\n', ''), 'utf-16le'],
    ['UTF-16 the other way', utf16('0.0,1.5\n', '').map((_, i, all) => all[i ^ 1]!), 'utf-16be'],
    ['Windows-1252', Uint8Array.from(Buffer.from('H\u00f6he \u00b0C', 'latin1')), 'windows-1252'],
  ])('%s', (_, bytes, encoding) => expect(encodingOf(bytes)).toBe(encoding))
})
