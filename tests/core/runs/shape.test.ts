import { describe, expect, it } from 'vitest'
import { numberIn } from '../../../core/runs/cell.ts'
import { encodingOf } from '../../../core/runs/encoding.ts'
import { shapeOf } from '../../../core/runs/shape.ts'
import { tokenize } from './tables.ts'

const shape = (text: string) => shapeOf(text.split('\n'), tokenize)

describe('how a table is written', () => {
  it.each([
    ['time,travel\n0,1.5\n0.1,1.6', ',', false, 1],
    ['0;1,5\n0,1;1,6\n0,2;-3', ';', true, 0],
    ['"time","travel"\n"0,0","1,5"\n"0,1","1,6"', ',', true, 1],
    ['a note, with a comma\nt\tx\n0.0\t1.5\n0.1\t1.6', '\t', false, 2],
    ['t | x\n0.0 | 1.5\n0.1 | 1.6', '|', false, 1],
    ['  0.0   1.5\n  0.1  -1.6', ' ', false, 0],
    ['  0,0   1,5\n  0,1  -1,6', ' ', true, 0],
  ])('%j: cells between %j, decimal comma %s, %i head lines', (text, delimiter, decimalComma, headerRows) =>
    expect(shape(text)).toMatchObject({ delimiter, decimalComma, headerRows }),
  )

  it('reads units behind names, and a row of units below them', () => {
    const columns = [
      { name: 'Time', unit: 's' },
      { name: 'Front left', unit: 'mm' },
    ]
    expect(shape('Time (s),Front left [mm]\n0,1\n1,2')).toMatchObject({ unitsRow: null, columns })
    expect(shape('Run 4\nTime,Front left\ns,mm\n0,1\n1,2')).toMatchObject({ unitsRow: 2, headerRows: 3, columns })
  })

  it('names columns without a head by their place', () =>
    expect(shape('0,1\n1,2')?.columns).toEqual([
      { name: 'column 1', unit: null },
      { name: 'column 2', unit: null },
    ]))

  it('is none where nothing reads as numbers', () => {
    expect(shape('Dear all,\nhere is, as promised, the run')).toBeNull()
    expect(shape('')).toBeNull()
    expect(shape('1\n2\n3')).toBeNull()
  })
})

describe('a cell', () => {
  it.each([
    ['1.5', false, 1.5],
    [' 1,5 ', true, 1.5],
    ['−2', false, -2],
    ['1e-3', false, 1e-3],
    ['0', false, 0],
    ['01:02:03.5', false, 3723.5],
    ['', false, Number.NaN],
    ['  ', false, Number.NaN],
    ['NaN', false, Number.NaN],
    ['0x1f', false, Number.NaN],
    ['Infinity', false, Number.NaN],
    ['1,5', false, Number.NaN],
    ['x', false, Number.NaN],
  ])('%j, decimal comma %s, is %d', (cell, comma, value) => expect(numberIn(cell, comma)).toBe(value))
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
