import { describe, expect, it } from 'vitest'
import { parsePlan } from '../../../core/plan/parse.ts'
import type { Problem } from '../../../core/plan/problem.ts'
import { INCH } from '../../../core/units/constants.ts'
import { wholePlan } from './whole-plan.ts'
import { withValue } from './with-value.ts'

const problems = (value: unknown): readonly Problem[] => {
  const read = parsePlan(value)
  return read.ok ? [] : read.problems
}

const FRONT = 'setups[0].axles[0].corner'
const REAR = 'setups[0].axles[1].corner'
const PROPOSED = 'setups[1].axles[0].corner'
const bare = { wheel: 0, shock: 0, stop: 0 }

/** What is put where, and where the problem must be named when that is elsewhere. */
const NONSENSE: readonly [what: string, path: string, value: unknown, named?: string][] = [
  ['no setups', 'setups', []],
  ['no axles', 'setups[0].axles', []],
  ['three axles', 'setups[0].axles', Array.from({ length: 3 }, () => wholePlan().setups[1]!.axles[0])],
  ['two axles of one name', 'setups[0].axles[1].id', 'front'],
  ['an axle in the middle', 'setups[0].axles[1].id', 'middle'],
  ['two setups of one name', 'setups[1].id', 'found'],
  ['two loads of one name', 'loads[1].id', 'crew'],
  ['two terrains of one name', 'terrains[3].id', 'drop'],
  ['an id with spaces', 'setups[0].id', 'as found'],
  ['unknown units', 'units', 'furlong'],
  ['a wheelbase of nothing', 'vehicle.wheelbase', 0],
  ['a number as text', 'vehicle.cgHeight', '0.8'],
  ['a number that is none', 'vehicle.cgHeight', Number.NaN],
  ['an endless number', 'vehicle.cgHeight', Infinity],
  ['no value', 'vehicle.cgHeight', null],
  ['a value missing', 'vehicle.rollAxisHeight', undefined],
  ['an unknown suspension', 'setups[0].axles[0].suspension', 'floating'],
  ['a solid axle without shock spacing', 'setups[0].axles[1].shockSpacing', undefined],
  ['a solid axle without stop spacing', 'setups[0].axles[1].stopSpacing', undefined],
  ['a negative bar', 'setups[0].axles[0].antiRollRate', -1],
  ['a weightless corner', `${FRONT}.cornerMass`, 0],
  ['a corner lighter than its wheel', `${FRONT}.unsprungMass`, 350],
  ['an unknown linkage', `${FRONT}.linkage.kind`, 'rocker'],
  ['a motion ratio of nothing', `${REAR}.linkage`, { kind: 'ratio', shock: 0, stop: 1 }, `${REAR}.linkage.shock`],
  ['a table of two rows', `${REAR}.linkage.rows`, [bare, { wheel: 0.1, shock: 0.1, stop: 0.1 }]],
  ['a table without its row of zeros', `${REAR}.linkage.rows[1].stop`, 0.01, `${REAR}.linkage.rows`],
  ['a table whose wheel stands still', `${REAR}.linkage.rows[3].wheel`, 0.1],
  ['a table whose shock falls', `${REAR}.linkage.rows[3].shock`, 0.05],
  ['a table whose stop falls', `${REAR}.linkage.rows[2].stop`, -0.01],
  ['both pivots in one place', `${FRONT}.linkage.pivot[1]`, [0.2, 0.2, 0.4]],
  ['one pivot', `${FRONT}.linkage.pivot`, [[0.2, 0.2, 0.4]]],
  ['a point in a plane', `${FRONT}.linkage.wheel`, [0, 0.8]],
  ['a wheel on the pivot axis', `${FRONT}.linkage.wheel`, [0, 0.2, 0.4]],
  ['a wheel right below the pivot axis', `${FRONT}.linkage.wheel`, [0, 0.2, 0.1]],
  ['a shock of no length', `${FRONT}.linkage.shockUpper`, [0, 0.6, 0.42]],
  ['a stop axis of no direction', `${FRONT}.linkage.stopAxis`, [0, 0, 0]],
  ['a solid axle with a shock of no length', `${PROPOSED}.linkage.shockUpper`, [0, 0.5, 0.3]],
  ['a solid axle with a stop axis of no direction', `${PROPOSED}.linkage.stopAxis`, [0, 0, 0]],
  ['a shock without stroke', `${FRONT}.shock.stroke`, 0],
  ['more shaft showing than there is', `${FRONT}.shock.showing`, 0.4],
  ['a shaft past its bump', `${FRONT}.shock.showing`, -0.01],
  ['gas that the shaft fills', `${FRONT}.shock.gas.volume`, 1e-4],
  ['a vacuum', `${FRONT}.shock.gas.charge`, -1],
  ['a damper that pushes at rest', `${FRONT}.shock.compression[0].force`, 5],
  ['a damper that does not start at rest', `${FRONT}.shock.rebound[0].velocity`, 0.1],
  ['a damper whose speed stands still', `${FRONT}.shock.compression[2].velocity`, 0.5],
  ['a damper whose force falls', `${FRONT}.shock.compression[2].force`, 700],
  ['no spring', `${FRONT}.springs.springs`, []],
  [
    'four springs',
    `${FRONT}.springs.springs`,
    Array.from({ length: 4 }, () => wholePlan().setups[0]!.axles[0]!.corner.springs.springs[0]),
  ],
  ['a spring without rate', `${FRONT}.springs.springs[0].rate`, 0],
  ['a spring longer solid than free', `${FRONT}.springs.springs[0].solidLength`, 0.25],
  ['more preload than the springs can give', `${FRONT}.springs.preload`, 0.43],
  ['a stop ring above its divider', `${FRONT}.springs.crossover.gap`, -0.01],
  ['an unknown stop', `${FRONT}.stop.kind`, 'wooden'],
  ['a stop without stroke', `${FRONT}.stop.stroke`, 0],
  ['a stop pushed in further than it goes', `${FRONT}.stop.gap`, -0.2],
  ['a stop whose gas the shaft fills', `${FRONT}.stop.gasVolume`, 2e-4],
  ['a stop charged below nothing', `${FRONT}.stop.charge`, -5],
  ['a shaft wider than its body', `${FRONT}.stop.body.bore`, 0.05],
  ['a spacer that is all wall', `${FRONT}.stop.spacer.wall`, 0.02],
  ['a stop whose damper pushes at rest', `${FRONT}.stop.rebound[0].force`, 1],
  ['foam of one row', `${REAR}.stop.curve`, [{ deflection: 0, force: 0 }]],
  ['foam that begins pushed in', `${REAR}.stop.curve[0].deflection`, 0.001],
  ['foam whose deflection stands still', `${REAR}.stop.curve[2].deflection`, 0.02],
  ['foam that gets softer than nothing', `${REAR}.stop.curve[2].force`, 800],
  ['foam pushed in further than it goes', `${REAR}.stop.gap`, -0.06],
  ['a tire without rate', `${FRONT}.tire.rate`, 0],
  ['clearance below nothing', `${FRONT}.clearance.bump`, -0.01],
  [
    'nothing that ends the travel',
    PROPOSED,
    {
      ...wholePlan().setups[1]!.axles[0]!.corner,
      stop: null,
      springs: {
        springs: [{ name: 'main', rate: 30_000, freeLength: 3, solidLength: 0.1 }],
        preload: 0,
        crossover: null,
      },
      shock: { ...wholePlan().setups[1]!.axles[0]!.corner.shock, stroke: 4, showing: 2 },
      clearance: { bump: null, droop: 0.3 },
    },
    `${PROPOSED}.linkage`,
  ],
  ['an unknown load', 'loads[0].kind', 'towing'],
  ['a sideways pull without number', 'loads[1].lateral', undefined],
  ['an amplitude below nothing', 'loads[3].amplitude', -0.1],
  ['an unknown terrain', 'terrains[0].kind', 'ski jump'],
  ['half a whoop', 'terrains[0].count', 1.5],
  ['whoops without spacing', 'terrains[0].spacing', 0],
  ['a fall upwards', 'terrains[1].drop', -1],
  ['an unknown road class', 'terrains[2].isoClass', 'I'],
  ['a seed that is no whole number', 'terrains[2].seed', 0.5],
  ['a run in the folder above', 'runs[0].file', '../before.stopgap-run'],
  [
    'a tolerance of nothing measured',
    'tolerances.values',
    { 'loads.turn.name': 1 },
    'tolerances.values.loads.turn.name',
  ],
  [
    'a tolerance less than nothing',
    'tolerances.values',
    { 'vehicle.cgHeight': -0.01 },
    'tolerances.values.vehicle.cgHeight',
  ],
  ['a run by its whole path', 'runs[0].file', '/home/before.stopgap-run'],
  ['a run on a drive', 'runs[0].file', 'C:\\before.stopgap-run'],
  ['a run in a hidden folder', 'runs[0].file', 'runs/.git/before'],
  ['a run whose digest is cut', 'runs[0].digest', '0f'],
  ['spacers from more to less', 'ranges.front.spacers.to', 0.005],
  ['charges by no step', 'ranges.front.charges.step', 0],
  ['shims below nothing', 'ranges.front.shims', { from: -0.01, to: 0.01, step: 0.01 }, 'ranges.front.shims.from'],
  ['a part without an id', 'ranges.front.stops', [''], 'ranges.front.stops[0]'],
  ['a share above one', 'targets.coiloverShare', 1.01],
  ['a title of a page', 'title', 'x'.repeat(201)],
]

