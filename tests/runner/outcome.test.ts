import { describe, expect, it } from 'vitest'
import { add, lastLine, type Outcome, settle, skip } from './outcome.ts'

const counted = (passed: number, failed: number, skipped = 0): Outcome => ({ passed, failed, skipped, notes: [] })

describe('the count of a run', () => {
  it('adds up what its stages came to', () => {
    const total = add([counted(1, 0), counted(12, 2, 1), { ...counted(3, 0), notes: ['skipped: a: no display'] }])
    expect(total).toEqual({ passed: 16, failed: 2, skipped: 1, notes: ['skipped: a: no display'] })
    expect(lastLine(total)).toBe('16 passed, 2 failed, 1 skipped')
  })

  it('takes a whole report as it is', () => expect(settle('unit tests', 0, counted(5, 0))).toEqual(counted(5, 0)))

  it('fails a run that left no report, ran nothing, or ended badly without a failed test', () => {
    expect(settle('unit tests', 0, undefined)).toMatchObject({ failed: 1 })
    expect(settle('unit tests', 0, counted(0, 0, 3))).toMatchObject({ failed: 1, skipped: 3 })
    expect(settle('unit tests', 1, counted(5, 0))).toMatchObject({ passed: 5, failed: 1 })
    expect(settle('unit tests', 1, counted(5, 2))).toMatchObject({ passed: 5, failed: 2 })
  })

  it('fails a test that was skipped without a reason', () => {
    const outcome = counted(0, 0)
    skip(outcome, 'opens a window', 'no display')
    skip(outcome, 'closes it', undefined)
    expect(outcome).toMatchObject({ passed: 0, failed: 1, skipped: 1 })
    expect(outcome.notes[0]).toBe('skipped: opens a window: no display')
  })
})
