import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import path from 'node:path'
import { afterAll, describe, expect, it } from 'vitest'
import type { Change } from '../../../core/changes/change.ts'
import { GENERIC_SHELF } from '../../../core/changes/shelf.ts'
import { formatPlan } from '../../../core/plan/file-text.ts'
import type { Corner, Plan } from '../../../core/plan/schema.ts'
import { formatShelf } from '../../../core/plan/shelf-file.ts'
import { INCH, PSI } from '../../../core/units/constants.ts'
import { run } from '../../../electron/cli/main.ts'
import { plainPlan } from '../../core/loads/plain-car.ts'
import { plainCorner, plainStop } from '../../core/plain-corner.ts'

const folder = mkdtempSync(path.join(tmpdir(), 'stopgap-propose-'))
afterAll(() => rmSync(folder, { recursive: true }))

async function propose(plan: Plan, ...args: string[]) {
  writeFileSync(path.join(folder, 'car.stopgap'), formatPlan(plan))
  let [out, err] = ['', '']
  const io = { out: (text: string) => (out += text), err: (text: string) => (err += text), folder }
  const code = await run(['propose', 'car.stopgap', ...args], io)
  return { code, out, err }
}

/** A stop of 2 in stroke half an inch off its pad: two spacers leave an inch of it. */
const corner = (other: Partial<Corner> = {}): Corner =>
  plainCorner({
    shock: { stroke: 12 * INCH, showing: 9 * INCH, shaftDiameter: 0.02, gas: null, compression: [], rebound: [] },
    stop: plainStop({
      stroke: 1.25 * INCH,
      gap: 1.75 * INCH,
      shaftDiameter: 1.25 * INCH,
      gasVolume: 2.2 * INCH ** 3,
      body: { bore: 2 * INCH },
    }),
    ...other,
  })

const car = (targets: Plan['targets'], other: Partial<Corner> = {}): Plan => ({
  ...plainPlan([{ id: 'rear', suspension: 'independent', track: 1.5, antiRollRate: 0, corner: corner(other) }], {}),
  units: 'inch',
  ...(targets === undefined ? {} : { targets }),
})

