import { describe, expect, it } from 'vitest'
import type { Finding } from '../../../core/budget/results.ts'
import type { Axle, Corner } from '../../../core/plan/schema.ts'
import { INCH, POUND, PSI } from '../../../core/units/constants.ts'
import { LB_IN, plainCorner, plainStop } from '../plain-corner.ts'
import { found } from './found.ts'

const stop = (gap: number, stroke: number, other = {}) =>
  plainStop({ gap: gap * INCH, stroke: stroke * INCH, ...other })
const main = (freeLength: number, preload = 0) => ({
  springs: {
    springs: [{ name: 'main', rate: 200 * LB_IN, freeLength: freeLength * INCH, solidLength: 4 * INCH }],
    preload: preload * INCH,
    crossover: null,
  },
})
const touches = (bump: number) => ({ clearance: { bump: bump * INCH, droop: null } })
/** Two alike springs: half of every inch of shaft is the tender's. Full droop is 6 in below ride height. */
const dual = (crossesAt: number | null) => ({
  springs: {
    springs: [
      { name: 'tender', rate: 400 * LB_IN, freeLength: 12 * INCH, solidLength: 2 * INCH },
      { name: 'main', rate: 400 * LB_IN, freeLength: 20 * INCH, solidLength: 4 * INCH },
    ],
    preload: 0,
    crossover: crossesAt === null ? null : { gap: ((6 + crossesAt) / 2) * INCH },
  },
})
const rows = (last: number): Partial<Corner> => ({
  linkage: {
    kind: 'table',
    rows: [-6, 0, 3, 6].map(wheel => {
      const moved = wheel < 6 ? wheel : last
      return { wheel: wheel * INCH, shock: moved * INCH, stop: moved * INCH }
    }),
  },
  ...touches(5.9),
})
const ends = (wheel: number): Partial<Corner> => ({
  linkage: {
    kind: 'table',
    rows: [-6, 0, wheel].map(at => ({ wheel: at * INCH, shock: at * INCH, stop: at * INCH })),
  },
})
const charged = (ratedPressure: number) => ({
  stop: stop(2, 3, { body: { bore: 0.06, ratedPressure: ratedPressure * PSI } }),
})
const gas = { shock: { ...plainCorner().shock, gas: { charge: 150 * PSI, volume: 5e-4 } } }

interface Case {
  readonly id: string
  readonly severity: Finding['severity']
  /** Just short of where the rule begins, and just past it; further on where the sentence needs it. */
  readonly quiet: Partial<Corner>
  readonly speaks: Partial<Corner>
  readonly assumed?: Axle['assumed']
  readonly says: string
  readonly remedy: string
}

