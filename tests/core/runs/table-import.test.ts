import { describe, expect, it } from 'vitest'
import { imported } from './tables.ts'

function table(text: string) {
  const end = imported(text)
  if (!end.ok) throw new Error(end.why)
  return end.table
}

describe('a table with faults', () => {
  it('counts repeated and backward times, unreadable rows and missing values, and keeps the rest', () => {
    const { time, values, faults, rows } = table('t,x\n0,1\n1,2\n1,3\n0.5,4\n2,\n3,x\n4,5,6\nlost\n5,7\n')
    expect(Array.from(time)).toEqual([0, 1, 2, 3, 5])
    expect(Array.from(values[0]!)).toEqual([1, 2, Number.NaN, Number.NaN, 7])
    expect(faults).toEqual({ repeated: 1, backward: 1, missing: 1, unreadable: 3 })
    expect(rows).toBe(9)
  })

  it('does not let an open quotation mark swallow what follows', () =>
    expect(Array.from(table('t,x\n0,1\n1,"2\n2,3\n3,4\n').time)).toEqual([0, 1, 2, 3]))

  it('says when there is no table', () => {
    expect(imported('no numbers here')).toEqual({ ok: false, why: 'no table' })
    expect(imported('')).toEqual({ ok: false, why: 'no table' })
    expect(imported('x'.repeat(3_000_000), 65_536)).toEqual({ ok: false, why: 'no table' })
  })
})
