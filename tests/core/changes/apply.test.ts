import { describe, expect, it } from 'vitest'
import { applyChange, applyChanges, changeAxle } from '../../../core/changes/apply.ts'
import type { Change } from '../../../core/changes/change.ts'
import { anotherStop } from '../../../core/changes/stop-rules.ts'
import { changeWords } from '../../../core/changes/words.ts'
import { cornerModel } from '../../../core/corner/corner.ts'
import { restingPosition } from '../../../core/corner/static-position.ts'
import type { Corner, HydraulicStop, Springs } from '../../../core/plan/schema.ts'
import { INCH, POUND_FORCE, PSI } from '../../../core/units/constants.ts'
import { sayIn } from '../../../core/units/saying.ts'
import { close } from '../../close.ts'
import { seed } from '../../seeds/seed.ts'
import { LB_IN, plainCorner, plainStop } from '../plain-corner.ts'

const say = sayIn('inch')
const inch = (value: number): number => value * INCH
const tube = { outerDiameter: inch(2.25), wall: inch(0.12) }
const longShock = { ...plainCorner().shock, stroke: inch(14), showing: inch(10) }
/** Holds 600 lb at ride height on 200 lb/in; stop of 4 in stroke, 2 in off its pad, at 200 psi. */
const corner = plainCorner({
  shock: longShock,
  stop: plainStop(),
  springs: { ...plainCorner().springs, preload: inch(-1) },
})

function madeOf(changes: Change | Change[], from: Corner = corner): Corner {
  const made = applyChanges(from, [changes].flat(), say)
  if (!made.ok) throw new Error(made.reason)
  return made.corner
}

const stopAfter = (changes: Change | Change[], from?: Corner): HydraulicStop => {
  const { stop } = madeOf(changes, from)
  if (stop?.kind !== 'hydraulic') throw new Error('no hydraulic stop')
  return stop
}

const reason = (change: Change, from: Corner = corner): string => {
  const made = applyChange(from, change, say)
  return made.ok ? 'made' : made.reason
}

describe('changes of the stop', () => {
  it('a demo plan’s own proposal is its spacer and its charge', () => {
    const [found, proposed] = seed('before-and-after.stopgap').setups
    const rear = (setup: typeof found) => setup!.axles.find(({ id }) => id === 'rear')!
    const made = changeAxle(
      rear(found),
      [
        { kind: 'spacer', length: inch(1), outerDiameter: inch(1.5), wall: inch(0.095), oilLeftOut: 0.4 * INCH ** 3 },
        { kind: 'charge', charge: 180 * PSI },
      ],
      say,
    )
    if (!made.ok) throw new Error(made.reason)
    const [got, wanted] = [made.axle.corner.stop, rear(proposed).corner.stop] as HydraulicStop[]
    for (const key of ['stroke', 'gap', 'charge', 'gasVolume'] as const)
      close(got![key], wanted![key], { rel: 1e-6 }, key)
    expect(Object.keys(got!).sort()).toEqual(Object.keys(wanted!).sort())
    expect(made.axle.assumed).toEqual(rear(proposed).assumed)
  })

  it('a spacer of 1 in: stroke 3, gap 3, gas less by area and metal, more by the oil left out', () => {
    const { stroke, gap, gasVolume, spacer } = stopAfter({ kind: 'spacer', length: inch(1), ...tube, oilLeftOut: 1e-6 })
    const metal = (Math.PI / 4) * (2.25 ** 2 - 2.01 ** 2) * INCH ** 3
    close(stroke, inch(3), { abs: 1e-12 })
    close(gap, inch(3), { abs: 1e-12 })
    close(gasVolume, (5 - 1) * Math.PI * INCH ** 3 - metal + 1e-6, { abs: 1e-15 })
    expect(spacer).toEqual({ length: inch(1), ...tube })
  })

  it('a shim, a move, a charge and oil each do what they say', () => {
    close(stopAfter({ kind: 'pad shim', thickness: inch(0.5) }).gap, inch(1.5), { abs: 1e-12 })
    close(stopAfter({ kind: 'move stop', away: inch(0.75) }).gap, inch(2.75), { abs: 1e-12 })
    expect(stopAfter({ kind: 'charge', charge: 250 * PSI }).charge).toBe(250 * PSI)
    close(stopAfter({ kind: 'oil', added: INCH ** 3 }).gasVolume, (5 * Math.PI - 1) * INCH ** 3, { abs: 1e-15 })
  })

  it('another stop closes where the one before it did', () => {
    const { kind, ...longer } = plainStop({ stroke: inch(5), gasVolume: Math.PI * 6 * INCH ** 3 })
    const change = anotherStop(corner, { kind, ...longer })
    close(change?.stop?.gap ?? Number.NaN, inch(1), { abs: 1e-12 })
    const foam = anotherStop(corner, {
      kind: 'elastomer',
      curve: [
        { deflection: 0, force: 0 },
        { deflection: inch(2), force: 5000 },
      ],
    })
    close(foam?.stop?.gap ?? Number.NaN, inch(4), { abs: 1e-12 })
    expect(madeOf(foam!).stop?.kind).toBe('elastomer')
    expect(anotherStop(plainCorner(), { kind, ...longer })).toBeNull()
  })

  it('say what to look after: a charge beyond the usual, a pressure beyond the rating', () => {
    const rated = { ...corner, stop: plainStop({ body: { bore: inch(3), ratedPressure: 2000 * PSI } }) }
    const made = applyChange(rated, { kind: 'charge', charge: 450 * PSI }, say)
    expect(made.ok && made.notes).toEqual([
      'Closed in a hit it reaches 4,408 psi; its body is rated 2,000 psi.',
      'A charge of 450 psi is more than usual: ask the maker of its seals and body.',
    ])
  })
})