describe('stopgap propose', () => {
  it('prints what is aimed at, how it stands, what would do with its work and cost, and why the rest would not', async () => {
    const { code, out, err } = await propose(car({ coiloverShare: 0.62, stopPressure: 2000 * PSI }), '--axle', 'rear')
    expect([code, err]).toEqual([0, ''])
    expect(out).toContain('Aimed at: the coilover’s share of bump at least 62 %; pressure in the stop')
    expect(out).toContain('As it is\n   Misses: the coilover’s share of bump 58 %, 62 % wanted.')
    expect(out).toMatch(/\d+ combinations of spacer and charge were looked at; \d+ meet every target\./)
    expect(out).toMatch(/\n1\. A 1\/4 in spacer inside the stop/)
    expect(out).toContain('Work: The stop is discharged and opened, a spacer cut, oil left out.')
    expect(out).toMatch(/Landing height: .* in, by driving\n? +landings|Landing height: .*by driving landings/)
    expect(Math.max(...out.split('\n').map(line => line.length))).toBeLessThanOrEqual(80)
  })

  it('looks at oil taken out where nothing else does, and says so', async () => {
    const { out } = await propose(car({ coiloverShare: 0.62, stopPressure: 150 * PSI }), '--axle', 'rear')
    expect(out).toContain('none meets every target')
    expect(out).toContain('Nearest to the targets')
    const { out: oiled } = await propose(car({ coiloverShare: 0.62, stopPressure: 300 * PSI }), '--axle', 'rear')
    expect(oiled.replace(/\s+/g, ' ')).toMatch(
      /combinations of spacer, oil taken out and charge were looked at, oil because none does without; \d+ meet every target/,
    )
    expect(oiled).toMatch(/\n1\. .*of oil out of the stop/s)
  })

  it('prints everything for programs', async () => {
    const { out } = await propose(car({ coiloverShare: 0.62 }), '--axle', 'rear', '--json')
    const found = JSON.parse(out)
    expect(Object.keys(found)).toEqual([
      'setup',
      'axle',
      'usualTargets',
      'present',
      'feasible',
      'misses',
      'leftOut',
      'candidates',
      'refused',
    ])
    expect([found.setup, found.axle, found.usualTargets, found.leftOut]).toEqual(['found', 'rear', false, 0])
    const [best] = found.candidates
    expect(Object.keys(best)).toEqual(['feasible', 'changes', 'settles', 'figures', 'targets', 'dangers'])
    expect(best.feasible).toBe(true)
    expect(best.changes[0]).toMatchObject({ kind: 'spacer', length: INCH / 4 })
    expect(best.figures.landingBy).toBe('simulation')
    expect(best.figures.coiloverShare).toBeCloseTo(2 / 3, 9)
  })

  it('aims at what is usual where the plan names nothing', async () => {
    const { out } = await propose(car(undefined), '--axle', 'rear')
    expect(out).toContain('The plan names no targets. Aimed at is what is usual: the coilover’s share of')
  })

  it('says when there is nothing to change', async () => {
    const { code, out } = await propose(car({ coiloverShare: 0.9 }, { stop: null }), '--axle', 'rear')
    expect(code).toBe(0)
    expect(out).toContain('There is nothing to change here: spacers and charges are for hydraulic stops.')
  })

  it('takes stops, springs and tubes from a shelf, and says which kinds were combined', async () => {
    const kept = <Part>(id: string, part: Part) => ({ id, name: id, generic: false, part })
    const stiff = { name: 'main', rate: 61_000, freeLength: 16 * INCH, solidLength: 6 * INCH }
    const { gap: _, spacer: __, ...long } = plainStop({ stroke: 2 * INCH, gasVolume: 10 * INCH ** 3 })
    writeFileSync(
      path.join(folder, 'shelf.json'),
      formatShelf({ ...GENERIC_SHELF, stops: [kept('long', long)], springs: [kept('stiff', stiff)] }),
    )
    const { code, out, err } = await propose(
      car({ coiloverShare: 0.62 }),
      '--axle',
      'rear',
      '--shelf',
      'shelf.json',
      '--json',
    )
    expect([code, err]).toEqual([0, ''])
    const found = JSON.parse(out)
    const kinds = new Set(
      [...found.candidates, ...found.refused].flatMap(({ changes }) => changes.map(({ kind }: Change) => kind)),
    )
    expect(kinds.has('stop') && kinds.has('spring') && kinds.has('spacer')).toBe(true)
    const { out: text } = await propose(car({ coiloverShare: 0.62 }), '--axle', 'rear', '--shelf', 'shelf.json')
    expect(text.replace(/\s+/g, ' ')).toMatch(
      /combinations of spacer, charge, another stop and another main spring were looked at/,
    )
  })

  it('says at which place a shelf is wrong, what was found and what would be right', async () => {
    const refused = async (text: string) => {
      writeFileSync(path.join(folder, 'bad.json'), text)
      return propose(car({ coiloverShare: 0.62 }), '--axle', 'rear', '--shelf', 'bad.json')
    }
    const shelf = JSON.parse(formatShelf(GENERIC_SHELF))
    shelf.springs[2].part.rate = 'soft'
    const wrong = await refused(JSON.stringify(shelf))
    expect([wrong.code, wrong.out]).toEqual([2, ''])
    expect(wrong.err).toBe(
      'bad.json cannot be used: one value is not right.\n\nsprings[2].part.rate\n  found:  "soft"\n  wanted: a number\n',
    )
    expect((await refused('{"format":"stopgap-plan"}')).err).toContain('wanted: "stopgap-shelf"')
    expect((await refused('\u0000')).code).toBe(2)
    const missing = await propose(car(undefined), '--axle', 'rear', '--shelf', 'nowhere.json')
    expect([missing.code, missing.err]).toEqual([2, 'nowhere.json could not be read: there is no such file.\n'])
  })

  it('looks at the ranges somebody chose, where the plan keeps them', async () => {
    const chosen = {
      spacers: null,
      charges: { from: 190 * PSI, to: 210 * PSI, step: 10 * PSI },
      oils: null,
      shims: { from: INCH / 8, to: INCH / 4, step: INCH / 8 },
      stops: [],
      springs: [],
      preload: false,
    }
    const { out } = await propose({ ...car({ coiloverShare: 0.62 }), ranges: { rear: chosen } }, '--axle', 'rear')
    expect(out.replace(/\s+/g, ' ')).toMatch(
      /combinations of charge and pad shim were looked at, as the plan’s own ranges say;/,
    )
  })

  it('works in bar and millimetres where the plan does', async () => {
    const { out } = await propose({ ...car({ coiloverShare: 0.62 }), units: 'metric' }, '--axle', 'rear', '--json')
    const charges = new Set<number>()
    for (const { changes } of JSON.parse(out).candidates)
      for (const change of changes) if (change.kind === 'charge') charges.add(change.charge / 5e4)
    expect(charges.size).toBeGreaterThan(10)
    for (const halves of charges) expect(Math.abs(halves - Math.round(halves))).toBeLessThan(1e-9)
  })

  it('explains what it cannot do: no axle, another axle, another setup', async () => {
    const plan = car({ coiloverShare: 0.5 })
    const refusals = await Promise.all([
      propose(plan),
      propose(plan, '--axle', 'front'),
      propose(plan, '--axle', 'rear', '--setup', 'later'),
    ])
    expect(refusals.map(({ code, out }) => [code, out])).toEqual(Array(3).fill([2, '']))
    expect(refusals.map(({ err }) => err)).toEqual([
      'For which axle? Give an --axle: this setup has rear.\n',
      'There is no axle “front” in this setup. It has rear.\n',
      'There is no setup “later” in this plan. It has found.\n',
    ])
  })
})
