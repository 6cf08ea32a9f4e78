import { readdirSync, readFileSync } from 'node:fs'
import path from 'node:path'
import { renderToStaticMarkup } from 'react-dom/server'
import { describe, expect, it } from 'vitest'
import { axleBudget } from '../../../core/budget/budget.ts'
import { GENERIC_SHELF } from '../../../core/changes/shelf.ts'
import type { Plan } from '../../../core/plan/schema.ts'
import { INCH, PSI } from '../../../core/units/constants.ts'
import { beyond, builtAxle, consequences, differences } from '../../../renderer/sheets/as-built.ts'
import { LOCAL_RULES, SHOP_CAUTIONS } from '../../../renderer/sheets/cautions.ts'
import { customerFacts } from '../../../renderer/sheets/customer-facts.ts'
import { othersChanged, rows } from '../../../renderer/sheets/differences.ts'
import { done } from '../../../renderer/sheets/done.ts'
import { coilover, taped } from '../../../renderer/sheets/figures.ts'
import { forOwner } from '../../../renderer/sheets/owner-findings.ts'
import { type SheetRequest, usualAxle, usualPair } from '../../../renderer/sheets/request.ts'
import { type Sides, sheetSides } from '../../../renderer/sheets/Sheet.tsx'
import { sheetHtml, sheetSvg } from '../../../renderer/sheets/sheet-file.tsx'
import { shopFacts } from '../../../renderer/sheets/shop-facts.ts'
import { workTable } from '../../../renderer/sheets/work-table.ts'
import { seed, seedBudget, seedNames } from '../../seeds/seed.ts'
import { placedTexts } from './placed.ts'

const requestFor = (plan: Plan, other: Partial<SheetRequest> = {}): SheetRequest => {
  const pair = usualPair(plan)
  const axle = usualAxle(plan, pair.before, pair.after)
  return { plan, axle, ...pair, paper: 'a4', date: null, ...other }
}

const sidesFor = (request: SheetRequest): Sides => {
  const sides = sheetSides(request)
  if ('problem' in sides) throw new Error(sides.problem)
  return sides
}

const plan = seed('before-and-after.stopgap')
const request = requestFor(plan)
const sides = sidesFor(request)
const textOf = (made: ReturnType<typeof sheetHtml>): string => {
  if (!made.ok) throw new Error(made.problem)
  return made.text
}

