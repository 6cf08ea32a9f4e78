import { describe, expect, it } from 'vitest'
import { spacerEffect } from '../../../core/changes/spacer-effect.ts'
import { spacerWords } from '../../../core/changes/spacer-words.ts'
import { ATMOSPHERE, INCH, POUND_FORCE, PSI } from '../../../core/units/constants.ts'
import { sayIn } from '../../../core/units/saying.ts'
import { close } from '../../close.ts'
import { plainCorner, plainStop } from '../plain-corner.ts'

const say = sayIn('inch')
const spacer = { length: INCH, outerDiameter: 2.25 * INCH, wall: 0.12 * INCH }
const longShock = { ...plainCorner().shock, stroke: 14 * INCH, showing: 10 * INCH }
const corner = (rated?: number) =>
  plainCorner({
    shock: longShock,
    stop: plainStop(rated === undefined ? {} : { body: { bore: 3 * INCH, ratedPressure: rated } }),
  })

/** Area π in², 4 in of stroke, gas 5 in times the area: squeezed 5 to 1; with 1 in of spacer and its oil left out, 4 to 1. */
describe('what 1 in of spacer does to a stop anybody can follow', () => {
  const effect = spacerEffect(corner(), spacer, say)
  if (!effect.ok) throw new Error(effect.reason)
  const [p, n] = [(200 * PSI + ATMOSPHERE) / PSI, 1.4]

  it('leaves it closed 6 in from ride height, met after 3 in instead of 2', () => {
    close(effect.closesAt / INCH, 6, { rel: 1e-12 })
    for (const at of [effect.closesAtWheel.before, effect.closesAtWheel.after]) close(at! / INCH, 6, { rel: 1e-10 })
    close(effect.engagement.before! / INCH, 2, { rel: 1e-10 })
    close(effect.engagement.after! / INCH, 3, { rel: 1e-10 })
    close(effect.share.before, 1 / 3, { rel: 1e-9 })
    close(effect.share.after, 1 / 2, { rel: 1e-9 })
  })

  it('takes force and energy from its end, by the gas law in closed form', () => {
    const force = (ratio: number) => Math.PI * (p * ratio ** n - ATMOSPHERE / PSI)
    close(effect.force.before / POUND_FORCE, force(5), { rel: 1e-9 })
    close(effect.force.after / POUND_FORCE, force(4), { rel: 1e-9 })
    const energy = (ratio: number, stroke: number) =>
      (p * Math.PI * (stroke + 1) * (ratio ** (n - 1) - 1)) / (n - 1) - (ATMOSPHERE / PSI) * Math.PI * stroke
    close(effect.energy.before / (POUND_FORCE * INCH), energy(5, 4), { rel: 1e-9 })
    close(effect.energy.after / (POUND_FORCE * INCH), energy(4, 3), { rel: 1e-9 })
  })

  it('is made up for by a charge of (5/4)^1.4 the pressure, or by oil that leaves a quarter less room', () => {
    const { sameForce } = effect.charge
    close(sameForce.found ? sameForce.value / PSI : Number.NaN, p * 1.25 ** n - ATMOSPHERE / PSI, { rel: 1e-9 })
    // Closed room x in³·in⁻² with (x + 3)/x = 5: three quarters of an inch, a quarter less than the inch there was.
    const oil = effect.oil.sameForce
    const metal = (Math.PI / 4) * (2.25 ** 2 - 2.01 ** 2)
    close(oil.found ? oil.value / INCH ** 3 : Number.NaN, metal - Math.PI / 4, { rel: 1e-9 })
    close(oil.found ? oil.pressure : Number.NaN, effect.pressure.before, { rel: 1e-9 })
  })

  it('says so', () => {
    const words = spacerWords(effect, 'inch', say)
    expect(words[0]).toBe('What stays: the closed position, 6 in along the stop from ride height.')
    expect(words[1]).toContain('engagement +2 in becomes +3 in; the coilover’s share 33 % becomes 50 %')
    expect(words[2]).toContain(
      'What it costs at the same charge: closed in a hit its force 6,374 lb becomes 4,651 lb (27 % less)',
    )
    expect(words[3]).toMatch(
      /^For the same force at closing: charge to 279 psi \(280 psi to the nearest 10 psi\), closed in a hit then at/,
    )
    expect(words[5]).toMatch(/^For the same force with the same charge: leave out 0\.02 cu in of oil/)
  })
})

describe('a spacer that cannot be made up for', () => {
  it('says when the rating forbids it', () => {
    const effect = spacerEffect(corner(1500 * PSI), spacer, say)
    expect(effect.ok && effect.charge.sameForce).toMatchObject({ found: true, overRated: true })
    expect(effect.ok && spacerWords(effect, 'inch', say)[3]).toContain('above what the body is rated for')
  })

  it('is refused like any other change', () =>
    expect(spacerEffect(corner(), { ...spacer, length: 4 * INCH }, say)).toEqual({
      ok: false,
      reason: 'A spacer of 4 in leaves nothing of the stroke of 4 in.',
    }))
})
