import { describe, expect, it } from 'vitest'
import { polyline } from '../../../core/numerics/polyline.ts'

const line = polyline([0, 1, 3], [0, 4, 5])

describe('polyline', () => {
  it('is straight between its points and the nearer end outside', () => {
    expect([-1, 0.5, 2, 9].map(place => line.at(place))).toEqual([
      { value: 0, slope: 0 },
      { value: 2, slope: 4 },
      { value: 4.5, slope: 0.5 },
      { value: 5, slope: 0 },
    ])
  })

  it('has the slope of the side asked for at its points', () => {
    expect([0, 1, 3].map(place => [line.at(place, 'below').slope, line.at(place, 'above').slope])).toEqual([
      [0, 4],
      [4, 0.5],
      [0.5, 0],
    ])
  })

  it('adds up to the area under it, from its first point on', () => {
    expect([0, 0.5, 1, 2, 3, 5].map(place => line.integral(place))).toEqual([0, 0.5, 2, 6.25, 11, 21])
  })

  it('of one point is that value everywhere', () => {
    expect(polyline([2], [7]).at(1)).toEqual({ value: 7, slope: 0 })
  })
})
