import { describe, expect, it } from 'vitest'
import { allClose, close } from './close.ts'

describe('close', () => {
  it('takes what is within the share or the amount', () => {
    close(101, 100, { rel: 0.0101 })
    close(0.003, 0, { abs: 0.003 })
    close(-5, -5, {})
    allClose([1, 2], [1, 2.001], { abs: 0.01 })
  })

  it('refuses what is outside, a value against zero among it, and says by how much it may be off', () => {
    expect(() => close(0.003, 0, { rel: 1e-3 })).toThrow('value 0.003 is not within 0 of 0')
    expect(() => close(102, 100, { rel: 0.01, abs: 0.5 }, 'force')).toThrow('force 102 is not within 1 of 100')
    expect(() => close(Number.NaN, 1, { abs: 1e9 })).toThrow('NaN')
    expect(() => close(Infinity, 1, { abs: 1e9 })).toThrow('Infinity')
    expect(() => allClose([1], [1, 2], { abs: 9 })).toThrow('length')
    expect(() => allClose([1, 2, 3], [1, 9, 3], { abs: 1 })).toThrow('value 1 2')
  })
})
