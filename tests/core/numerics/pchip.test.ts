import { describe, expect, it } from 'vitest'
import { pchip } from '../../../core/numerics/pchip.ts'
import { close } from '../../close.ts'
import { integrate } from '../../quadrature.ts'

const x = [-1, 0, 0.5, 2, 2.25]
const y = [0, 1, 1.2, 1.2, 4]
const curve = pchip(x, y)

describe('pchip', () => {
  it('goes through its points with its slopes, from either side', () => {
    expect(x.map(place => curve.at(place))).toEqual(x.map((_, i) => ({ value: y[i], slope: curve.slopes[i] })))
    for (const [i, place] of x.slice(1, -1).entries()) {
      close(curve.at(place - 1e-9).value, y[i + 1]!, { abs: 1e-7 })
      close(curve.at(place + 1e-9).slope, curve.slopes[i + 1]!, { abs: 1e-6 })
    }
  })

  it('is flat where the points are, and through two points a line', () => {
    expect(curve.at(1.3)).toEqual({ value: 1.2, slope: 0 })
    const line = pchip([0, 4], [1, 3])
    expect(line.at(3)).toEqual({ value: 2.5, slope: 0.5 })
    expect(line.bend(3, 'above')).toBe(0)
    close(line.integral(4), 8, { rel: 1e-15 })
  })

  it('turns at a point that is higher than both beside it', () => {
    const peak = pchip([0, 1, 2], [0, 1, 0])
    expect(peak.slopes[1]).toBe(0)
    expect(Math.max(...Array.from({ length: 201 }, (_, i) => peak.at(i / 100).value))).toBe(1)
  })

  it('keeps the nearer end outside', () => {
    expect(curve.at(-7)).toEqual(curve.at(-1))
    expect(curve.at(7)).toEqual(curve.at(2.25))
  })

  it('has slopes, bends and integrals that belong to its values', () => {
    const h = 1e-5
    for (const place of [-0.9, -0.31, 0.2, 0.77, 1.9, 2.1, 2.24]) {
      const [before, here, after] = [curve.at(place - h), curve.at(place), curve.at(place + h)]
      close(here.slope, (after.value - before.value) / (2 * h), { rel: 1e-7, abs: 1e-7 })
      close(curve.bend(place, 'above'), (after.slope - before.slope) / (2 * h), { rel: 1e-7, abs: 1e-7 })
      close(
        curve.integral(place),
        integrate(at => curve.at(at).value, -1, place, x),
        { rel: 1e-13, abs: 1e-15 },
      )
    }
  })

  it('has a bend on each side of a point', () => {
    for (const place of x.slice(1, -1)) {
      const h = 1e-6
      close(curve.bend(place, 'below'), (curve.at(place).slope - curve.at(place - h).slope) / h, {
        rel: 1e-4,
        abs: 1e-4,
      })
      close(curve.bend(place, 'above'), (curve.at(place + h).slope - curve.at(place).slope) / h, {
        rel: 1e-4,
        abs: 1e-4,
      })
    }
  })
})
