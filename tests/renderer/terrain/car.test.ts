import { describe, expect, it } from 'vitest'
import { pitchWords } from '../../../renderer/charts/terrain/CarDrawing.tsx'
import { carGeometry } from '../../../renderer/charts/terrain/car-geometry.ts'
import { answerTo, handedOver } from '../../../renderer/workers/answer.ts'
import { close } from '../../close.ts'
import { aPlan } from '../a-plan.ts'
import { terrains } from './rode.ts'

const at = (...values: number[]) => Float64Array.from(values)
const car = { wheelbase: 3, radius: { front: 0.4, rear: 0.5 } }
const size = { width: 100, ground: 40 }

describe('the small drawing of the whole car', () => {
  const still = { chassis: at(0, 0.1), wheel: at(0, 0), road: at(0, 0) }

  it('turns its nose down where the rear has risen, and draws that to scale', () => {
    const moved = { front: still, rear: { chassis: at(0, 0.4), wheel: at(0, -0.1), road: at(0, 0.3) } }
    const { front, rear, pitch } = carGeometry(moved, at(0, 1), 1, car, size)
    close(pitch, 0.1, { abs: 1e-12 })
    expect(front.x).toBeGreaterThan(rear.x)
    close(front.body - rear.body, 20 * (0.3 + 0.1), { abs: 1e-9 })
    close(rear.wheel, 40 - 20 * (0.3 + 0.5), { abs: 1e-9 })
    close(rear.wheel + rear.radius, rear.road, { abs: 1e-9 })
    expect(carGeometry(moved, at(0, 1), 0, car, size).pitch).toBe(0)
  })

  it('says so in words', () =>
    expect([0, 1e-4, 0.1, -0.1].map(pitchWords)).toEqual(['level', 'level', 'nose down 5.7°', 'nose up 5.7°']))

  it('gets both axles from a ride of the whole car, each array handed over once', () => {
    const { axles } = aPlan().setups[0]!
    const driven = {
      kind: 'car',
      axles: axles.map(({ id, corner }) => ({ id, corner })),
      wheelbase: 3,
      axle: 'rear',
    } as const
    const answer = answerTo({ kind: 'ride', driven, terrain: terrains.ledge, trace: true })
    if (answer.kind !== 'ride' || !answer.ridden.ok) throw new Error('no ride')
    const { car: moments, trace, pitch } = answer.ridden
    const drawn = Array.from(trace!.time, time => carGeometry(moments!, trace!.time, time, car, size).pitch)
    close(Math.max(...drawn), pitch!.most, { abs: 1e-9 })
    close(Math.min(...drawn), pitch!.least, { abs: 1e-9 })
    const buffers = handedOver(answer)
    expect(new Set(buffers).size).toBe(buffers.length)
    expect(buffers).toContain(moments!.front.wheel.buffer)
  })
})
