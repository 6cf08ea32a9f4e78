import { describe, expect, it } from 'vitest'
import { planBudget } from '../../../core/budget/budget.ts'
import type { Plan } from '../../../core/plan/schema.ts'
import { INCH, POUND } from '../../../core/units/constants.ts'
import { budgetText } from '../../../electron/cli/budget-text.ts'
import { paragraph, WIDTH } from '../../../electron/cli/paragraph.ts'
import { seed, seedNames } from '../../seeds/seed.ts'
import { plainAxle, plainPlan, plainSetups, withCorner } from './plain-plan.ts'

const hydraulic = (gap: number) =>
  withCorner({
    stop: { kind: 'hydraulic', stroke: 2 * INCH, gap, shaftDiameter: 0.03, charge: 1e6, gasVolume: 1e-4 },
  })

/** Without its line breaks and columns. */
const flat = (text: string): string => text.replace(/\s+/g, ' ')

/** Sixteenths in a length as written: `−4 3/16 in`. */
function sixteenths(text: string): number {
  const match = /^([−+]?)(?:(\d+)(?: (\d+)\/(\d+))?|(\d+)\/(\d+)) in$/.exec(text)
  if (match === null) throw new Error(`${text} is no length in inches`)
  const [, sign, whole = '0', over, under, aloneOver, aloneUnder] = match
  const fraction = Number(over ?? aloneOver ?? 0) / Number(under ?? aloneUnder ?? 1)
  return (sign === '−' ? -1 : 1) * (Number(whole) + fraction) * 16
}

/** Positions beside the bar and lengths of zones in it, in sixteenths, axle by axle. */
function bars(text: string) {
  return text
    .split(/one wheel\n/)
    .slice(1)
    .map(axle => {
      const lines = axle.split('\n')
      const at = (words: string) =>
        sixteenths(/^ *(.* in) [┬┼┴]/.exec(lines.find(line => /[┬┼┴]/.test(line) && line.includes(words)) ?? '')![1]!)
      const zone = (name: string) => {
        const line = lines.find(each => each.includes(`  ${name}  `))
        return line === undefined ? 0 : sixteenths(new RegExp(`  ${name}  (.*? in)(  |$)`).exec(line)![1]!)
      }
      return {
        bump: at('full bump'),
        droop: at('full droop'),
        zones: [zone('coilover zone'), zone('engagement zone'), zone('droop')],
      }
    })
}

