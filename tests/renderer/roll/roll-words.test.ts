import { expect, test } from 'vitest'
import { setupLoads } from '../../../core/loads/ledger.ts'
import type { RollGeometry, SideInRoll } from '../../../renderer/charts/roll/roll-geometry.ts'
import { leftWords, noRollWords, rollRows, rollSentence } from '../../../renderer/charts/roll/roll-words.ts'
import { carry, plainAxle, plainPlan, turn } from '../../core/loads/plain-car.ts'

const plan = plainPlan([plainAxle({ rate: 40_000, weight: 4000 })], {}, [turn(4)])

const side = (left: number | null, stop: number, carries: number): SideInRoll => ({
  wheel: { x: 0, y: 0 },
  travel: 0.02,
  stop: left === null ? null : { root: { x: 0, y: 1 }, foot: { x: 0, y: 0.5 }, pad: { x: 0, y: 0.5 - left }, left },
  forces: { springs: 3000, gas: 200, stop, end: 0 },
  carries,
})

const geometry = (change: Partial<RollGeometry>): RollGeometry => ({
  axle: 'rear',
  solid: false,
  barred: false,
  roll: Math.PI / 36,
  outer: side(-0.012, 900, 6000),
  inner: side(0.04, 0, 2000),
  off: 0,
  tire: { radius: 0.4, width: 0.24 },
  chassis: [
    { x: -0.5, y: 1 },
    { x: 0.5, y: 1 },
  ],
  axis: { x: 0, y: 0.3 },
  low: { x: -1, y: 0 },
  high: { x: 1, y: 1 },
  ...change,
})

test('says how far it leans, which stop touches first and who carries what', () => {
  expect(rollSentence(geometry({}), plan)).toBe(
    'The car leans 5.0°. The outer rear stop touches first, is pushed in 12 mm and carries 900 N. The inner one has 40 mm left. The outer wheel carries 6,000 N, the inner 2,000 N.',
  )
})

test('speaks in the units of the plan', () => {
  expect(leftWords(side(0.0127, 0, 0), 'inch')).toBe('1/2 in left')
  expect(leftWords(side(0.0127, 0, 0), 'metric')).toBe('13 mm left')
  expect(leftWords(side(0.0001, 0, 0), 'metric')).toBe('just touches')
  expect(leftWords(side(null, 0, 0), 'inch')).toBe('no stop')
})

test('names the one that would be first when neither is touched', () => {
  expect(rollSentence(geometry({ outer: side(0.03, 0, 6000) }), plan)).toContain(
    'Neither rear stop is touched; the outer one would be first, with 30 mm left against 40 mm left.',
  )
})

test('a level car is said to be level, and a lifted wheel by how much', () => {
  expect(rollSentence(geometry({ roll: 0 }), plan)).toContain('No counted load is a turn, so the car stands level.')
  expect(rollSentence(geometry({ off: 0.021 }), plan)).toContain('The inner wheel is 21 mm off the ground.')
})

test('the anti-roll bar has a line where forces at the wheel then add up', () => {
  const bar = (of: RollGeometry) => rollRows(of, 'metric').find(({ name }) => name === 'Anti-roll bar')
  expect(bar(geometry({ barred: true }))).toMatchObject({ outer: '1,900 N', inner: '−1,200 N' })
  expect(bar(geometry({}))).toBeUndefined()
  expect(bar(geometry({ barred: true, solid: true }))).toBeUndefined()
})

test('a stop that is only touched is not said to be pushed in', () => {
  expect(rollSentence(geometry({ outer: side(0, 900, 6000) }), plan)).toContain(
    'The outer rear stop touches first and carries 900 N.',
  )
})

test('an end of the travel has a line only where it carries', () => {
  const names = (of: RollGeometry) => rollRows(of, 'metric').map(({ name }) => name)
  expect(names(geometry({}))).not.toContain('End of the travel')
  const ended = side(0.04, 0, 2000)
  expect(names(geometry({ inner: { ...ended, forces: { ...ended.forces, end: -150 } } }))).toContain(
    'End of the travel',
  )
})

test('says why there is nothing to draw', () => {
  const soft = plainPlan([plainAxle({ rate: 4000, weight: 4000 })], {}, [turn(12)])
  expect(noRollWords(setupLoads(soft, soft.setups[0]!), 'front')).toContain('it rolls over')
  const loaded = plainPlan([plainAxle({ rate: 40_000, weight: 4000 })], {}, [carry({ front: 50 })])
  expect(noRollWords(setupLoads(loaded, loaded.setups[0]!), 'rear')).toBe('This setup has no rear axle.')
  expect(noRollWords(setupLoads(loaded, loaded.setups[0]!), 'front')).toBeNull()
})