describe('what the sheets say', () => {
  it('is about the axle that changes, and the setups that differ', () =>
    expect([request.axle, request.before, request.after]).toEqual(['rear', 'as-found', 'proposed']))

  it('has the coilover zone of the budget as the first number', () => {
    const zone = (setup: string) => seedBudget(plan, setup, 'rear').zones.find(({ id }) => id === 'coilover')!.length
    expect([coilover(sides.before), coilover(sides.after)]).toEqual([zone('as-found'), zone('proposed')])
    const [first] = customerFacts(plan, sides.before, sides.after).numbers
    expect([first?.before, first?.after]).toEqual([taped(zone('as-found'), plan), taped(zone('proposed'), plan)])
  })

  it('has the balance before the stop as the second, and says when nothing is left', () => {
    const [, second] = customerFacts(plan, sides.before, sides.after).numbers
    expect(sides.before.ledger.balance.beforeStop).toBeLessThanOrEqual(0)
    expect([second?.before, second?.after]).toEqual(['nothing', taped(sides.after.ledger.balance.beforeStop!, plan)])
  })

  it('gives what was found and what is to be, from the plan, and marks what changes', () => {
    const { rows } = shopFacts(plan, sides.before, sides.after, GENERIC_SHELF)
    const [was, is] = [sides.before, sides.after].map(({ axle }) => axle.corner.stop)
    if (was?.kind !== 'hydraulic' || is?.kind !== 'hydraulic') throw new Error('the demo has no hydraulic stop')
    expect(rows.find(({ name }) => name === 'stop charge')).toEqual({
      name: 'stop charge',
      before: `${Math.round(was.charge / PSI)}\u00a0psi`,
      after: `${Math.round(is.charge / PSI)}\u00a0psi`,
      changed: true,
      tolerance: '± 5\u00a0psi',
    })
    expect(rows.find(({ name }) => name === 'shaft showing')?.changed).toBe(false)
  })

  it('lists the cut with its tolerance, tube and oil where a spacer goes in, and says so where none does', () => {
    const said = shopFacts(plan, sides.before, sides.after, GENERIC_SHELF).cut.join(' ')
    expect(said).toMatch(/Cut it to 1\.000.in, 0\.031.in either way/)
    expect(said).toMatch(/Leave out .* of oil/)
    const { stop } = sides.after.axle.corner
    const outside = stop?.kind === 'hydraulic' ? stop.spacer!.outerDiameter : 0
    const tubes = GENERIC_SHELF.tubes.filter(({ part }) => Math.abs(part.outerDiameter - outside) > 2.5e-4)
    expect(tubes.length).toBeLessThan(GENERIC_SHELF.tubes.length)
    const without = shopFacts(plan, sides.before, sides.after, { ...GENERIC_SHELF, tubes }).cut.join(' ')
    expect(without).toContain('No stock tube')
    expect(shopFacts(plan, sides.after, sides.after, GENERIC_SHELF).cut).toEqual([
      expect.stringMatching(/^No tube to cut/),
    ])
  })

  it('puts local codes and licensed practice first, and names the source of what was paraphrased', () => {
    const [first] = customerFacts(plan, sides.before, sides.after).cautions
    expect(first?.text).toBe(LOCAL_RULES)
    const shop = textOf(sheetHtml(request, ['shop']))
    const said = placedTexts(shop)
      .map(({ text }) => text)
      .join('')
      .replaceAll(' ', '')
    expect(shop.indexOf('Local codes')).toBeLessThan(shop.indexOf('role="table"'))
    for (const { source } of SHOP_CAUTIONS) if (source !== null) expect(said).toContain(source.replaceAll(' ', ''))
  })

  it('shows a car with one setup as it is, and speaks of no change', () => {
    const alone = sidesFor({ ...request, after: request.before })
    const facts = customerFacts(plan, alone.before, alone.after)
    expect(facts.title).toMatch(/rear suspension, as it is$/)
    expect(facts.lists.flat().map(({ head }) => head)).toEqual(['What we found', 'What comes next'])
    const page = textOf(sheetSvg({ ...request, after: request.before }, ['customer', 'shop']))
    expect(page.match(/drawn where the stop first touches/g)).toHaveLength(1)
    expect(page).not.toMatch(/Before|After the|Bold is changed/)
  })

  it('says what is done to a stop as one thing, and settings in words an owner knows', () => {
    const { axle } = sides.before
    const stop = axle.corner.stop
    if (stop?.kind !== 'hydraulic') throw new Error('the demo has no hydraulic stop')
    const said = (changes: object | null, elsewhere = false): string[] => {
      const after = {
        ...axle,
        corner: { ...axle.corner, stop: changes === null ? null : { ...stop, ...changes } },
      } as typeof axle
      const changed = rows(axle, after).filter(row => row.changed)
      return done(plan, axle, after, changed, othersChanged(axle, after), elsewhere).map(text =>
        text.replaceAll('\u00a0', ' '),
      )
    }
    const last = 'The same on both sides.'
    expect(said({})).toEqual(['Nothing is changed: this is the car as it is.'])
    expect(said({}, true)).toEqual(['Nothing is changed at the rear: the work is at the front.'])
    expect(said({ charge: stop.charge + 10 * PSI })).toEqual([
      'The stops are filled with nitrogen to 150 psi instead of 140 psi.',
      last,
    ])
    expect(said({ gasVolume: stop.gasVolume * 0.9 })).toEqual([
      'There is more oil in the stops, so less room for gas.',
      last,
    ])
    expect(said({ stroke: 4 * INCH, gap: 0, gasVolume: 1e-4 })).toEqual([
      'Each rear stop is replaced by one with 4 in of stroke instead of 3 1/2 in.',
      last,
    ])
    expect(
      said({ spacer: { length: INCH, outerDiameter: 0.038, wall: 0.003 }, stroke: 2.5 * INCH, gap: 0.05 }),
    ).toEqual(['A 1 in spacer goes inside each rear stop, which is filled and charged again.', last])
    expect(said(null)).toEqual(['The bump stop at each rear wheel is taken out.', last])
    const foam = {
      ...axle,
      corner: {
        ...axle.corner,
        stop: {
          kind: 'elastomer' as const,
          gap: 0.03,
          curve: [
            { deflection: 0, force: 0 },
            { deflection: 0.02, force: 4000 },
          ],
        },
      },
    }
    const changed = rows(axle, foam).filter(row => row.changed)
    expect(done(plan, axle, foam, changed, othersChanged(axle, foam), false)).toEqual([
      'Each rear stop is replaced by one of foam or rubber.',
      last,
    ])
  })

  it('has plain words for every finding that is more than a note', () => {
    const folder = path.join(import.meta.dirname, '../../../core/budget/findings')
    const text = readdirSync(folder)
      .map(name => readFileSync(path.join(folder, name), 'utf8'))
      .join('\n')
    const ids = [...text.matchAll(/\bid: (?:\w+ \? )?'([\w-]+)'(?: : '([\w-]+)')?/g)].flatMap(([, one, other]) => [
      one!,
      other ?? one!,
    ])
    expect(ids.length).toBeGreaterThan(15)
    const finding = {
      severity: 'caution',
      message: 'As the shop reads it.',
      remedy: '',
      values: {},
      field: '',
      at: 0,
      where: 'stop',
    } as const
    const without = [...new Set(ids)].filter(id => forOwner({ ...finding, id }) === finding.message)
    expect(without.filter(id => !id.endsWith('-volume-assumed'))).toEqual([])
    expect(forOwner({ ...finding, id: 'not-known' })).toBe('As the shop reads it.')
  })

  it('has no order to charge a stop without gas, nor to let gas out of one that had none', () => {
    const { axle } = sides.before
    const foam = {
      kind: 'elastomer' as const,
      gap: 0.03,
      curve: [
        { deflection: 0, force: 0 },
        { deflection: 0.03, force: 9000 },
      ],
    }
    const withFoam = { ...sides.before, axle: { ...axle, corner: { ...axle.corner, stop: foam } } }
    const order = (before: typeof withFoam | typeof sides.before, after: typeof withFoam | typeof sides.before) =>
      shopFacts(plan, before, after, GENERIC_SHELF).order.join(' ')
    expect(order(sides.before, withFoam)).toMatch(/Let all gas out/)
    expect(order(sides.before, withFoam)).not.toMatch(/Charge with/)
    expect(order(withFoam, sides.before)).toMatch(/Charge with/)
    expect(order(withFoam, sides.before)).not.toMatch(/Let all gas out/)
  })

  it('never lets a long title push out what the sheet is', () =>
    expect(customerFacts({ ...plan, title: 'x'.repeat(200) }, sides.before, sides.after).title).toMatch(
      /^x{60}…: rear suspension, before and after$/,
    ))

  it('names as many loads as have room, and says how many more there are', () => {
    const loads = Array.from({ length: 30 }, (_, i) => ({
      id: `load-${i}`,
      name: `Load number ${i} with a name that takes its room`,
      kind: 'payload' as const,
      masses: { rear: 1 },
    }))
    const heavy = { ...plan, loads }
    const { before, after } = sidesFor({ ...request, plan: heavy })
    expect(customerFacts(heavy, before, after).numbers[1]?.what).toMatch(/; and \d+ more$/)
  })

  it('says how many rows there is no room for, and leaves out those that do not change first', () => {
    const { rows } = shopFacts(plan, sides.before, sides.after, GENERIC_SHELF)
    const look = { size: 11 }
    const setups = [sides.before.setup, sides.after.setup] as const
    const whole = workTable(rows, ...setups, look, 20, 700, Infinity)
    expect(whole.left).toBe(0)
    const changed = rows.filter(row => row.changed).length
    const less = workTable(rows, ...setups, look, 20, 700, whole.height - 10)
    expect(less.left).toBeGreaterThan(0)
    expect(less.height).toBeLessThanOrEqual(whole.height - 10)
    const names = placedTexts(renderToStaticMarkup(less.at(0, 0))).map(({ text }) => text)
    for (const { name } of rows.filter(row => row.changed)) expect(names).toContain(name)
    expect(rows.filter(({ name }) => names.includes(name))).toHaveLength(rows.length - less.left)
    expect(changed).toBeGreaterThan(3)
  })
})

