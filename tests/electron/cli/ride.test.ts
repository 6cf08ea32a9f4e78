import { existsSync } from 'node:fs'
import { mkdir, readFile, writeFile } from 'node:fs/promises'
import path from 'node:path'
import { describe, expect, it } from 'vitest'
import { formatPlan } from '../../../core/plan/file-text.ts'
import type { Axle, Plan, Terrain } from '../../../core/plan/schema.ts'
import { newFolder } from '../folder.ts'
import { plainPlan, withCorner } from './plain-plan.ts'
import { ran } from './terminal.ts'

const whoops: Terrain = { id: 'whoops', name: 'Ripples', kind: 'whoops', spacing: 5, height: 0.1, speed: 8, count: 3 }
const drop: Terrain = { id: 'drop', name: '', kind: 'landing', drop: 1.5 }
const curve = [0, 1, 2].map(velocity => ({ velocity, force: 1500 * velocity }))
const damped = withCorner({
  shock: {
    stroke: 0.254,
    showing: 0.1524,
    shaftDiameter: 0.022,
    gas: null,
    compression: curve,
    rebound: curve,
  },
})
const planOf = (axles: readonly Axle[], terrains: readonly Terrain[] = [whoops, drop]): Plan => ({
  ...plainPlan,
  setups: [{ id: 'as-found', name: 'As found', axles: [...axles] }],
  terrains: [...terrains],
})

async function rides(plan: Plan, args: readonly string[], files: Readonly<Record<string, string>> = {}) {
  const folder = await newFolder()
  await writeFile(path.join(folder, 'car.stopgap'), formatPlan(plan))
  for (const [name, text] of Object.entries(files)) await writeFile(path.join(folder, name), text)
  return { folder, ...(await ran(folder, 'ride', 'car.stopgap', ...args)) }
}

const FIGURES = [
  'id',
  'duration',
  'share',
  'hits',
  'bottoms',
  'wheelMax',
  'wheelMin',
  'suspensionForceMax',
  'stopForceMax',
  'stopSpeedMax',
  'chassisAccelMax',
  'chassisAccelRms',
]

describe('ride for programs', () => {
  it('gives every setup and axle with these keys and no others', async () => {
    const both = planOf([damped, { ...damped, id: 'rear' }])
    const { code, out, err } = await rides({ ...both, setups: [...both.setups, { ...both.setups[0]!, id: 'next' }] }, [
      '--terrain',
      'whoops',
      '--json',
    ])
    expect([code, err]).toEqual([0, ''])
    const given = JSON.parse(out)
    expect(Object.keys(given)).toEqual(['terrain', 'setups'])
    expect(given.terrain).toBe('whoops')
    expect(
      given.setups.map(({ id, axles }: { id: string; axles: { id: string }[] }) => [id, axles.map(a => a.id)]),
    ).toEqual([
      ['as-found', ['front', 'rear']],
      ['next', ['front', 'rear']],
    ])
    const axles: Record<string, unknown>[] = given.setups.flatMap((setup: { axles: object[] }) => setup.axles)
    expect(axles.map(Object.keys)).toEqual(Array(4).fill(FIGURES))
    expect(Object.keys(axles[0]!.share as object)).toEqual(['droop', 'coilover', 'engagement', 'onStop', 'air'])
    const { id: _, share, ...numbers } = axles[0]!
    for (const value of [...Object.values(numbers), ...Object.values(share as object)])
      expect(Number.isFinite(value)).toBe(true)
    expect(axles[0]!.duration).toBe(1 + (3 * 5) / 8 + 2)
  })
})

describe('ride for people', () => {
  it('sets setups side by side, axle by axle, in the plan’s own units', async () => {
    const { code, out, err } = await rides(planOf([damped]), ['--terrain', 'whoops'])
    expect([code, err]).toEqual([0, ''])
    expect(out).toContain('Ripples: 3 whoops 3 15/16 in high, 196 7/8 in apart, at 17.9 mph. It lasts\n4.88 s.')
    expect(out).toContain('Front axle, one wheel\n═')
    expect(out).toMatch(/ {2}time on the stop +[\d.]+ %\n/)
    expect(out).toMatch(/ {2}lowest wheel +−[\d /]+ in\n/)
    expect(out).not.toContain('*')
    expect(out).not.toContain('†')
    expect(Math.max(...out.split('\n').map(line => line.length))).toBeLessThanOrEqual(80)
  })

  it('marks what hangs on metal, and damping that is assumed, and says what the marks mean', async () => {
    const { out } = await rides(planOf([withCorner({})]), ['--terrain', 'drop'])
    expect(out).toMatch(/ {2}most force at the wheel +[\d,]+ lb\*\n/)
    expect(out).toMatch(/ {2}bottoms +[1-9]\d*\n/)
    expect(out).toMatch(/As found †\n/)
    expect(out).toContain('* Taken while metal met metal')
    expect(out).toContain(
      '† This setup has no damper curves, so damping is assumed: 25 % of critical in\ncompression, 50 % in rebound.',
    )
  })
})

