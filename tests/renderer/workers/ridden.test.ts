import { describe, expect, it } from 'vitest'
import { cornerModel } from '../../../core/corner/corner.ts'
import type { Terrain } from '../../../core/plan/schema.ts'
import { ride } from '../../../core/ride/ride.ts'
import { handedOver, ridden } from '../../../renderer/workers/ridden.ts'
import { sampleCorner, withCorner } from '../charts/sample-axles.ts'

const ledge: Terrain = { id: 'ledge', name: 'Ledge', kind: 'ledge', height: 0.12, length: 1, speed: 6 }

describe('a ride worked out for the page', () => {
  it('is the ride of the model, moment for moment', () => {
    const answer = ridden({ corner: sampleCorner, terrain: ledge, trace: true })
    expect(answer).toEqual(ride(cornerModel(sampleCorner), ledge))
  })

  it('leaves the moments out where nobody asked for them', () => {
    const whole = ridden({ corner: sampleCorner, terrain: ledge, trace: true })
    expect(ridden({ corner: sampleCorner, terrain: ledge, trace: false })).toEqual({ ...whole, trace: null })
  })

  it('does not take one corner for another that looks like it', () => {
    const other = withCorner({ cornerMass: sampleCorner.cornerMass * 1.2 }).corner
    ridden({ corner: sampleCorner, terrain: ledge, trace: false })
    expect(ridden({ corner: other, terrain: ledge, trace: true })).toEqual(ride(cornerModel(other), ledge))
  })

  it('hands every moment over, whole, and nothing twice', () => {
    const answer = ridden({ corner: sampleCorner, terrain: ledge, trace: true })
    const memory = handedOver(answer)
    const moved = structuredClone(answer, { transfer: memory })
    expect(new Set(memory).size).toBe(memory.length)
    expect(memory.every(({ byteLength }) => byteLength === 0)).toBe(true)
    expect(moved).toEqual(ride(cornerModel(sampleCorner), ledge))
    expect(handedOver(ridden({ corner: sampleCorner, terrain: ledge, trace: false }))).toEqual([])
  })
})
