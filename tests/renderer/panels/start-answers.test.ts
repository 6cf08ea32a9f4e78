import { describe, expect, test } from 'vitest'
import { INCH } from '../../../core/units/constants.ts'
import { asked, type Entry, type StartForm, startFrom } from '../../../renderer/panels/dialogs/start-answers.ts'

const texts: Record<Entry, string> = {
  cornerMass: '1,040',
  stroke: '14',
  showing: '7 1/4',
  stopStroke: '3 1/2',
  gap: '1 1/4',
  ratioShock: '0.7',
  ratioStop: '0.55',
  rise: '2',
  shockClosed: '1 3/8',
  gapClosed: '1 1/16',
  tender: '250',
  main: '350',
}

const form = (change: Partial<StartForm> = {}, words: Partial<Record<Entry, string>> = {}): StartForm => ({
  title: ' Mule ',
  units: 'inch',
  axle: 'rear',
  suspension: 'independent',
  stop: 'yes',
  springs: 'two',
  ratios: 'jack',
  ...change,
  texts: { ...texts, ...words },
})

describe('a guided start', () => {
  test('makes a plan of what a tape says, with the ratios from jacking the wheel up once', () => {
    const started = startFrom(form())
    if (!started.ok) throw new Error(JSON.stringify(started.errors))
    const { corner, assumed } = started.plan.setups[0]!.axles[0]!
    expect(started.plan.title).toBe('Mule')
    expect(corner.linkage).toEqual({ kind: 'ratio', shock: 1.375 / 2, stop: 1.0625 / 2 })
    expect(corner.stop?.gap).toBeCloseTo(1.25 * INCH, 12)
    expect(corner.springs.springs).toHaveLength(2)
    expect(assumed).not.toContain('corner.stop.gap')
    expect(assumed).toContain('corner.stop.charge')
  })

  test('asks only what the choices leave open', () => {
    expect(asked(form({ stop: 'no', springs: 'one', ratios: 'known' }))).toEqual([
      'stroke',
      'showing',
      'ratioShock',
      'main',
      'cornerMass',
    ])
    const started = startFrom(form({ stop: 'no', springs: 'one', ratios: 'known' }, { gap: 'nonsense', tender: '' }))
    expect(started.ok && started.plan.setups[0]!.axles[0]!.corner.stop).toBeNull()
  })

  test('says at each entry what is missing or no measure', () => {
    const started = startFrom(form({}, { showing: '', gap: 'wide' }))
    expect(started).toMatchObject({
      ok: false,
      errors: { showing: expect.stringContaining('Nothing entered.'), gap: expect.stringContaining('Not a number.') },
    })
  })

  test('says at the entry what the others do not go with', () => {
    const started = startFrom(form({}, { showing: '15' }))
    expect(started).toMatchObject({
      ok: false,
      errors: { showing: expect.stringContaining('More than 14 in of stroke.') },
    })
  })

  test('does not divide by a wheel that did not rise', () => {
    expect(startFrom(form({}, { rise: '0' }))).toMatchObject({ ok: false, errors: { rise: expect.any(String) } })
  })

  test('an impossible ratio is told where it was entered', () => {
    expect(startFrom(form({}, { shockClosed: '-1' }))).toMatchObject({
      ok: false,
      errors: { shockClosed: expect.any(String) },
    })
    expect(startFrom(form({ ratios: 'known' }, { ratioStop: '0' }))).toMatchObject({
      ok: false,
      errors: { ratioStop: expect.any(String) },
    })
  })

  test('six measurements are enough: springs and weight may stay empty, and are marked as assumed', () => {
    const six = form({ ratios: 'known' }, { tender: '', main: ' ', cornerMass: '' })
    const started = startFrom(six)
    if (!started.ok) throw new Error(JSON.stringify(started.errors))
    const { corner, assumed } = started.plan.setups[0]!.axles[0]!
    expect(corner.springs.springs).toHaveLength(2)
    expect(assumed).toEqual(
      expect.arrayContaining([
        'corner.cornerMass',
        'corner.springs.springs.0.rate',
        'corner.springs.springs.1.rate',
        'corner.unsprungMass',
      ]),
    )
    expect(assumed).not.toContain('corner.linkage.shock')
  })

  test('what may stay empty is still read when it is not', () => {
    expect(startFrom(form({}, { main: 'stiff' }))).toMatchObject({
      ok: false,
      errors: { main: expect.stringContaining('Not a number.') },
    })
  })
})
