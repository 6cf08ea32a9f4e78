import { describe, expect, it } from 'vitest'
import { cornerModel } from '../../../core/corner/corner.ts'
import type { Corner, Terrain } from '../../../core/plan/schema.ts'
import { rideFindings } from '../../../core/ride/findings/findings.ts'
import { ride } from '../../../core/ride/ride.ts'
import { rideCar } from '../../../core/ride/whole-car.ts'
import { answerTo, handedOver } from '../../../renderer/workers/answer.ts'
import type { Ask, Driven, Ridden } from '../../../renderer/workers/messages.ts'
import { sampleAxle, sampleCorner, withCorner } from '../charts/sample-axles.ts'

const ledge: Terrain = { id: 'ledge', name: 'Ledge', kind: 'ledge', height: 0.12, length: 1, speed: 6 }
const lighter = withCorner({ cornerMass: sampleCorner.cornerMass * 0.9 }).corner

const alone = (corner: Corner): Driven => ({ kind: 'corner', corner })
const car = (axle: 'front' | 'rear'): Driven => ({
  kind: 'car',
  axles: [
    { id: 'front', corner: lighter },
    { id: 'rear', corner: sampleCorner },
  ],
  wheelbase: 2.8,
  axle,
})

const asked = (driven: Driven, trace = true): Ask => ({ kind: 'ride', driven, terrain: ledge, trace })

function rode(ask: Ask): Ridden {
  const answer = answerTo(ask)
  if (answer.kind !== 'ride') throw new Error('A ride was asked for.')
  return answer.ridden
}

const byItself = (corner: Corner) => ride(cornerModel(corner), ledge)

describe('a ride worked out for the page', () => {
  it('is the ride of the model, moment for moment', () => {
    expect(byItself(sampleCorner)).toMatchObject({ ok: true })
    const { pitch, car, ...ridden } = rode(asked(alone(sampleCorner))) as Extract<Ridden, { ok: true }>
    expect(byItself(sampleCorner)).toMatchObject(ridden)
    expect([pitch, car]).toEqual([null, null])
  })

  it('leaves the moments out where nobody asked for them', () => {
    expect(rode(asked(alone(sampleCorner), false))).toEqual({ ...rode(asked(alone(sampleCorner))), trace: null })
  })

  it('does not take one corner for another that looks like it', () => {
    rode(asked(alone(sampleCorner)))
    expect(rode(asked(alone(lighter)))).not.toEqual(rode(asked(alone(sampleCorner))))
  })

  it('is that of the axle asked about in the whole car, with how far its nose went', () => {
    const whole = rideCar(
      [
        { id: 'front', model: cornerModel(lighter) },
        { id: 'rear', model: cornerModel(sampleCorner) },
      ],
      2.8,
      ledge,
    )
    if (!whole.ok) throw new Error('The sample car could not be driven.')
    for (const [i, axle] of (['front', 'rear'] as const).entries()) {
      const ridden = rode(asked(car(axle)))
      expect(ridden).toMatchObject({ ok: true, ...whole.axles[i] })
      expect(ridden).toMatchObject({ pitch: { least: Math.min(...whole.pitch), most: Math.max(...whole.pitch) } })
    }
  })

  it('hands every moment over, whole, and nothing twice', () => {
    const answer = answerTo(asked(alone(sampleCorner)))
    const memory = handedOver(answer)
    const moved = structuredClone(answer, { transfer: memory })
    expect(new Set(memory).size).toBe(memory.length)
    expect(memory.length).toBeGreaterThan(0)
    expect(memory.every(({ byteLength }) => byteLength === 0)).toBe(true)
    expect(moved).toEqual(answerTo(asked(alone(sampleCorner))))
    expect(handedOver(answerTo(asked(alone(sampleCorner), false)))).toEqual([])
  })
})

describe('findings worked out for the page', () => {
  const hard: Terrain = { id: 'landing', name: 'Landing', kind: 'landing', drop: 2 }

  it('are those of the same ride', () => {
    const model = cornerModel(sampleCorner)
    const outcome = ride(model, hard)
    if (!outcome.ok) throw new Error('The sample could not be ridden.')
    const answer = answerTo({
      kind: 'findings',
      driven: alone(sampleCorner),
      axle: sampleAxle,
      terrain: hard,
      units: 'inch',
    })
    const expected = rideFindings(sampleAxle, model, hard, outcome, 'inch')
    expect(expected.length).toBeGreaterThan(0)
    expect(answer).toEqual({ kind: 'findings', findings: expected })
    expect(handedOver(answer)).toEqual([])
  })
})