describe('what cannot be built is refused', () => {
  const rated = { ...corner, stop: plainStop({ body: { bore: inch(2.25), ratedPressure: 2000 * PSI } }) }
  const foam = plainCorner({
    stop: {
      kind: 'elastomer',
      gap: 0.02,
      curve: [
        { deflection: 0, force: 0 },
        { deflection: 0.05, force: 5000 },
      ],
    },
  })
  const once = madeOf({ kind: 'spacer', length: inch(1), ...tube })
  const ready: [string, Change, Corner?][] = [
    ['A spacer of 4 in leaves nothing of the stroke of 4 in.', { kind: 'spacer', length: inch(4), ...tube }],
    ['A spacer has a length of more than 0.', { kind: 'spacer', length: 0, ...tube }],
    [
      'The spacer’s bore of 2.000 in does not slide over a shaft of 2.000 in: bore it out.',
      { kind: 'spacer', length: inch(1), outerDiameter: inch(2.25), wall: inch(0.125) },
    ],
    [
      'The spacer, 2.250 in outside, does not go into a body of 2.250 in bore.',
      { kind: 'spacer', length: inch(1), ...tube },
      rated,
    ],
    [
      'The spacer is not a tube: its wall must be more than 0 and less than half its diameter.',
      { kind: 'spacer', length: inch(1), outerDiameter: inch(2.25), wall: inch(1.2) },
    ],
    [
      'There is a spacer of another tube inside already: take it out first, then put in one of the whole length.',
      { kind: 'spacer', length: inch(1), outerDiameter: inch(2.5), wall: inch(0.2) },
      once,
    ],
    [
      'A spacer goes inside a hydraulic stop, and this one is an elastomer.',
      { kind: 'spacer', length: inch(1), ...tube },
      foam,
    ],
    [
      'A spacer goes inside a hydraulic stop, and there is no stop.',
      { kind: 'spacer', length: inch(1), ...tube },
      plainCorner(),
    ],
    ['No spacer is inside.', { kind: 'spacer out', length: inch(1), ...tube }],
    ['The spacer inside is another one, 1 in long.', { kind: 'spacer out', length: inch(2), ...tube }, once],
    [
      'A charge of 2,500 psi is above what its body is rated for, 2,000 psi.',
      { kind: 'charge', charge: 2500 * PSI },
      rated,
    ],
    ['A charge is 0 or more, gauge: a stop is never drawn below the atmosphere.', { kind: 'charge', charge: -1 }],
    ['Only a hydraulic stop has a charge, and this one is an elastomer.', { kind: 'charge', charge: 1 }, foam],
    [
      'There is room for less than 3.14 cu in more oil: beyond that the stop locks before it closes.',
      { kind: 'oil', added: 3.2 * INCH ** 3 },
    ],
    ['There is no stop.', { kind: 'pad shim', thickness: 0.01 }, plainCorner()],
    [
      'The stop would be closed 1 in before ride height is reached: the car could not come down that far.',
      { kind: 'pad shim', thickness: inch(7) },
    ],
    ['One spring has no divider.', { kind: 'crossover', gap: 0.01 }],
    [
      'There is no spring 2: the coilover has 1.',
      { kind: 'spring', place: 1, spring: { name: '', rate: 1e4, freeLength: 0.3, solidLength: 0.1 }, keep: 'preload' },
    ],
    [
      'A spring of 12 in that is solid at 12 in cannot work.',
      {
        kind: 'spring',
        place: 0,
        spring: { name: '', rate: 1e4, freeLength: inch(12), solidLength: inch(12) },
        keep: 'preload',
      },
    ],
    [
      'No preload of that spring holds the car at its ride height.',
      {
        kind: 'spring',
        place: 0,
        spring: { name: '', rate: 1e4, freeLength: inch(6), solidLength: inch(4) },
        keep: 'ride height',
      },
    ],
    ['A preload of 20 in is more than the springs can give, 16 in.', { kind: 'preload', preload: inch(20) }],
    ['It would not sit: the car goes to full droop.', { kind: 'preload', preload: inch(6) }],
    ['It has only 4 in of droop: ride height cannot change by 5 in.', { kind: 'ride height', rise: inch(5) }],
    ['There is no wheel travel at +9 in.', { kind: 'settle', at: inch(9) }],
  ]
  it.each(ready)('%s', (sentence, change, from) => expect(reason(change, from)).toBe(sentence))

  it('too much oil left in beside a spacer locks it, and how much is said', () =>
    expect(reason({ kind: 'spacer', length: inch(1), ...tube, oilLeftOut: -3.2 * INCH ** 3 })).toMatch(
      /^Too much oil: the shaft pushes aside [\d.]+ cu in more than there is room for, and the stop locks before it closes\./,
    ))

  it('of several, the first that cannot be made, with its place', () =>
    expect(
      applyChanges(
        corner,
        [
          { kind: 'charge', charge: PSI },
          { kind: 'spacer out', length: 1, ...tube },
        ],
        say,
      ),
    ).toEqual({
      ok: false,
      at: 1,
      reason: 'No spacer is inside.',
    }))
})