/** By hand: forces are 200 lb/in times inches of shaft, lengths add along a motion ratio of 1. */
const CASES: readonly Case[] = [
  {
    id: 'rides-on-stop',
    severity: 'caution',
    quiet: { stop: stop(0.001, 4) },
    speaks: { stop: stop(-0.001, 4) },
    says: 'It rides on its stop, which carries less than 1 lb, less than 1 % of the sprung weight.',
    remedy: 'More preload or rate, or a gap above 0 in.',
  },
  {
    // It rests an inch higher, where the springs hold 1000 lb of the 1200.
    id: 'rides-on-stop',
    severity: 'caution',
    quiet: { stop: stop(0.001, 4) },
    speaks: { stop: stop(-1, 4) },
    says: 'It rides on its stop, which carries 200 lb, 17 % of the sprung weight.',
    remedy: 'More preload or rate, or a gap above 0 in.',
  },
  {
    // A sixteenth is 12.5 lb.
    id: 'off-ride-height',
    severity: 'note',
    quiet: { cornerMass: 1312 * POUND },
    speaks: { cornerMass: 1313 * POUND },
    says: 'The corner lacks 13 lb: it should sit 1/16 in lower than measured.',
    remedy:
      'Weigh it and tape the shaft again: 13 lb less weight, 1/16 in more preload or springs 1 % stiffer than entered would explain it.',
  },
  {
    id: 'little-coilover-travel',
    severity: 'caution',
    quiet: { stop: stop(2, 3.04) },
    speaks: { stop: stop(2, 3.1) },
    says: 'The stop engages early: 39 % of bump travel is on the coilover, usual 40 %.',
    remedy: 'Engage at +2 1/16 in: a gap of 2 1/16 in, by a 1/16 in spacer inside the stop.',
  },
  {
    id: 'shock-closes-first',
    severity: 'danger',
    quiet: { stop: stop(3, 2.99) },
    speaks: { stop: stop(3, 3.01) },
    says: 'The shock closes first with less than 1/16 in of the stop still open: it takes the hit metal to metal.',
    remedy: 'A smaller gap, a pad shim, or a mount that shows 1/2 in more shaft.',
  },
  {
    id: 'shock-nearly-closes',
    severity: 'caution',
    quiet: { stop: stop(3, 2.499) },
    speaks: { stop: stop(3, 2.501) },
    says: 'At full bump just under 1/2 in of shaft is left; keep 1/2 in.',
    remedy: 'End the travel less than 1/16 in of shaft sooner: gap or pad shim.',
  },
  {
    id: 'shock-nearly-closes',
    severity: 'caution',
    quiet: { stop: stop(3, 2.499) },
    speaks: { stop: stop(3, 2.75) },
    says: 'At full bump only 1/4 in of shaft is left; keep 1/2 in.',
    remedy: 'End the travel 1/4 in of shaft sooner: gap or pad shim.',
  },
  {
    id: 'coil-binds-first',
    severity: 'danger',
    quiet: { ...main(15.001), ...touches(5) },
    speaks: { ...main(14.999), ...touches(5) },
    says: 'The springs bind first, at +5 in.',
    remedy: 'A longer main spring, less preload, or a stop that closes sooner.',
  },
  {
    id: 'coil-nearly-binds',
    severity: 'caution',
    quiet: { ...main(15.251), ...touches(5) },
    speaks: { ...main(15.125), ...touches(5) },
    says: 'The main spring has only 1/8 in left to coil bind at full bump; keep 1/4 in.',
    remedy: 'A longer main spring or less preload.',
  },
  {
    id: 'stop-never-met',
    severity: 'danger',
    quiet: { stop: stop(4.999, 1), ...touches(5) },
    speaks: { stop: stop(5.001, 1), ...touches(5) },
    says: 'The stop is never met: chassis contact ends bump with less than 1/16 in of gap left.',
    remedy: 'Bring the pad or stop at least 1/16 in closer.',
  },
  {
    id: 'stop-never-met',
    severity: 'danger',
    quiet: { stop: stop(4.999, 1), ...touches(5) },
    speaks: { stop: stop(5.75, 1), ...touches(5) },
    says: 'The stop is never met: chassis contact ends bump with 3/4 in of gap left.',
    remedy: 'Bring the pad or stop at least 3/4 in closer.',
  },
  {
    id: 'stop-open-at-contact',
    severity: 'danger',
    quiet: { stop: stop(3, 2.03), ...touches(5) },
    speaks: { stop: stop(3, 2.04), ...touches(5) },
    says: 'The chassis touches with 1/16 in of the stop still open.',
    remedy: 'A gap or pad shim 1/16 in closer lets the stop end it.',
  },
  {
    id: 'stop-open-at-linkage-end',
    severity: 'danger',
    quiet: { stop: stop(3, 2), ...ends(5.1) },
    speaks: { stop: stop(3, 2.5), ...ends(5) },
    says: 'The linkage runs out with 1/2 in of the stop still open.',
    remedy: 'A gap or pad shim 1/2 in closer lets the stop end it.',
  },
  {
    id: 'crossover-at-engagement',
    severity: 'caution',
    quiet: { ...dual(1.499), stop: stop(2, 3) },
    speaks: { ...dual(1.75), stop: stop(2, 3) },
    says: 'Crossover comes 1/4 in before engagement: two rate changes together.',
    remedy: 'Set the divider 1/4 in nearer its ring.',
  },
  {
    id: 'crossover-at-engagement',
    severity: 'caution',
    quiet: { ...dual(1.499), stop: stop(2, 3) },
    speaks: { ...dual(2.5), stop: stop(2, 3) },
    says: 'The tender still works at engagement: crossover comes 1/2 in later, two rate changes together.',
    remedy: 'Set the divider 1 in nearer its ring.',
  },
  {
    id: 'tender-working-at-engagement',
    severity: 'note',
    quiet: { ...dual(2.5), stop: stop(2, 3) },
    speaks: { ...dual(null), stop: stop(2, 3) },
    says: 'The tender is still working when the stop is met, and never crosses over.',
    remedy: 'Set the divider nearer its ring.',
  },
  {
    id: 'springs-loose-at-droop',
    severity: 'caution',
    quiet: main(20, 0),
    speaks: main(20, -0.5),
    says: 'At full droop the springs hang loose by 1/2 in: they can leave their seats.',
    remedy: 'A helper spring, a shorter limit strap, or 1/2 in more preload.',
  },
  {
    id: 'motion-ratio-falls',
    severity: 'note',
    quiet: rows(6),
    speaks: rows(5),
    says: 'The motion ratio falls toward bump, from 1.00 to 0.51: softer where it should be firmer.',
    remedy: 'Lean the shock less, or move its lower mount outboard.',
  },
  {
    // 5 in of gas column pushed to 2: 214.7 psi × 2.5^1.4 is 774 psi over nothing, 760 over the air.
    id: 'stop-over-rated-pressure',
    severity: 'danger',
    quiet: charged(760),
    speaks: charged(759),
    says: 'Closed in a hit, the stop reaches 760 psi; its body is rated 759 psi.',
    remedy: 'Charge to 190 psi or less, or more gas volume.',
  },
  {
    // As above, with 5.5 and 4.5 in of column, on 3.14 sq in.
    id: 'gas-volume-assumed',
    severity: 'note',
    quiet: { stop: stop(2, 3) },
    speaks: { stop: stop(2, 3) },
    assumed: ['corner.stop.gasVolume'],
    says: 'Gas volume is assumed; 10 % either way, the stop ends at 1,988 to 3,094 lb.',
    remedy: 'Fill it with oil and measure what goes in.',
  },
  {
    id: 'shock-gas-volume-assumed',
    severity: 'note',
    quiet: gas,
    speaks: gas,
    assumed: ['corner.shock.gas.volume'],
    says: 'The shock’s gas volume, 30.51 cu in, is assumed, not measured.',
    remedy: 'Take it from the body and reservoir, or measure it.',
  },
]

