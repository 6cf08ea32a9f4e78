import { describe, expect, it } from 'vitest'
import type { Terrain } from '../../../core/plan/schema.ts'
import { measuredRoad, rolledProfile } from '../../../core/ride/measured-road.ts'
import type { Road } from '../../../core/ride/road.ts'
import { rough, roughLines } from '../../../core/ride/rough.ts'
import { roadOf } from '../../../core/ride/terrain.ts'
import { close } from '../../close.ts'
import { pointByPoint } from './point-by-point.ts'

const whoops: Terrain = { id: '', name: '', kind: 'whoops', spacing: 6, height: 0.5, speed: 12, count: 3 }
const ledge: Terrain = { id: '', name: '', kind: 'ledge', height: 0.2, length: 1, speed: 4 }
const roughRoad = { id: '', name: '', kind: 'rough', isoClass: 'D', speed: 15, duration: 8, seed: 5 } as const

/** Rise is the slope of height, at places away from breaks. */
function slopes(road: Road): void {
  const d = 1e-6
  for (let i = 1; i < 500; i += 1) {
    const time = (road.duration * (i + 0.3)) / 501
    if (road.breaks.some(at => Math.abs(at - time) < 1e-4)) continue
    close(
      road.rise(time),
      (road.height(time + d) - road.height(time - d)) / (2 * d),
      { abs: 2e-4, rel: 1e-4 },
      `rise at ${time}`,
    )
  }
}

describe('roads', () => {
  it.each([
    ['whoops', roadOf(whoops, 0.4)],
    ['ledge', roadOf(ledge, 0.4)],
    ['rough', roadOf(roughRoad, 0.4)],
    ['landing', roadOf({ id: '', name: '', kind: 'landing', drop: 2 }, 0.4)],
    [
      'measured',
      measuredRoad(
        { id: '', kind: 'measured', speed: 3, profile: { distance: [0, 5, 5.5, 9], height: [0, 0, 0.1, 0.05] } },
        0.4,
      ),
    ],
  ])('%s begins level with the car, and its rise is the slope of its height', (_, road) => {
    close(road.height(0), 0, { abs: 1e-12 })
    slopes(road)
  })

  it('whoops are waves from trough to trough, a second in and two out', () => {
    const road = roadOf(whoops, 0.4)
    expect(road.duration).toBe(1 + 1.5 + 2)
    expect([0.5, 1, 1.25, 1.5, 2.25, 2.5, 4].map(time => Number(road.height(time).toFixed(12)))).toEqual([
      0, 0, 0.5, 0, 0.5, 0, 0,
    ])
  })

  it('a ledge is met before its edge, on an arc of the tire, and left the same way', () => {
    const road = roadOf(ledge, 0.4)
    const reach = Math.sqrt(0.4 ** 2 - 0.2 ** 2)
    close(road.duration, (4 + 2 * reach + 1) / 4 + 2, { rel: 1e-12 })
    const at = (x: number): number => road.height((4 + x) / 4)
    close(at(reach), 0.2, { rel: 1e-9 })
    close(at(reach + 0.5), 0.2, { rel: 1e-9 })
    close(at(reach - 0.1), Math.sqrt(0.4 ** 2 - 0.1 ** 2) - 0.2, { rel: 1e-9 })
    close(at(reach + 1 + 0.1), at(reach - 0.1), { rel: 1e-9 })
    close(at(2 * reach + 1 + 1e-9), 0, { abs: 1e-12 })
  })

  it('a ledge higher than its wheel can roll is still a road', () => {
    const road = roadOf({ ...ledge, height: 1 }, 0.3)
    expect(
      Math.max(...Array.from({ length: 1000 }, (_, i) => road.height((i / 1000) * road.duration))),
    ).toBeGreaterThan(0.99)
    slopes(road)
  })

  it('rough is the sum of its lines to a hundredth of a millimetre, forwards, backwards and before its start', () => {
    const lines = roughLines('D', 5)
    const road = rough(roughRoad)
    const sum = (x: number): number =>
      lines.reduce(
        (z, { amplitude, frequency, phase }) => z + amplitude * Math.sin(2 * Math.PI * frequency * x + phase),
        0,
      )
    for (const time of [0, 0.1, 7.9, 3.3, -0.4, 3.2999, 6, 0.05, 7.123])
      close(road.height(time), sum(time * 15) - sum(0), { abs: 1e-5 }, `height at ${time}`)
  })
})

describe('a measured road', () => {
  const rolled = (distance: number[], height: number[], radius: number) => {
    const { step, heights } = rolledProfile({ distance, height }, radius)
    return (x: number): number => heights[Math.round((x - distance[0]!) / step)]!
  }

  it('is itself where it is level, and raised by the slant of the wheel’s reach on a slope', () => {
    const at = rolled([0, 4, 8, 12], [0, 0, 2, 2], 0.5)
    close(at(1), 0, { abs: 1e-12 })
    close(at(6), 1 + 0.5 * (Math.hypot(1, 0.5) - 1), { rel: 1e-9 })
    close(at(11), 2, { rel: 1e-9 })
  })

  it('is rounded at an edge by the tire, as a ledge is', () => {
    const at = rolled([0, 5, 5.0001, 10], [0, 0, 0.2, 0.2], 0.4)
    const reach = Math.sqrt(0.4 ** 2 - 0.2 ** 2)
    for (const back of [0.1, 0.2, 0.3]) close(at(5 - back), Math.sqrt(0.4 ** 2 - back ** 2) - 0.2, { abs: 3e-3 })
    close(at(5 - reach - 0.02), 0, { abs: 1e-12 })
  })

  it('does not let a wheel into a hole narrower than it fits', () => {
    const at = rolled([0, 2, 2.01, 2.19, 2.2, 4], [0, 0, -1, -1, 0, 0], 0.5)
    close(at(2.1), Math.sqrt(0.5 ** 2 - 0.1 ** 2) - 0.5, { abs: 1e-3 })
  })

  it('is bounded in what it costs, however long', () => {
    const { heights } = rolledProfile({ distance: [0, 1e5], height: [0, 10] }, 0.3)
    expect(heights.length).toBeLessThanOrEqual(200_001)
  })

  it('point by point goes straight from one to the next', () => {
    const road = pointByPoint({ distance: [3, 5, 6], height: [1, 2, 1] }, 2)
    expect([road.duration, road.height(0.5), road.rise(0.5), road.rise(1.2), road.height(1.25)]).toEqual([
      1.5, 0.5, 1, -2, 0.5,
    ])
  })
})
