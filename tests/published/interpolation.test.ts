import { describe, expect, it } from 'vitest'
import { pchip } from '../../core/numerics/pchip.ts'
import { allClose, close } from '../close.ts'
import { integrate } from '../quadrature.ts'

/**
 * Slopes by the weighted harmonic mean of F. N. Fritsch and J. Butland (SIAM J. Sci. Stat. Comput. 5 (1984) 300), which the 1980 algorithm of
 * the data's source does not use. Recomputed with a general numerical library's PCHIP.
 */
const mid = (x: readonly number[]): number[] => x.slice(1).map((next, i) => (next + x[i]!) / 2)

describe('RPN 14 data (F. N. Fritsch and R. E. Carlson, SIAM J. Numer. Anal. 17 (1980) 238)', () => {
  const x = [7.99, 8.09, 8.19, 8.7, 9.2, 10, 12, 15, 20]
  const f = [0, 2.76429e-5, 4.37498e-2, 0.169183, 0.469428, 0.94374, 0.998636, 0.999919, 0.999994]
  const curve = pchip(x, f)

  it('has the slopes', () =>
    allClose(
      curve.slopes,
      [
        0, 5.5250868187e-4, 0.33587683461, 0.34944916769, 0.59695823893, 0.060321845523, 9.0039538277e-4,
        3.142468363e-5, 0,
      ],
      { rel: 1e-10 },
    ))

  it('has the values half-way', () =>
    allClose(
      mid(x).map(place => curve.at(place).value),
      [6.9151e-6, 0.0176971674, 0.1056011638, 0.303836183, 0.7602476393, 0.9860433625, 0.999603364, 0.9999761404],
      { rel: 1e-9, abs: 5e-11 },
    ))

  it('has the integral', () =>
    close(
      integrate(place => curve.at(place).value, 7.99, 20, x),
      10.764813505,
      { abs: 5e-10 },
    ))

  it('never falls, as the data never do', () => {
    const places = Array.from({ length: 1200 }, (_, i) => 7.99 + i * 0.01)
    const values = places.map(place => curve.at(place).value)
    expect(values.findIndex((value, i) => i > 0 && value < values[i - 1]!)).toBe(-1)
  })
})

describe('Akima data (H. Akima, J. ACM 17 (1970) 589)', () => {
  const x = [0, 2, 3, 5, 6, 8, 9, 11, 12, 14, 15]
  const y = [10, 10, 10, 10, 10, 10, 10.5, 15, 50, 60, 85]
  const curve = pchip(x, y)

  it('has the slopes', () =>
    allClose(curve.slopes, [0, 0, 0, 0, 0, 0, 0.7641509434, 4.6859504132, 9.5454545455, 9, 31.6666666667], {
      abs: 5e-11,
    }))

  it('is flat from 0 to 8', () => {
    expect([0, 0.7, 2, 4.4, 7.99, 8].map(place => curve.at(place))).toEqual(
      Array.from({ length: 6 }, () => ({ value: 10, slope: 0 })),
    )
  })

  it('has the values half-way', () =>
    allClose(
      [8.5, 10, 11.5, 13, 14.5].map(place => curve.at(place).value),
      [10.1544811321, 11.7695501325, 31.8925619835, 55.1363636364, 69.6666666667],
      { abs: 5e-11 },
    ))

  it('has the integral', () =>
    close(
      integrate(place => curve.at(place).value, 0, 15, x),
      327.26702488,
      { abs: 5e-9 },
    ))
})
