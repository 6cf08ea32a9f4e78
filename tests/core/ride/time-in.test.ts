import { expect, it } from 'vitest'
import { TimeIn } from '../../../core/ride/time-in.ts'

it('time between places is split where they are passed, both ways and past both ends', () => {
  const zones = new TimeIn([0, 1])
  zones.pass(-1, 3, 4)
  zones.pass(3, 0.5, 2.5)
  zones.pass(0.5, 0.5, 7)
  expect([...zones.seconds]).toEqual([1, 1 + 0.5 + 7, 2 + 2])
})

it('a zone without length takes no time', () => {
  const zones = new TimeIn([0, 0])
  zones.pass(-1, 1, 2)
  zones.pass(0, 0, 1)
  expect([...zones.seconds]).toEqual([1, 0, 2])
})
