import fc from 'fast-check'
import { expect, test } from 'vitest'
import { type Box, inside, overlap } from '../../../../renderer/charts/placement/box.ts'
import { Occupancy } from '../../../../renderer/charts/placement/occupancy.ts'
import { between } from '../../../laws/arbitrary-linkage.ts'

const area: Box = { x: 0, y: 0, width: 200, height: 300 }
const box: fc.Arbitrary<Box> = fc.record({
  x: between(0, 180),
  y: between(0, 280),
  width: between(1, 60),
  height: between(1, 40),
})

test('a place that is given is free, inside, and only moved up or down', () => {
  fc.assert(
    fc.property(fc.array(box, { maxLength: 20 }), box, (taken, wanted) => {
      const room = new Occupancy(area, { x: 0, y: 0 })
      for (const one of taken) room.take(one)
      const place = room.slide(wanted, area)
      if (place === null) return
      expect(taken.some(one => overlap(one, place))).toBe(false)
      expect(inside(place, area)).toBe(true)
      expect([place.x, place.width, place.height]).toEqual([wanted.x, wanted.width, wanted.height])
    }),
    { seed: 26, numRuns: 300 },
  )
})

test('it is the nearest: no free height lies closer to the one wished for', () => {
  fc.assert(
    fc.property(fc.array(box, { maxLength: 8 }), box, (taken, wanted) => {
      fc.pre(wanted.x + wanted.width <= area.width)
      const room = new Occupancy(area, { x: 0, y: 0 })
      for (const one of taken) room.take(one)
      const held = Math.min(Math.max(wanted.y, 0), area.height - wanted.height)
      const place = room.slide(wanted, area)
      const far = place === null ? Number.POSITIVE_INFINITY : Math.abs(place.y - held)
      for (let y = 0; y <= area.height - wanted.height; y += 1)
        if (room.isFree({ ...wanted, y })) expect(Math.abs(y - held)).toBeGreaterThanOrEqual(far - 0.02)
    }),
    { seed: 27, numRuns: 60 },
  )
})

test('what is taken keeps its distance', () => {
  const room = new Occupancy(area, { x: 3, y: 1 })
  room.take({ x: 50, y: 50, width: 20, height: 10 })
  expect(room.isFree({ x: 72, y: 50, width: 10, height: 10 })).toBe(false)
  expect(room.isFree({ x: 73, y: 50, width: 10, height: 10 })).toBe(true)
  room.takeExactly({ x: 100, y: 50, width: 20, height: 10 })
  expect(room.isFree({ x: 120, y: 50, width: 10, height: 10 })).toBe(true)
})
