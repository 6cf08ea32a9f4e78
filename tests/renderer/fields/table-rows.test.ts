import { expect, test } from 'vitest'
import { pastedCells, rowAfter, sortedBy } from '../../../renderer/fields/table-rows.ts'

const rows = [
  { wheel: -0.1, shock: -0.07 },
  { wheel: 0, shock: 0 },
  { wheel: 0.1, shock: 0.08 },
]

test('a row put in lies halfway to the next, and at the end one stride on', () => {
  expect(rowAfter(rows, 1)).toEqual({ wheel: 0.05, shock: 0.04 })
  expect(rowAfter(rows, 2)).toEqual({ wheel: 0.2, shock: 0.16 })
})

test('rows are sorted by their first column and the list given stays as it is', () => {
  const back = [...rows].reverse()
  expect(sortedBy(back, 'wheel')).toEqual(rows)
  expect(back[0]!.wheel).toBe(0.1)
})

test('cells of a spreadsheet are told from one number typed elsewhere', () => {
  expect(pastedCells('0\t0\r\n1 1/2\t3/4\r\n')).toEqual([
    ['0', '0'],
    ['1 1/2', '3/4'],
  ])
  expect(pastedCells('2 7/8')).toBeNull()
  expect(pastedCells('1;2;3')).toEqual([['1', '2', '3']])
})