describe('what a finding says', () => {
  it.each(CASES)('$id: $says', ({ id, severity, quiet, speaks, assumed, says, remedy }) => {
    expect(found(quiet).map(finding => finding.id)).not.toContain(id)
    const finding = found(speaks, assumed && { assumed }).find(each => each.id === id)
    expect(finding).toMatchObject({ severity, message: says, remedy })
    expect(Object.values(finding!.values).every(Number.isFinite)).toBe(true)
  })

  it('what would read as nothing in millimetres is less than a tenth of one', () => {
    const { message } = found(main(20, -0.001), {}, 'metric').find(({ id }) => id === 'springs-loose-at-droop')!
    expect(message).toBe('At full droop the springs hang loose by less than 0.1 mm: they can leave their seats.')
  })

  it('a ride height half an inch off is a caution, and a shade less a note', () => {
    const severity = (pounds: number) =>
      found({ cornerMass: pounds * POUND }).find(({ id }) => id === 'off-ride-height')?.severity
    expect([severity(1399), severity(1401), severity(1201), severity(1199)]).toEqual([
      'note',
      'caution',
      'note',
      'caution',
    ])
  })

  it('a motion ratio that falls by a fiftieth is left alone, by a little more is not', () => {
    const falls = Array.from({ length: 41 }, (_, i) =>
      found(rows(6 - i * 0.005)).some(({ id }) => id === 'motion-ratio-falls'),
    )
    expect(falls[0]).toBe(false)
    expect(falls.at(-1)).toBe(true)
    expect(falls.filter((each, i) => i > 0 && each !== falls[i - 1]).length).toBe(1)
  })
})
