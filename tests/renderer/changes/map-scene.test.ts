import { expect, test } from 'vitest'
import { propose, proposed } from '../../../core/changes/propose.ts'
import { usualRanges } from '../../../core/changes/usual-ranges.ts'
import { INCH, PSI } from '../../../core/units/constants.ts'
import { mapScene, pointNear } from '../../../renderer/charts/map/map-scene.ts'
import { seed } from '../../seeds/seed.ts'

const plan = seed('before-and-after.stopgap')
const axle = plan.setups[0]!.axles.find(({ id }) => id === 'rear')!
const ranges = {
  ...usualRanges(axle.corner, { stops: [], springs: [], tubes: [] }, 'inch'),
  charges: [120, 200, 280].map(psi => psi * PSI),
}
const proposals = proposed(propose(axle, plan, ranges, { landing: 'energy' }))
const targets = { coiloverShare: 0.45, landingDrop: 18 * INCH }
const scene = mapScene(500, 400, proposals, targets, 'inch')

test('a point stands where its figures say: a target put there goes through it', () => {
  for (const { candidate, x, y } of [...scene.points, scene.present!]) {
    expect(scene.landingAt(x)).toBeCloseTo(candidate.figures.landing.drop, 9)
    expect(scene.shareAt(y)).toBeCloseTo(candidate.figures.share, 9)
  }
  expect(scene.shareAt(scene.shareY!)).toBeCloseTo(0.45, 9)
  expect(scene.landingAt(scene.landingX!)).toBeCloseTo(18 * INCH, 9)
})

test('everything stands inside the frame, also where nothing is known yet', () => {
  for (const { x, y } of [...scene.points, scene.present!]) {
    expect(x).toBeGreaterThanOrEqual(scene.left)
    expect(x).toBeLessThanOrEqual(scene.right)
    expect(y).toBeGreaterThanOrEqual(scene.top)
    expect(y).toBeLessThanOrEqual(scene.bottom)
  }
  const empty = mapScene(500, 400, null, {}, 'metric')
  expect(empty).toMatchObject({ points: [], present: null, shareY: null, landingX: null })
  expect(empty.across.every(({ at }) => Number.isFinite(at))).toBe(true)
})

test('the nearest point is meant, and none where none is near', () => {
  const { x, y, candidate } = scene.points[1]!
  expect(pointNear(scene, x + 1, y - 1)?.candidate).toBe(candidate)
  expect(pointNear(scene, scene.left, scene.top)).toBeNull()
})

test('marks along the map tell neighbours apart, however near they are', () => {
  for (const [least, most] of [
    [0.001, 0.0012],
    [0.06, 0.11],
    [0.3, 0.6],
    [3, 9],
  ] as const) {
    const one = proposals.order[0]!
    const at = (drop: number) => ({ ...one, figures: { ...one.figures, landing: { ...one.figures.landing, drop } } })
    const two = { ...proposals, present: at(least), order: [at(most)] }
    for (const system of ['inch', 'metric'] as const) {
      const { across } = mapScene(400, 300, two, {}, system)
      expect(across.length).toBeGreaterThan(1)
      expect(new Set(across.map(({ text }) => text)).size).toBe(across.length)
    }
  }
})

test('the setup it is compared with has its place, and the map reaches to it', () => {
  const one = proposals.order[0]!
  const far = { ...one, figures: { ...one.figures, share: 0.99, landing: { ...one.figures.landing, drop: 5 } } }
  const wide = mapScene(400, 300, proposals, {}, 'inch', far)
  expect(wide.other!.x).toBeLessThanOrEqual(wide.right)
  expect(wide.other!.y).toBeGreaterThanOrEqual(wide.top)
  expect(mapScene(400, 300, proposals, {}, 'inch').other).toBeNull()
})
