import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { cubicPieces } from '../../../core/numerics/cubic-pieces.ts'
import { evenTable } from '../../../core/numerics/even-table.ts'
import { pchip } from '../../../core/numerics/pchip.ts'
import { close } from '../../close.ts'

const rows = fc
  .array(
    fc.record({ dx: fc.double({ min: 0.01, max: 2, noNaN: true }), dy: fc.double({ min: 0, max: 5, noNaN: true }) }),
    {
      minLength: 1,
      maxLength: 6,
    },
  )
  .map(steps => {
    let [x, y] = [0, 0]
    const all = steps.map(step => {
      x += step.dx
      y += step.dy
      return [x, y] as const
    })
    return { x: [0, ...all.map(row => row[0])], y: [0, ...all.map(row => row[1])] }
  })

describe('a curve in cubic pieces', () => {
  it('is the shape-preserving curve, and finds the place of a value', () => {
    fc.assert(
      fc.property(rows, fc.double({ min: -0.1, max: 1.1, noNaN: true }), ({ x, y }, share) => {
        const [pieces, shape] = [cubicPieces(x, y), pchip(x, y)]
        const place = share * x.at(-1)!
        close(pieces.value(place), shape.at(place).value, { rel: 1e-12, abs: 1e-12 })
        const wanted = share * y.at(-1)!
        const there = pieces.where(wanted)
        expect(there).toBeGreaterThanOrEqual(0)
        expect(there).toBeLessThanOrEqual(x.at(-1)!)
        close(pieces.value(there), Math.min(y.at(-1)!, Math.max(0, wanted)), { rel: 1e-9, abs: 1e-9 })
      }),
      { numRuns: 500, seed: 1 },
    )
  })
})

describe('an even table', () => {
  const from = -1
  const step = 0.05
  const places = Array.from({ length: 61 }, (_, i) => from + step * i)
  const table = evenTable(from, step, places.map(Math.sin), places.map(Math.cos))

  it('is good to step⁴/384, its slope to the cube, and ends at its ends', () => {
    for (let x = -1; x <= 2; x += 0.0137) {
      close(table.value(x), Math.sin(x), { abs: step ** 4 / 384 })
      close(table.slope(x), Math.cos(x), { abs: step ** 3 / 12 })
    }
    expect([table.value(-5), table.value(9), table.slope(-5), table.slope(9)]).toEqual([
      Math.sin(-1),
      table.value(2),
      0,
      0,
    ])
  })
})
