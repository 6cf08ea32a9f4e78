import { describe, expect, it } from 'vitest'
import type { Corner, HydraulicStop } from '../../../core/plan/schema.ts'
import { cutError } from '../../../core/spacer/cut.ts'
import { cutList } from '../../../core/spacer/cut-list.ts'
import { fitOf, fits } from '../../../core/spacer/fit.ts'
import { makingWords, strengthWords } from '../../../core/spacer/making.ts'
import { spacerStrength } from '../../../core/spacer/strength.ts'
import { INCH, POUND, POUND_FORCE, PSI } from '../../../core/units/constants.ts'
import { sayIn } from '../../../core/units/saying.ts'
import { close } from '../../close.ts'
import { plainCorner, plainStop } from '../plain-corner.ts'

const tube = (outer: number, wall: number) => ({ outerDiameter: outer * INCH, wall: wall * INCH })
const sizes = [
  tube(1.5, 0.25),
  tube(1.5, 0.095),
  tube(1.5, 0.12),
  tube(1.75, 0.12),
  tube(2.5, 0.12),
  tube(1.375, 0.083),
]
/** A shaft of 1.26 in in a body of 2 in, 1 in taken from its stroke, rebound of 250 lb at 20 in/s. */
const stop: HydraulicStop = plainStop({
  shaftDiameter: 1.26 * INCH,
  stroke: 3 * INCH,
  gap: 2 * INCH,
  body: { bore: 2 * INCH },
  rebound: [
    { velocity: 0, force: 0 },
    { velocity: 20 * INCH, force: 250 * POUND_FORCE },
  ],
})
const corner: Corner & { stop: HydraulicStop } = {
  ...plainCorner({ linkage: { kind: 'ratio', shock: 1, stop: 0.5 } }),
  stop,
}

describe('a tube against a stop', () => {
  it.each([
    ['fits', 1.5, 0.095],
    ['bore it', 1.5, 0.12],
    ['may need boring', 1.5, 0.1165],
    ['too loose on the shaft', 1.75, 0.12],
    ['too large for the body', 2.5, 0.12],
    ['too thin once bored', 1.375, 0.083],
    ['not in the tables', 0.25, 0.03],
  ] as const)('%s: %s by %s in', (verdict, outer, wall) =>
    expect(fitOf(tube(outer, wall), 1.26 * INCH, 2 * INCH).verdict).toBe(verdict),
  )

  it('is judged by its worst sizes: a thousandth less of body and it is too large', () => {
    const at = (body: number) => fitOf(tube(1.5, 0.095), 1.26 * INCH, body * INCH).verdict
    expect([at(1.5151), at(1.5149)]).toEqual(['fits', 'too large for the body'])
    const on = (shaft: number) => fitOf(tube(1.5, 0.095), shaft * INCH, null).verdict
    expect([on(1.2999), on(1.3001)]).toEqual(['fits', 'may need boring'])
  })

  it('bored is as thick as what is left', () => {
    const { boring, finished } = fitOf(tube(1.5, 0.25), 1.26 * INCH, null)
    close((boring?.to ?? Number.NaN) / INCH, 1.2665, { abs: 1e-9 })
    close((boring?.nominal ?? Number.NaN) / INCH, 0.2665, { abs: 1e-9 })
    close(finished.wall / INCH, (1.5 - 1.2665) / 2, { abs: 1e-9 })
  })

  it('comes before another that asks for more work', () =>
    expect(
      fits(sizes, 1.26 * INCH, 2 * INCH).map(({ verdict, size }) => [verdict, Math.round((size.wall / INCH) * 1000)]),
    ).toEqual([
      ['fits', 95],
      ['bore it', 120],
      ['bore it', 250],
      ['too thin once bored', 83],
      ['too loose on the shaft', 120],
      ['too large for the body', 120],
    ]))
})

