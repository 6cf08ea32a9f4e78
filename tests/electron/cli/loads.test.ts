import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import path from 'node:path'
import { afterAll, describe, expect, it } from 'vitest'
import { formatPlan } from '../../../core/plan/file-text.ts'
import type { Plan } from '../../../core/plan/schema.ts'
import { run } from '../../../electron/cli/main.ts'
import { bumpOf, carry, plainAxle, plainPlan, stopHard, turn } from '../../core/loads/plain-car.ts'

const folder = mkdtempSync(path.join(tmpdir(), 'stopgap-loads-'))
afterAll(() => rmSync(folder, { recursive: true }))

async function loads(plan: Plan, ...args: string[]) {
  writeFileSync(path.join(folder, 'car.stopgap'), formatPlan(plan))
  let [out, err] = ['', '']
  const io = { out: (text: string) => (out += text), err: (text: string) => (err += text), folder }
  const code = await run(['loads', 'car.stopgap', ...args], io)
  return { code, out, err }
}

const axle = (id: 'front' | 'rear') =>
  plainAxle({
    id,
    rate: 30_000,
    weight: 3000,
    stop: {
      kind: 'elastomer',
      gap: 0.05,
      curve: [
        { deflection: 0, force: 0 },
        { deflection: 0.05, force: 9000 },
      ],
    },
  })
const car = plainPlan([axle('front'), axle('rear')], {}, [
  { ...carry({ front: 60, rear: 60 }), assumed: true },
  turn(4),
  stopHard(5),
])

describe('stopgap loads', () => {
  it('prints every load, what they take together and what is left, in the plan’s own units', async () => {
    const { code, out, err } = await loads(car)
    expect([code, err]).toEqual([0, ''])
    expect(out).toContain('At rest the wheel is at 0.0 mm. The stop engages at +50.0 mm: 50.0 mm to\n  spend.')
    expect(out).toMatch(/Payload \(assumed\) +\+9\.8 mm +\+9\.8 mm\n/)
    expect(out).toMatch(/Corner +\+[\d.]+ mm +\+[\d.]+ mm +[\d.]+ deg\n/)
    expect(out).toMatch(/Together +\+[\d.]+ mm/)
    expect(out).toMatch(/Balance: on the stop by [\d.]+ mm; [\d.]+ mm left before full bump\./)
    expect(Math.max(...out.split('\n').map(line => line.length))).toBeLessThanOrEqual(80)
  })

  it('prints them for programs: setups, loads with their axles, roll where there is some, and the ledger', async () => {
    const { out } = await loads(car, '--json')
    const [setup] = JSON.parse(out).setups
    expect(setup.loads.map((load: object) => Object.keys(load))).toEqual([
      ['id', 'axles'],
      ['id', 'roll', 'axles'],
      ['id', 'axles'],
    ])
    expect(setup.loads[0].axles.map((axle: object) => Object.keys(axle))).toEqual(
      Array(2).fill(['id', 'wheel', 'used']),
    )
    expect(setup.ledger).toHaveLength(2)
    expect(setup.ledger[0].together.loads).toEqual(['carry', 'turn', 'brake'])
  })

  it('takes together only what is asked for', async () => {
    const { out } = await loads(car, '--together', 'turn,carry')
    expect(out).toContain('Taken together: Payload, Corner.')
    const { code, out: nothing, err } = await loads(car, '--together', 'turn,whoops')
    expect([code, nothing]).toEqual([2, ''])
    expect(err).toBe('There is no load “whoops” in this plan. It has carry, turn, brake.\n')
  })

  it('names what has no place instead of giving a number', async () => {
    const one = plainPlan([axle('front')], {}, [stopHard(5), turn(60), bumpOf(0.01)])
    const { out } = await loads(one)
    expect(out).toMatch(/Braking +needs two axles\n/)
    expect(out).toMatch(/Corner +rolls over\n/)
    expect(out).toContain('Danger: With “Corner”, it finds no balance below 20° of roll')
    const { out: json } = await loads(one, '--json')
    const [setup] = JSON.parse(json).setups
    expect(setup.loads[1]).toEqual({ id: 'turn', outcome: 'rolls over', axles: [] })
    expect(setup.ledger[0].balance).toEqual({ beforeStop: null, beforeBump: null })
  })

  it('says so when there are none', async () => {
    const { out } = await loads({ ...car, loads: [] })
    expect(out).toBe('Plain car\nThis plan has no loads.\n')
  })
})