describe('nonsense in a plan', () => {
  it('starts from a plan that makes sense', () => expect(problems(wholePlan())).toEqual([]))

  it.each(NONSENSE)('%s: refused at %s', (_what, path, value, named = path) => {
    const found = problems(withValue(path, value))
    expect(found.map(problem => problem.path)).toContain(named)
    expect(found.filter(problem => problem.found === '' || problem.wanted === '')).toEqual([])
  })

  it('names everything that is wrong in one go', () => {
    const plan = wholePlan()
    plan.setups[0]!.axles[0]!.corner.shock.showing = 0.4
    plan.setups[0]!.axles[1]!.corner.unsprungMass = 400
    plan.loads[1]!.id = 'crew'
    expect(problems(plan)).toEqual([
      { path: 'loads[1].id', found: '“crew” again', wanted: 'an id no other entry has' },
      {
        path: `${FRONT}.shock.showing`,
        found: '0.4 m',
        wanted: 'no more than the stroke, 0.3048 m',
        bound: { side: 'most', limit: 12 * INCH, of: 'the stroke' },
      },
      {
        path: `${REAR}.unsprungMass`,
        found: '400 kg',
        wanted: 'less than what the tire carries, 350 kg',
        bound: { side: 'below', limit: 350, of: 'what the tire carries' },
      },
    ])
  })

  /** The reason as the command line prints it, and the bound as a number, in SI, for whoever says it in other units. */
  const REASONS: readonly [what: string, path: string, value: unknown, found: string, wanted: string, limit: number][] =
    [
      ['showing', `${FRONT}.shock.showing`, 0.31, '0.31 m', 'no more than the stroke, 0.3048 m', 12 * INCH],
      [
        'solid length',
        `${FRONT}.springs.springs[0].solidLength`,
        0.25,
        `0.25 m`,
        `less than the free length, 0.25 m`,
        0.25,
      ],
      ['unsprung mass', `${FRONT}.unsprungMass`, 350, '350 kg', 'less than what the tire carries, 350 kg', 350],
      ['a tire of no rate', `${FRONT}.tire.rate`, 0, '0', '1 or more', 1],
      ['a share above one', 'targets.coiloverShare', 1.01, '1.01', '1 or less', 1],
      [
        'a table that does not rise',
        `${REAR}.linkage.rows[3].wheel`,
        0.1,
        '0.1',
        'more than the one before it, 0.1',
        0.1,
      ],
    ]
  it.each(REASONS)('%s is refused with its reason and its bound', (_what, path, value, found, wanted, limit) => {
    const [problem, ...others] = problems(withValue(path, value))
    expect(others).toEqual([])
    expect(problem).toMatchObject({ path, found, wanted, bound: { limit } })
  })

  it('a stop or shock with no more gas than its shaft pushes aside is refused with that volume; a little more is taken', () => {
    const { shock, stop } = wholePlan().setups[0]!.axles[0]!.corner
    if (stop?.kind !== 'hydraulic') throw new Error('The plan has lost its hydraulic stop.')
    for (const [path, { shaftDiameter, stroke }] of [
      [`${FRONT}.shock.gas.volume`, shock],
      [`${FRONT}.stop.gasVolume`, stop],
    ] as const) {
      const aside = (Math.PI / 4) * shaftDiameter ** 2 * stroke
      const [problem] = problems(withValue(path, aside * 0.999))
      expect(problem?.path).toBe(path)
      expect(problem?.bound?.limit).toBeCloseTo(aside, 12)
      expect(problem?.wanted).toMatch(/^more than what the shaft pushes aside over its stroke, [\d.]+(e-\d+)? m³$/)
      expect(problems(withValue(path, aside * 1.001))).toEqual([])
    }
  })

  it('says what was found and what would be right', () => {
    const said = (path: string, value: unknown) => problems(withValue(path, value))
    expect(said('units', 'furlong')).toEqual([{ path: 'units', found: '"furlong"', wanted: '"inch" or "metric"' }])
    expect(said('vehicle.cgHeight', '0.8')).toEqual([{ path: 'vehicle.cgHeight', found: '"0.8"', wanted: 'a number' }])
    expect(said('vehicle.rollAxisHeight', undefined)).toEqual([
      { path: 'vehicle.rollAxisHeight', found: 'nothing', wanted: 'a number' },
    ])
    expect(said('setups', [])).toEqual([{ path: 'setups', found: 'a list of 0', wanted: 'at least 1 in the list' }])
    expect(said(`${FRONT}.stop.kind`, 'wooden')).toEqual([
      { path: `${FRONT}.stop.kind`, found: '"wooden"', wanted: '"hydraulic" or "elastomer"' },
    ])
  })
})