describe('changes of springs', () => {
  it('an inch more preload at motion ratio 1 lifts it an inch; showing, gap and clearances follow', () => {
    const made = madeOf({ kind: 'preload', preload: 0 }, { ...corner, clearance: { bump: inch(9), droop: inch(3.5) } })
    close(made.shock.showing, inch(11), { abs: 1e-10 })
    close(made.stop!.gap, inch(3), { abs: 1e-10 })
    close(made.clearance.bump!, inch(10), { abs: 1e-10 })
    close(made.clearance.droop!, inch(2.5), { abs: 1e-10 })
  })

  it('an inch of ride height at half the motion ratio asks for half an inch of preload', () => {
    const half = { ...corner, linkage: { kind: 'ratio', shock: 0.5, stop: 0.5 } as const }
    const made = madeOf({ kind: 'ride height', rise: inch(1) }, half)
    close(made.springs.preload - half.springs.preload, inch(0.5), { abs: 1e-10 })
    close(made.shock.showing - half.shock.showing, inch(0.5), { abs: 1e-10 })
    close(made.stop!.gap - half.stop!.gap, inch(0.5), { abs: 1e-10 })
  })

  it('a spring twice as stiff keeps the ride height with half the compression', () => {
    const spring = { ...corner.springs.springs[0]!, rate: 400 * LB_IN }
    const made = madeOf({ kind: 'spring', place: 0, spring, keep: 'ride height' })
    close(made.springs.preload + inch(4), inch(1.5), { abs: 1e-10 })
    expect(made.shock.showing).toBe(corner.shock.showing)
    // On the same preload it holds 600 lb after 1.5 in instead of 3: 1.5 in higher.
    close(madeOf({ kind: 'spring', place: 0, spring, keep: 'preload' }).shock.showing, inch(11.5), { abs: 1e-10 })
  })

  it('the collar turned down by 1 in takes the divider with it by its share, and its gap grows by that', () => {
    const two: Springs = {
      springs: [
        { name: 'tender', rate: 100 * LB_IN, freeLength: inch(10), solidLength: inch(2) },
        { name: 'main', rate: 300 * LB_IN, freeLength: inch(14), solidLength: inch(4) },
      ],
      preload: inch(2),
      crossover: { gap: inch(3) },
    }
    const made = madeOf({ kind: 'preload', preload: inch(3) }, { ...corner, springs: two })
    // Tender and main share an inch as 3 to 1: the divider comes down by a quarter.
    close(made.springs.crossover!.gap, inch(3.25), { abs: 1e-12 })
    expect(reason({ kind: 'preload', preload: inch(-11) }, { ...corner, springs: two })).toMatch(
      /^(It would|The divider)/,
    )
    close(madeOf({ kind: 'crossover', gap: inch(2) }, { ...corner, springs: two }).springs.crossover!.gap, inch(2), {
      abs: 1e-12,
    })
    expect(madeOf({ kind: 'crossover', gap: null }, { ...corner, springs: two }).springs.crossover).toBeNull()
  })

  it('a car with its divider on the ring is lifted with the ring, not by the collar alone', () => {
    const locked: Springs = {
      springs: [
        { name: 'tender', rate: 100 * LB_IN, freeLength: inch(10), solidLength: inch(2) },
        { name: 'main', rate: 150 * LB_IN, freeLength: inch(14), solidLength: inch(4) },
      ],
      preload: 0,
      crossover: { gap: inch(0.5) },
    }
    const from = { ...corner, springs: locked }
    const made = applyChange(from, { kind: 'ride height', rise: inch(1) }, say)
    if (!made.ok) throw new Error(made.reason)
    // The main goes on carrying 3.5 in: at 3 in of shaft another inch must come from preload, of which it takes 2 in 5.
    close(made.corner.springs.preload, inch(2.5), { abs: 1e-9 })
    expect(made.corner.springs.crossover!.gap).toBe(inch(0.5))
    expect(made.notes.join(' ')).toContain('move the ring too, so that its gap at full extension stays 0.500 in')
    // The collar alone: the gap grows by what the divider comes down, and the car stays where it is.
    const collar = madeOf({ kind: 'preload', preload: inch(1) }, from)
    close(collar.shock.showing, from.shock.showing, { abs: 1e-9 })
  })

  it('measured anew where it rests, it rests at 0 and every part is where it was', () => {
    const heavier = { ...corner, springs: { ...corner.springs, preload: inch(-0.25) } }
    const weight = { ...heavier, cornerMass: 322 }
    const made = madeOf({ kind: 'settle', at: inch(-0.5) }, weight)
    const [was, is] = [cornerModel(weight), cornerModel(made)]
    for (const wheel of [-2, 0, 1.9, 3, 5]) {
      close(is.forces(inch(wheel + 0.5), 'slow').total, was.forces(inch(wheel), 'slow').total, { rel: 1e-10 })
    }
    const load = 650 * POUND_FORCE
    close(restingPosition(is, load) - inch(0.5), restingPosition(was, load), { abs: 1e-10 })
  })

  it('of a real arm keep its geometry: forces over the travel are the same, measured from elsewhere', () => {
    for (const { corner: real } of seed('before-and-after.stopgap').setups[0]!.axles) {
      const rise = inch(0.75)
      const moved = madeOf({ kind: 'settle', at: -rise }, real)
      const [was, is] = [cornerModel(real), cornerModel(moved)]
      for (const wheel of [-0.1, -0.02, 0, 0.03, 0.08, 0.2])
        close(is.forces(wheel + rise, 'fast').total, was.forces(wheel, 'fast').total, { rel: 1e-9 })
      if (real.linkage.kind === 'arm' && moved.linkage.kind === 'arm')
        close(moved.linkage.wheel[2], real.linkage.wheel[2], { abs: 1e-12 })
    }
  })
})

