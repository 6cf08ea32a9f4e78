import { describe, expect, it } from 'vitest'
import { cornerModel } from '../../../core/corner/corner.ts'
import { restingPosition } from '../../../core/corner/static-position.ts'
import { parsePlan } from '../../../core/plan/parse.ts'
import { type StartingAnswers, startingPlan } from '../../../core/plan/starting.ts'
import { GRAVITY, INCH } from '../../../core/units/constants.ts'
import { close } from '../../close.ts'

const answers: StartingAnswers = {
  title: 'Sorrel',
  units: 'inch',
  axle: 'rear',
  suspension: 'solid',
  cornerMass: 476,
  shockStroke: 14.3 * INCH,
  shaftShowing: 8.1 * INCH,
  ratio: { shock: 0.613, stop: 0.5 },
  springRates: [44_000, 61_000],
  stop: { stroke: 3 * INCH, gap: 2 * INCH },
}

/** The lengths of a started plan that somebody chose, and not the car. */
function assumedLengths(given: StartingAnswers): number[] {
  const axle = startingPlan(given).setups[0]!.axles[0]!
  const { springs, crossover } = axle.corner.springs
  return [
    ...springs.flatMap(({ freeLength, solidLength }) => [freeLength, solidLength]),
    crossover!.gap,
    axle.shockSpacing!,
    axle.stopSpacing!,
  ]
}

describe('a guided start', () => {
  it('assumes whole sixteenths of an inch', () => {
    for (const length of assumedLengths(answers).map(metres => (metres / INCH) * 16))
      close(length, Math.round(length), { rel: 0, abs: 1e-9 })
  })

  it('assumes whole millimetres in a metric plan', () => {
    const lengths = assumedLengths({ ...answers, units: 'metric', springRates: [61_000, 44_000] })
    // Sizes of the trade stay what they are: the tender is an inch spring anywhere.
    for (const length of lengths.slice(2).map(metres => metres * 1000))
      close(length, Math.round(length), { rel: 0, abs: 1e-9 })
  })

  it('still holds the car where it was measured, and is a plan', () => {
    const plan = startingPlan({ ...answers, stop: null })
    const { corner } = plan.setups[0]!.axles[0]!
    const weight = (corner.cornerMass - corner.unsprungMass) * GRAVITY
    expect(parsePlan(plan).ok).toBe(true)
    close(restingPosition(cornerModel(corner), weight), 0, { rel: 0, abs: 1e-5 })
  })

  it.each([
    ['springs and weight', { springRates: [null, null], cornerMass: null }],
    ['one spring and weight', { springRates: [null], cornerMass: null }],
    ['springs', { springRates: [null, null] }],
    ['the main spring', { springRates: [44_000, null] }],
    ['the tender', { springRates: [null, 61_000] }],
    ['the weight', { cornerMass: null }],
  ] as const)(
    'goes without %s: what is assumed and marked holds the car within a sixteenth of where it was measured',
    (_what, open) => {
      const given = { ...answers, suspension: 'independent', stop: null, ...open } as const
      const plan = startingPlan(given)
      expect(parsePlan(plan).ok).toBe(true)
      const { corner, assumed } = plan.setups[0]!.axles[0]!
      const weight = (corner.cornerMass - corner.unsprungMass) * GRAVITY
      close(restingPosition(cornerModel(corner), weight), 0, { rel: 0, abs: INCH / 16 })
      const marks = given.springRates.map((_, i) => assumed!.includes(`corner.springs.springs.${i}.rate`))
      expect(marks).toEqual(given.springRates.map(rate => rate === null))
      expect(assumed!.includes('corner.cornerMass')).toBe(given.cornerMass === null)
    },
  )

  it('a shock that is nearly out at ride height still gives springs a car could have', () => {
    const plan = startingPlan({ ...answers, shaftShowing: 14.3 * INCH, springRates: [null], cornerMass: null })
    expect(parsePlan(plan).ok).toBe(true)
    const { rate } = plan.setups[0]!.axles[0]!.corner.springs.springs[0]!
    expect(rate).toBeGreaterThan(5000)
    expect(rate).toBeLessThan(500_001)
  })
})