describe('ride of the whole car', () => {
  it('has the same keys for each axle, and how far the body pitches', async () => {
    const both = planOf([damped, { ...damped, id: 'rear' }])
    const { code, out } = await rides(both, ['--terrain', 'whoops', '--car', '--json'])
    expect(code).toBe(0)
    const [setup] = JSON.parse(out).setups
    expect(Object.keys(setup)).toEqual(['id', 'axles', 'pitchMin', 'pitchMax'])
    expect(setup.axles.map(Object.keys)).toEqual(Array(2).fill(FIGURES))
    expect(setup.pitchMin).toBeLessThan(0)
    expect(setup.pitchMax).toBeGreaterThan(0)
    // The rear comes over the last of them a wheelbase later.
    expect(setup.axles[0].duration).toBeCloseTo(1 + (3 * 5) / 8 + 2 + (110 * 0.0254) / 8, 9)
  })

  it('says so in words, and what it assumes', async () => {
    const { out } = await rides(planOf([damped, { ...damped, id: 'rear' }]), ['--terrain', 'whoops', '--car'])
    expect(out).toContain('gas is fast; the axles are under\none body that heaves and pitches')
    expect(out).toMatch(/dynamic index\s+0\.85/)
    expect(out).toMatch(/\nPitch, As found: nose up [\d.]+ deg, nose down [\d.]+ deg\.\n/)
  })

  it('of one axle is none: the words, and the outcome for programs', async () => {
    const { code, out } = await rides(planOf([damped]), ['--terrain', 'whoops', '--car'])
    expect(code).toBe(0)
    expect(out).toContain('“As found” could not be driven: a car pitches on two axles, and this setup has')
    expect(out).toMatch(/ {2}bottoms +–\n/)
    const { out: json } = await rides(planOf([damped]), ['--terrain', 'whoops', '--car', '--json'])
    expect(JSON.parse(json).setups).toEqual([
      { id: 'as-found', axles: [{ id: 'front', outcome: 'needs two axles', time: 0 }] },
    ])
  })
})

describe('a ride that cannot be followed', () => {
  it('says how far it got and why, and gives what else there is', async () => {
    const wall = [0, 1, 4].map(velocity => ({ velocity, force: 1e8 * Math.min(1, velocity) }))
    const steep = withCorner({ shock: { ...damped.corner.shock, compression: wall, rebound: wall } })
    const plan = planOf([damped])
    const two = { ...plan, setups: [...plan.setups, { id: 'steep', name: 'Steep', axles: [steep] }] }
    const { code, out, folder } = await rides(two, ['--terrain', 'whoops', '--trace', 'ride.csv'])
    expect(code).toBe(0)
    expect(out).toMatch(/ {2}bottoms +0 +–\n/)
    expect(out).toMatch(
      /“Steep” could not be driven past \d+\.\d\d s: something in it\s+shakes\s+too\s+fast\s+to\s+be\s+followed\./,
    )
    expect(await readFile(path.join(folder, 'ride.csv'), 'utf8')).not.toContain('steep')
  })

  it('keeps its place for programs, with its reason', async () => {
    const wall = [0, 1, 4].map(velocity => ({ velocity, force: 1e8 * Math.min(1, velocity) }))
    const steep = withCorner({ shock: { ...damped.corner.shock, compression: wall, rebound: wall } })
    const { out } = await rides(planOf([steep]), ['--terrain', 'whoops', '--json'])
    expect(JSON.parse(out).setups[0].axles).toEqual([
      { id: 'front', outcome: 'too many steps', time: expect.any(Number) },
    ])
  })
})