describe('changes in words', () => {
  const words: [Change, string][] = [
    [{ kind: 'spacer', length: inch(1.25), ...tube }, 'a 1 1/4 in spacer inside the stop'],
    [{ kind: 'spacer out', length: inch(1.25), ...tube }, 'the 1 1/4 in spacer out of the stop'],
    [{ kind: 'pad shim', thickness: inch(0.5) }, 'a 1/2 in shim on the pad'],
    [{ kind: 'pad shim', thickness: inch(-0.5) }, 'a 1/2 in shim off the pad'],
    [{ kind: 'move stop', away: inch(-1) }, 'the stop 1 in towards the pad'],
    [{ kind: 'charge', charge: 200 * PSI }, 'the stop charged to 200 psi'],
    [{ kind: 'oil', added: -(INCH ** 3) }, '1.00 cu in of oil out of the stop'],
    [{ kind: 'stop', stop: null }, 'no stop'],
    [{ kind: 'stop', stop: plainStop() }, 'a stop of 4 in stroke with a 2 in shaft at 200 psi'],
    [
      {
        kind: 'spring',
        place: 0,
        spring: { name: 'main', rate: 300 * LB_IN, freeLength: 1, solidLength: 0.5 },
        keep: 'ride height',
      },
      'a 300 lb/in main at the same ride height',
    ],
    [{ kind: 'preload', preload: inch(2) }, 'the preload at 2 in'],
    [{ kind: 'crossover', gap: null }, 'the divider ring off'],
    [{ kind: 'crossover', gap: inch(3) }, 'the divider 3 in from its ring'],
    [{ kind: 'ride height', rise: inch(1) }, 'ride height 1 in higher by preload'],
    [{ kind: 'settle' }, 'ride height measured anew'],
    [{ kind: 'hold', weight: 1 }, 'the preload that holds its ride height'],
    [{ kind: 'springs', springs: corner.springs }, 'the whole spring pack as given'],
  ]
  it.each(words)('%o', (change, text) => expect(changeWords(change, say)).toBe(text))
})
