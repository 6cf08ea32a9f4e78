import { describe, expect, it } from 'vitest'
import { cornerModel } from '../../../core/corner/corner.ts'
import { seededRandom } from '../../../core/numerics/random.ts'
import type { Corner } from '../../../core/plan/schema.ts'
import { ride } from '../../../core/ride/ride.ts'
import { rideAsRun } from '../../../core/runs/compare.ts'
import { ENGAGEMENT_OFF, engagementFinding, engagementWords } from '../../../core/runs/engagement-words.ts'
import type { EvenRun } from '../../../core/runs/evenly.ts'
import { seeEngagement } from '../../../core/runs/seen-engagement.ts'
import { sayIn } from '../../../core/units/saying.ts'
import { close } from '../../close.ts'
import { seed } from '../../seeds/seed.ts'

const say = sayIn('metric')

/** Five minutes of rough ground, a thousand rows a second, from a sensor that shakes by half a millimetre and tells tenths. */
function recorded(corner: Corner, isoClass: 'D' | 'F'): EvenRun {
  const model = cornerModel(corner)
  const ground = { id: '', name: '', kind: 'rough', isoClass, speed: 15, duration: 300, seed: 3 } as const
  const driven = ride(model, ground, { sample: 1e-3 })
  if (!driven.ok) throw new Error(driven.reason)
  const random = seededRandom(7)
  const run = rideAsRun(driven)
  const noisy = (wheel: number) => Math.round((wheel + (random() + random() + random() - 1.5) * 4e-4) * 1e4) / 1e4
  return { ...run, stretches: run.stretches.map(({ start, values }) => ({ start, values: values.map(noisy) })) }
}

const corners = seed('on-its-stops.stopgap').setups[0]!.axles.map(({ corner }) => corner)

describe('engagement seen in a run', () => {
  it.each([0, 1])('comes back within 6 mm and within what it says of itself, axle %i', axle => {
    const corner = corners[axle]!
    const model = cornerModel(corner)
    const seen = seeEngagement(model, recorded(corner, 'F'))
    if (!seen.seen) throw new Error(seen.why)
    close(seen.wheel, model.engagement!, { abs: Math.min(6e-3, seen.within) })
    expect(seen.within).toBeLessThan(0.016)
    expect(engagementFinding(seen, model.engagement, say)).toBeNull()
  })

  it('is said not to be there where there is no stop, or it was never reached', () => {
    const without: Corner = { ...corners[1]!, stop: null }
    expect(seeEngagement(cornerModel(without), recorded(without, 'F'))).toEqual({
      seen: false,
      why: 'nothing stands out',
    })
    const far = corners[0]!
    const quiet = seeEngagement(cornerModel(far), recorded(far, 'D'))
    expect(quiet.seen).toBe(false)
    expect(engagementWords(quiet, 0.064, say)).toMatch(
      /cannot be told from this run: .*The plan computes \+64\.0 mm\.$/,
    )
  })

  it('is not looked for in too few rows a second, too short a run, or no travel', () => {
    const still = { step: 1e-3, stretches: [{ start: 0, values: new Float64Array(1000) }], gaps: 0, lost: 0 }
    const travel = { droop: -0.2, bump: 0.2 }
    expect(seeEngagement(travel, { ...still, step: 0.01 })).toEqual({ seen: false, why: 'too few rows a second' })
    expect(seeEngagement(travel, still)).toEqual({ seen: false, why: 'too few strokes' })
    expect(seeEngagement({ droop: 0, bump: 0.05 }, still)).toEqual({ seen: false, why: 'no travel' })
  })
})

describe('the finding that engagement is elsewhere', () => {
  const seen = { seen: true, wheel: 0.1, within: 0.007, strokes: 90 } as const
  const at = (computed: number | null) => engagementFinding(seen, computed, say)?.id
  it('comes beyond what the run leaves open and a tape’s reading', () => {
    const open = seen.within + ENGAGEMENT_OFF
    expect([at(0.1 + 0.9 * open), at(0.1 - 0.9 * open)]).toEqual([undefined, undefined])
    expect([at(0.1 + 1.1 * open), at(0.1 - 1.1 * open)]).toEqual(['run-engagement-off', 'run-engagement-off'])
    expect(at(null)).toBe('run-engagement-off')
  })
})