describe('the budget for people', () => {
  it('is what pencil and paper give', () =>
    expect(budgetText(plainPlan)).toBe(`Worked out on paper
Positions are wheel travel from ride height. Gas is given slow and fast: the
truth lies between.

As found
════════

Front axle, one wheel

   8 in ┬ full bump: stop closed
        ▓
        ▓   engagement zone  4 in  50 %
        ▓
        ▓
   4 in ┼ engagement
        ░
        ░   coilover zone  4 in  50 %
        ░
        ░
   0 in ┼ ride height, rests here
        │
        │
        │   droop  5 in
        │
        │
  −5 in ┴ full droop: limit strap

  Pad and stop meet 4 in above ride height, with the shock shaft 2 in further in
  than at ride height.
  Beyond full bump: coil bind at 10 in, shock closed at 12 in.
  At rest the car sits at the measured ride height. Each wheel carries 500 lb of
  sprung weight; the stop none of it.
  At ride height: motion ratio 0.500, wheel rate 50 lb/in, ride frequency
  0.99 Hz (0.97 Hz with the tire; 1.85 Hz just past engagement).

  Left to use  at ride height  at engagement  at full bump
  shock shaft            6 in           4 in          2 in
  main spring            5 in           3 in          1 in
  bump stop              2 in           2 in          0 in

  Force at one wheel  springs  shock gas    stop  together
  at rest              500 lb       0 lb    0 lb    500 lb
  at engagement        700 lb       0 lb    0 lb    700 lb
  full bump            900 lb       0 lb  500 lb  1,400 lb
  Along the stop at full bump: 1,000 lb.

  Findings
  Nothing stands out.
`))

  it('speaks the plan’s own units', () => {
    const text = budgetText({ ...plainPlan, units: 'metric' })
    expect(text).toContain('203.2 mm ┬ full bump: stop closed')
    expect(text).toContain('wheel rate 8.8 N/mm')
    expect(text).not.toMatch(/\d (in|lb|psi)\b/)
  })

  it('tells of a change line by line, and of an axle that stays only once', () => {
    const plan = plainSetups(plainAxle, withCorner({ stop: null }), plainAxle)
    const text = budgetText(plan)
    const found = planBudget(plan).setups[1]!.axles[0]!.findings.map(({ message }) => message)
    expect(found).toHaveLength(1)
    const [toSecond, toThird] = text.split('From “First” to ').slice(1)
    expect(toSecond).toBe(`“Second”
════════════════════════

Front axle
  Engagement: none, was 4 in.
  Coilover zone, of bump travel: 100 %, was 50 %.
  Full bump: 10 in, was 8 in (2 in later).
  Force at full bump, slow gas: 1,000 lb, was 1,400 lb (400 lb less).
  Force at full bump, fast gas: 1,000 lb, was 1,400 lb (400 lb less).
  Force along the stop, fast gas: 0 lb, was 1,000 lb (1,000 lb less).
  Energy from ride height to full bump, fast gas: 625 ft·lb, was 550 ft·lb
    (75 ft·lb more).
  Shock shaft left at full bump: 1 in, was 2 in (1 in less).
  Main spring left at full bump: 0 in, was 1 in (1 in less).
  What ends bump: coil bind, was stop closed.
${paragraph(`Newly found: ${found[0]}`, '  ', '    ')}  The same: full droop; rest position; carried by the stop at rest; wheel rate
  at ride height.

`)
    expect(toThird).toBe('“Third”\n═══════════════════════\n\nFront axle\n  Nothing changes.\n')
    expect(text).toContain('\nThird\n═════\n\nFront axle, one wheel: as in “First”.\n')
  })

  it('says when there is no stop, when the stop is never met, and when it is met from the start', () => {
    const one = (axle: Plan['setups'][number]['axles'][number]) => budgetText(plainSetups(axle))
    expect(one(withCorner({ stop: null }))).toContain('There is no bump stop.')
    expect(one(hydraulic(9 * INCH))).toContain('No bump stop is met in this travel.')
    expect(one(hydraulic(0))).toContain('Pad and stop meet at ride height: there is no coilover zone.')
    expect(one(hydraulic(-INCH / 2))).toContain('Pad and stop meet 1 in below ride height')
    expect(one(hydraulic(-1.95 * INCH))).toContain('Pad and stop meet 3 7/8 in below ride height')
    expect(
      one({ ...hydraulic(-INCH), corner: { ...hydraulic(-INCH).corner, clearance: { bump: null, droop: INCH } } }),
    ).toContain('The stop is pushed in through the whole travel: there is no coilover zone.')
  })

  it('gives a car on its stop the stop’s share of the weight', () => {
    const text = flat(budgetText(seed('on-its-stops.stopgap')))
    expect(text).toContain('Each wheel carries 1,060 lb of sprung weight; the stop 300 lb of it, 28 %.')
  })

  it('lets a car parked on the step of its stop lean on it by what is left over', () => {
    const { stop } = hydraulic(0).corner
    const sprung = 550 * POUND
    const parked = withCorner({ stop, cornerMass: sprung + plainAxle.corner.unsprungMass })
    const text = flat(budgetText(plainSetups(parked)))
    expect(text).toContain('at rest 500 lb 0 lb 50 lb 550 lb')
  })

  it('keeps a plan’s names from steering the terminal', () => {
    const named: Plan = { ...plainPlan, title: 'A\u001b[31mred\ncar', setups: [{ ...plainPlan.setups[0]!, name: ' ' }] }
    const text = budgetText(named)
    expect(text).toMatch(/^A \[31mred car\n/)
    expect(text).toContain('\nas-found\n════════\n')
    expect(budgetText({ ...plainPlan, title: '' })).toMatch(/^Untitled plan\n/)
  })

  describe.each([...seedNames])('%s', name => {
    const text = budgetText(seed(name))

    it('fits 80 columns and holds no terminal codes', () => {
      expect(text.split('\n').filter(line => line.length > WIDTH)).toEqual([])
      // biome-ignore lint/suspicious/noControlCharactersInRegex: the codes are what is looked for
      expect(text).not.toMatch(/[\u0000-\u0009\u000b-\u001f\u007f-\u009f]/)
    })

    it('has zones that add up to the travel shown, to the sixteenth', () => {
      const found = bars(text)
      expect(found.length).toBeGreaterThan(0)
      for (const { bump, droop, zones } of found) {
        expect(zones[0]! + zones[1]!).toBe(bump)
        expect(zones[2]!).toBe(-droop)
      }
    })

    it('says every finding and what would change it', () => {
      const found = planBudget(seed(name)).setups.flatMap(setup => setup.axles.flatMap(axle => axle.findings))
      expect(found.length).toBeGreaterThan(0)
      for (const { message, remedy } of found)
        expect(flat(text)).toContain(`${message} What would change it: ${remedy}`)
    })
  })
})