describe('a cut list', () => {
  const made = cutList(corner, INCH, sizes, '1020')
  if (!made.ok) throw new Error('no tube')
  const { list } = made

  it('weighs what its tube weighs, and leaves out as much oil as its metal takes up', () => {
    close(list.mass / POUND, 1.4268 / 12, { rel: 1e-3 })
    close(list.oilLeftOut / INCH ** 3, 0.41932, { rel: 1e-4 })
  })

  it('says what 1/32 in either way does: 1/16 in of wheel at half the motion ratio', () => {
    expect(list.errors.map(({ off }) => off / INCH)).toEqual([-1 / 32, 1 / 32])
    for (const { moves, off } of list.errors) close(moves ?? Number.NaN, 2 * off, { rel: 1e-9 })
  })

  it('has nothing to say of a cut longer than the stroke, nor of another stop', () => {
    expect(cutError(corner, 3 * INCH).engagement).toBeNull()
    expect(cutError(plainCorner(), 0).engagement).toBeNull()
  })

  it('tells the shop how to make it, in either system', () => {
    const words = makingWords(list, sayIn('inch')).join('\n')
    expect(words).toContain('Tube 1.500 in outside, 0.095 in wall')
    expect(words).toContain('Cut it to 1.000 in, 0.031 in either way, both ends square within 0.005 in')
    expect(words).toContain('Leave out 0.42 cu in of oil')
    expect(makingWords(list, sayIn('metric')).join('\n')).toContain('both ends square within 0.127 mm')
    const bored = cutList(corner, INCH, [tube(1.5, 0.12)], '1020')
    const [, second] = bored.ok ? makingWords(bored.list, sayIn('inch')) : []
    expect(second).toBe(
      'Bore it to 1.2665 in: 0.007 in comes out of a bore of nominal size, up to 0.012 in out of the smallest.',
    )
  })

  it('names every size it tried when none does', () => {
    const none = cutList(corner, INCH, [tube(2.5, 0.12), tube(1.75, 0.12)], '1020')
    expect(none.ok ? [] : none.tried.map(({ verdict }) => verdict)).toEqual([
      'too loose on the shaft',
      'too large for the body',
    ])
  })
})

describe('the strength of a spacer', () => {
  it('without a rebound curve is against gas let go at once, and says it does not know the speed', () => {
    const { load, gas, speed } = spacerStrength({ ...stop, rebound: [] }, tube(1.5, 0.12), INCH, '1020')
    close(gas / POUND_FORCE, 200 * (Math.PI / 4) * 1.26 ** 2, { rel: 1e-9 })
    expect([load / gas, speed]).toEqual([2, null])
  })

  it('asks more of it the faster the shaft arrives, the hotter the gas and the longer the throw', () => {
    const factor = (other: Partial<HydraulicStop>, charge?: number) =>
      spacerStrength({ ...stop, ...other }, tube(1.5, 0.12), INCH, '1020', charge).yieldFactor
    expect(factor({ rebound: [] })).toBeGreaterThan(factor({}))
    expect(factor({}, 300 * PSI)).toBeLessThan(factor({}))
    expect(factor({ stroke: 4 * INCH })).toBeLessThan(factor({}))
  })

  it('is not enough where a thin tube meets a shaft with no damping to speak of', () => {
    const loose = [
      { velocity: 0, force: 0 },
      { velocity: 10, force: 400 },
    ]
    const thin = spacerStrength({ ...stop, rebound: loose }, tube(1.5, 0.095), INCH, '1015')
    expect(thin.enough).toBe(false)
    const list = cutList({ ...corner, stop: { ...stop, rebound: loose } }, INCH, [tube(1.5, 0.095)], '1015')
    expect(list.ok && strengthWords(list.list, sayIn('inch'))).toContain('less than the 3 asked for')
  })

  it('of a stop without charge is not asked for', () =>
    expect(spacerStrength({ ...stop, charge: 0 }, tube(1.5, 0.12), INCH, '1020').yieldFactor).toBe(
      Number.POSITIVE_INFINITY,
    ))
})
