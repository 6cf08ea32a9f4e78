import { describe, expect, it } from 'vitest'
import { imported, tableIn } from './tables.ts'

/** Without a unit, so that seconds have to be said. */
const seconds = { time: { kind: 'numbers', column: 0, unit: 1 } } as const

describe('a table with faults', () => {
  const text = 't,x\n0,1\n1,2\n1,3\n0.5,4\n2,\n3,x\n4,5,6\nlost\n5,7\n'

  it('counts repeated and backward times, unreadable rows and missing values, and keeps the rest', () => {
    const { time, values, faults, rows, firstLines } = tableIn(text, seconds)
    expect(Array.from(time)).toEqual([0, 1, 2, 3, 5])
    expect(Array.from(values[0]!)).toEqual([1, 2, Number.NaN, Number.NaN, 7])
    expect(faults).toEqual({ repeated: 1, backward: 1, missing: 1, unreadable: 3 })
    expect(firstLines).toEqual({ repeated: 4, backward: 5, missing: 6, unreadable: 7 })
    expect(rows).toBe(9)
  })

  it('names lines of the file also where quotation marks, empty lines and a head are among them', () =>
    expect(tableIn('run 4\n\n"t","x"\n0,"1"\n\n1,2\n1,3\n', seconds).firstLines.repeated).toBe(7))

  it('goes on where its clock was set back, if that is chosen, with a gap in between', () => {
    const { time, values, faults } = tableIn('t,x\n0,1\n1,2\n2,3\n0,4\n1,5\n', { ...seconds, backward: 'goes on' })
    expect(Array.from(time)).toEqual([0, 1, 2, 12, 13])
    expect(Array.from(values[0]!)).toEqual([1, 2, 3, 4, 5])
    expect(faults.backward).toBe(1)
  })

  it('does not let an open quotation mark swallow what follows', () =>
    expect(Array.from(tableIn('t,x\n0,1\n1,"2\n2,3\n3,4\n', seconds).time)).toEqual([0, 1, 2, 3]))

  it('says when there is no table', () => {
    expect(imported('no numbers here')).toEqual({ ok: false, why: 'no table' })
    expect(imported('')).toEqual({ ok: false, why: 'no table' })
    expect(imported('x'.repeat(3_000_000), 65_536)).toEqual({ ok: false, why: 'no table' })
  })
})

describe('time', () => {
  it('is counted where no column tells it, and a row that cannot be read has its time all the same', () => {
    const { time } = tableIn('front\n1\n2\nx\ty\n3\n', { time: { kind: 'rate', rowsPerSecond: 200 } })
    expect(Array.from(time)).toEqual([0, 0.005, 0.015])
  })

  it('of day begins at nought and goes on past midnight', () => {
    const { time, startedAt } = tableIn('at;x\n23:59:59,9;1\n00:00:00,1;2\n00:00:01;3\n')
    expect([startedAt, ...time]).toEqual(['23:59:59,9', 0, 0.2, 1.1])
  })

  it('with calendar dates is told from them', () => {
    const days = tableIn('at,x\n2024-02-28T23:59:59.5Z,1\n2024-02-29T00:00:00.5Z,2\n2024-03-01T00:00:00.5Z,3\n')
    expect(Array.from(days.time)).toEqual([0, 1, 86_401])
    expect(Array.from(tableIn('at,x\n12/31/2025 11:59:59 pm,1\n01/01/2026 12:00:01 am,2\n').time)).toEqual([0, 2])
    expect(Array.from(tableIn('at;x\n31.12.2025 23:59:59;1\n01.01.2026 00:00:01;2\n').time)).toEqual([0, 2])
  })

  it('in other units comes to seconds to the last digit', () =>
    expect(Array.from(tableIn('t (ms),x\n0,1\n12.3,2\n1e3,3\n').time)).toEqual([0, 0.0123, 1]))
})
