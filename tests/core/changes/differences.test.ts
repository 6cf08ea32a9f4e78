import { expect, test } from 'vitest'
import { changeAxle } from '../../../core/changes/apply.ts'
import { setupDifferences } from '../../../core/changes/differences.ts'
import { INCH, PSI } from '../../../core/units/constants.ts'
import { sayIn } from '../../../core/units/saying.ts'
import { seed } from '../../seeds/seed.ts'

const rear = seed('before-and-after.stopgap').setups[0]!.axles.find(({ id }) => id === 'rear')!

test('a spacer and a charge are told as done, engagement as what follows, and nothing that stays', () => {
  const tube = { outerDiameter: 1.5 * INCH, wall: 0.12 * INCH }
  const made = changeAxle(
    rear,
    [
      { kind: 'spacer', length: INCH, ...tube },
      { kind: 'charge', charge: 200 * PSI },
    ],
    sayIn('inch'),
  )
  if (!made.ok) throw new Error(made.reason)
  const told = setupDifferences(rear, made.axle, 'inch')
  expect(told.map(({ what, kind }) => `${kind}: ${what}`)).toEqual([
    'made: spacer inside the stop',
    'made: stroke of the stop',
    'made: gap',
    'made: charge of the stop',
    'made: gas volume of the stop',
    'follows: engagement',
    'follows: share of bump on the coilover',
    'follows: force of the stop at full bump, in a hit',
  ])
  expect(told.slice(0, 4).map(({ what, before, after }) => `${what} ${before} becomes ${after}`)).toEqual([
    'spacer inside the stop none becomes 1 in',
    'stroke of the stop 3 1/2 in becomes 2 1/2 in',
    'gap 1 1/4 in becomes 2 1/4 in',
    'charge of the stop 140 psi becomes 200 psi',
  ])
  expect(setupDifferences(made.axle, rear, 'inch').map(({ before, after }) => [after, before])).toEqual(
    told.map(({ before, after }) => [before, after]),
  )
})

test('a setup does not differ from itself, and a stop taken out is told', () => {
  expect(setupDifferences(rear, rear, 'metric')).toEqual([])
  const without = { ...rear, corner: { ...rear.corner, stop: null } }
  expect(setupDifferences(rear, without, 'inch')[0]).toEqual({
    what: 'stop',
    before: 'hydraulic',
    after: 'none',
    kind: 'made',
  })
})