describe('ride with something wrong', () => {
  it.each([
    [['--terrain', 'moguls'], 'There is no terrain “moguls” in this plan. It has whoops, drop.\n'],
    [[], 'What is to be driven? Give a --terrain of the plan or a --road. This plan has whoops, drop.\n'],
    [['--terrain', 'drop', '--road', 'a.csv'], 'Give a --terrain or a --road, not both.\n'],
    [['--terrain', 'drop', '--speed', '9'], 'A terrain has its own speed: --speed goes with --road.\n'],
    [['--road', 'a.csv'], 'How fast is the road driven? Give a --speed with it.\n'],
    [['--road', 'a.csv', '--speed', 'fast'], '--speed fast: Not a number. Enter a number in mph.\n'],
    [['--road', 'a.csv', '--speed', '0'], '--speed 0: it should be more than 0 and no more than 200 m/s.\n'],
    [['--road', 'a.csv', '--speed', '9'], 'a.csv could not be read: there is no such file.\n'],
  ])('%j', async (args, complaint) => {
    const { code, out, err } = await rides(planOf([damped]), args)
    expect([code, out, err]).toEqual([2, '', complaint])
  })

  it('a plan without terrains says so', async () => {
    const { err } = await rides(planOf([damped], []), ['--terrain', 'x'])
    expect(err).toBe('There is no terrain “x” in this plan. It has none.\n')
  })

  it('a trace that cannot be written leaves nothing on the output', async () => {
    const { folder } = await rides(planOf([damped]), ['--terrain', 'drop'])
    await mkdir(path.join(folder, 'there.csv'))
    const { code, out, err } = await ran(folder, 'ride', 'car.stopgap', '--terrain', 'drop', '--trace', 'there.csv')
    expect([code, out]).toEqual([2, ''])
    expect(err).toMatch(/^there\.csv could not be written: /)
    const refused = await ran(folder, 'ride', 'car.stopgap', '--terrain', 'none', '--trace', 'new.csv')
    expect([refused.code, existsSync(path.join(folder, 'new.csv'))]).toEqual([2, false])
  })
})

describe('the trace of a ride', () => {
  it('has its units in its head, a line every millisecond, and what the figures say in its columns', async () => {
    const { folder, code, out } = await rides(planOf([damped, { ...damped, id: 'rear' }]), [
      '--terrain',
      'whoops',
      '--json',
      '--trace',
      'ride.csv',
    ])
    expect(code).toBe(0)
    const [head, ...lines] = (await readFile(path.join(folder, 'ride.csv'), 'utf8')).trimEnd().split('\n')
    expect(head).toBe(
      'setup,axle,time (s),wheel (m),road (m),chassis (m),suspension force at the wheel (N),force along the stop (N),tire force (N),chassis acceleration (m/s^2)',
    )
    const front = lines
      .filter(line => line.startsWith('as-found,front,'))
      .map(line => line.split(',').slice(2).map(Number))
    expect(lines.length).toBe(2 * front.length)
    expect(front.length).toBe(4876)
    expect(front.map(([time]) => Math.round(time! * 1000))).toEqual(front.map((_, i) => i))
    expect(front.flat().every(Number.isFinite)).toBe(true)
    const figures = JSON.parse(out).setups[0].axles[0]
    expect(Math.abs(Math.max(...front.map(row => row[1]!)) - figures.wheelMax)).toBeLessThan(1e-5)
    expect(Math.max(...front.map(row => row[2]!))).toBeGreaterThan(0.099)
  })
})

describe('a measured road', () => {
  it('is driven at the speed given, and named', async () => {
    const text = 'distance (ft),height (in)\r\n0,0\r\n20,0\r\n21,4\r\n40,4\r\n'
    const { code, out, err } = await rides(planOf([damped]), ['--road', 'creek.csv', '--speed', '10 m/s'], {
      'creek.csv': text,
    })
    expect([code, err]).toEqual([0, ''])
    expect(out).toContain('The road in creek.csv, 480 in long, at 22.4 mph. It lasts 4.22 s.')
  })

  it.each([
    ['', 'line 1 has “”; it should be the head, “distance (m),height (m)” or with another unit of length'],
    ['0,0\n1,0\n', 'line 1 has “0,0”; it should be the head'],
    ['distance (m),height (furlong)\n0,0\n1,0\n', 'line 1 has “distance (m),height (furlong)”'],
    ['distance (m),height (m)\n0,0\n1\n', 'line 3 has “1”; it should be two numbers with “,” between'],
    ['distance (m),height (m)\n0,0\n1,=2\n', 'line 3 has “1,=2”'],
    [
      'distance (m),height (m)\n0,0\n2,0\n1.5,0\n',
      'line 4 has a distance of 1.5; it should be more than the 2 before it',
    ],
    ['distance (m);height (m)\n0;0\n1;5000\n', 'line 3 has “1;5000”; it should be a road within 100000 m'],
    ['distance (m),height (m)\n0,0\n', 'it has 1 place; a road needs two or more'],
  ])('%j is refused with what is wrong', async (text, complaint) => {
    const { code, out, err } = await rides(planOf([damped]), ['--road', 'r.csv', '--speed', '9'], { 'r.csv': text })
    expect([code, out]).toEqual([2, ''])
    expect(err).toContain(`r.csv cannot be used as a road: ${complaint}`)
  })
})