describe('sheets as files', () => {
  it.each(seedNames)('%s gives both sheets, without a NaN or a missing value', name => {
    const text = textOf(sheetHtml(requestFor(seed(name)), ['customer', 'shop']))
    expect(text.match(/class="sheet /g)).toHaveLength(2)
    expect(text).not.toMatch(/NaN|undefined|Infinity|\bnull\b/)
  })

  it.each(seedNames)('%s has room for all of it, on both papers', name => {
    for (const paper of ['a4', 'letter'] as const) {
      const texts = placedTexts(textOf(sheetSvg(requestFor(seed(name), { paper }), ['customer', 'shop'])))
      expect(texts.filter(({ text }) => /^And \d+ more|…$/.test(text)).map(({ text }) => text)).toEqual([])
    }
  })

  it('is a drawing any program that shows SVG can show: text as text, inks written out, nothing of a page in it', () => {
    const text = textOf(sheetSvg(request, ['customer', 'shop']))
    expect(text).not.toMatch(/foreignObject|xhtml|var\(|class=|data-/)
    // A line is as wide in another font as it was measured to be.
    const lines = placedTexts(text).filter(({ left, right }) => right - left > 200)
    expect(lines.length).toBeGreaterThan(30)
    expect(text.match(/textLength="/g)!.length).toBeGreaterThanOrEqual(lines.length)
    for (const words of ['Three numbers to compare', 'Order of work', 'Cut list'])
      expect(text).toContain(`>${words}</tspan>`)
    const { width, height } = /viewBox="0 0 (?<width>[\d.]+) (?<height>[\d.]+)"/.exec(text)!.groups!
    expect([Number(width), Number(height)].map(Math.round)).toEqual([794, 2245])
  })

  it('holds nothing a file of XML must not: control characters and halves of letters are blanks', () => {
    const text = textOf(sheetSvg({ ...request, plan: { ...plan, title: 'A\u0007\ud800\u202eB' } }, ['shop']))
    expect(text).toContain('A B: rear suspension')
  })

  it('takes a title as text, whatever is in it', () => {
    const title = '<script>alert(1)</script> & “rear”'
    for (const text of [sheetHtml, sheetSvg].map(make =>
      textOf(make({ ...request, plan: { ...plan, title } }, ['shop'])),
    )) {
      expect(text).toContain('&lt;script&gt;alert(1)')
      expect(text).not.toContain('<script')
    }
  })

  it('fetches nothing: fonts are inside', () => {
    for (const text of [sheetHtml, sheetSvg].map(make => textOf(make(request, ['customer'])))) {
      expect(text.match(/url\(data:font\/woff2;base64,/g)).toHaveLength(2)
      expect(text.replaceAll(/xmlns="[^"]*"/g, '')).not.toMatch(/https?:|<link|src=/)
    }
  })

  it('names the setup that is not there', () =>
    expect(sheetHtml({ ...request, after: 'gone' }, ['shop'])).toEqual({
      ok: false,
      problem: 'There is no setup “gone” in this plan. It has as-found, proposed.',
    }))
})

describe('what was built', () => {
  it('is told in words, as fine as it is, and what it comes to in the travel', () => {
    const { before, after } = sides
    const stop = after.axle.corner.stop!
    const built = { 'corner.stop.gap': stop.gap + INCH / 64 }
    expect(differences(plan, before.axle, after.axle, built)).toEqual([
      {
        path: 'corner.stop.gap',
        short: 'gap 0.016\u00a0in more than planned',
        held: true,
        sentence: '0.016\u00a0in more than planned, within what is to be held.',
      },
    ])
    expect(differences(plan, before.axle, after.axle, { 'corner.stop.gap': stop.gap })).toEqual([])
    const axle = builtAxle(after.axle, { 'corner.stop.gap': stop.gap + INCH / 4 })
    const told = consequences(plan, after.budget, axleBudget(axle, plan))
    expect(told).toEqual([
      expect.stringMatching(/^The wheel meets the stop at .* later than planned: /),
      expect.stringMatching(/^Full bump is .* more than planned/),
    ])
    expect(consequences(plan, after.budget, after.budget)).toEqual([])
  })

  const { before, after } = sides
  const gap = after.axle.corner.stop!.gap
  const off = (by: number) => beyond(plan, before.axle, after.axle, { 'corner.stop.gap': gap + by })

  it('is a finding beyond its tolerance, either way, and none within it', () => {
    expect(off(INCH / 16)).toEqual([])
    expect(off(INCH / 8)).toEqual([expect.stringMatching(/gap is .*: 1\/8.in more than planned/)])
    expect(off(-INCH / 8)).toEqual([expect.stringMatching(/less than planned/)])
  })

  it('takes the place of what was planned, and is no longer assumed', () => {
    const planned = { ...after.axle, assumed: ['corner.stop.gap', 'corner.unsprungMass'] }
    const built = builtAxle(planned, { 'corner.stop.gap': 0.05 })
    expect(built.corner.stop?.gap).toBe(0.05)
    expect(built.assumed).toEqual(['corner.unsprungMass'])
    expect(planned.corner.stop?.gap).toBe(gap)
  })
})
