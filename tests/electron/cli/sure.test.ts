import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import path from 'node:path'
import { afterAll, describe, expect, it } from 'vitest'
import { formatPlan } from '../../../core/plan/file-text.ts'
import type { Axle, Plan } from '../../../core/plan/schema.ts'
import { run } from '../../../electron/cli/main.ts'
import { carry, plainAxle, plainPlan } from '../../core/loads/plain-car.ts'

const folder = mkdtempSync(path.join(tmpdir(), 'stopgap-sure-'))
afterAll(() => rmSync(folder, { recursive: true }))

const axle: Axle = {
  ...plainAxle({
    rate: 30_000,
    weight: 3000,
    clearance: { bump: 0.14, droop: 0.1 },
    stop: { kind: 'hydraulic', stroke: 0.06, gap: 0.08, shaftDiameter: 0.035, charge: 8e5, gasVolume: 1.2e-4 },
  }),
  assumed: ['corner.stop.gasVolume'],
}

async function budget(plan: Plan, ...args: string[]) {
  writeFileSync(path.join(folder, 'car.stopgap'), formatPlan(plan))
  let [out, err] = ['', '']
  const io = { out: (text: string) => (out += text), err: (text: string) => (err += text), folder }
  const code = await run(['budget', 'car.stopgap', ...args], io)
  return { code, out, err }
}

const only = (values: Record<string, number>): Plan => ({
  ...plainPlan([axle], {}),
  tolerances: { version: 1, values },
})

describe('stopgap budget --sure', { timeout: 20_000 }, () => {
  it('prints bands, chances, reasons and what to measure first', async () => {
    const { code, out, err } = await budget(plainPlan([axle], {}), '--sure')
    expect([code, err]).toEqual([0, ''])
    expect(out).toContain('10,000 trials')
    expect(out).toMatch(/engagement +80\.0 mm +7\d\.\d mm +8\d\.\d mm\n/)
    expect(out).toMatch(/full bump: (chassis contact|stop closed) \d\d %, (chassis contact|stop closed) \d\d %/)
    expect(out).toMatch(
      /\* share on the coilover; bump travel;[^:]*: slopes\s+alone\s+give\s+another\s+band,\s+because\s+what\s+ends\s+bump/,
    )
    expect(out).toMatch(/- stop gas volume, assumed: \d\d % of the doubt; measuring it leaves ±[\d,]+ N/)
    expect(Math.max(...out.split('\n').map(line => line.length))).toBeLessThanOrEqual(80)
  })

  it('says how far it has come where somebody watches, in a line that is gone when it is done', async () => {
    writeFileSync(path.join(folder, 'car.stopgap'), formatPlan(only({})))
    const lines: string[] = []
    const io = { out: () => {}, err: () => {}, folder, progress: (line: string) => lines.push(line) }
    expect(await run(['budget', 'car.stopgap', '--sure'], io)).toBe(0)
    expect(lines.length).toBeGreaterThan(10)
    expect(lines.at(-2)).toMatch(/: trial ([\d,]+) of \1$/)
    expect(lines.at(-1)).toBe('')
  })

  it('prints the budget as ever for programs, and how sure each axle is beside it', async () => {
    const [plain, sure] = await Promise.all([budget(only({}), '--json'), budget(only({}), '--sure', '--json')])
    const [expected, found] = [JSON.parse(plain.out), JSON.parse(sure.out)]
    const { sure: doubt, ...rest } = found.setups[0].axles[0]
    expect(rest).toEqual(expected.setups[0].axles[0])
    const { value, low, high, firstOrder } = doubt.figures['engagement.wheel']
    expect(value).toBe(rest.engagement.wheel)
    expect(low < value && value < high && firstOrder.low < value).toBe(true)
    expect(doubt.rankings['bump.forceFast'][0]).toMatchObject({ path: 'corner.stop.gasVolume', source: 'assumed' })
    expect(doubt.regimes['full bump']['chassis contact']).toBeGreaterThan(0.2)
  })

  it('says how sure what the loads take and leave is, for people and for programs', async () => {
    const loaded: Plan = { ...only({}), loads: [carry({ front: 120 })] }
    const [text, json] = [await budget(loaded, '--sure'), await budget(loaded, '--sure', '--json')]
    for (const name of ['springs at rest', 'sprung weight', 'energy of the droop zone', 'chassis contact at'])
      expect(text.out).toContain(`\n  ${name} `)
    expect(text.out).toMatch(/“Payload” takes +\+?1\d\.\d mm/)
    expect(text.out).toMatch(/left before the stop +\d\d\.\d mm +\d\d\.\d mm +\d\d\.\d mm\n/)
    expect(text.out).toMatch(/reach\s+the\s+stop\s+in\s+under\s+1\s+%\s+and\s+full\s+bump\s+in\s+under\s+1\s+%/)
    expect(Math.max(...text.out.split('\n').map(line => line.length))).toBeLessThanOrEqual(80)
    const { ledger } = JSON.parse(json.out).setups[0].axles[0].sure
    expect(Object.keys(ledger.figures)).toEqual(['rows.carry', 'together', 'place', 'beforeStop', 'beforeBump'])
    const { value, low, high, present } = ledger.figures.beforeStop
    expect([low < value, value < high, present, ledger.reachStop]).toEqual([true, true, 1, 0])
  })

  it('names tolerances that belong to nothing', async () => {
    const plan = only({ 'front.corner.stop.gapp': 0.001 })
    expect((await budget(plan, '--sure')).out).toContain('front.corner.stop.gapp')
    expect(JSON.parse((await budget(plan, '--sure', '--json')).out).unusedTolerances).toEqual([
      'front.corner.stop.gapp',
    ])
  })
})
