import { describe, expect, it } from 'vitest'
import { linkageModel } from '../../../core/linkage/linkage.ts'
import type { ArmLinkage, AxleLinkage, Linkage, Point } from '../../../core/plan/schema.ts'
import { close } from '../../close.ts'

const table: Linkage = {
  kind: 'table',
  rows: [
    { wheel: -0.1, shock: -0.06, stop: -0.07 },
    { wheel: 0, shock: 0, stop: 0 },
    { wheel: 0.1, shock: 0.065, stop: 0.08 },
    { wheel: 0.2, shock: 0.14, stop: 0.18 },
  ],
}
/** Level at ride height: pivots along x at the origin, 0.6 m to the wheel, the shock straight up from 0.4 m. */
const arm: ArmLinkage = {
  kind: 'arm',
  pivot: [
    [0.2, 0, 0],
    [-0.2, 0, 0],
  ],
  wheel: [0, 0.6, 0],
  shockLower: [0, 0.4, 0],
  shockUpper: [0, 0.4, 0.5],
  stopPad: [0, 0.3, 0],
  stopAxis: [0, 0, 2],
}
const axle: AxleLinkage = {
  kind: 'axle',
  shockLower: [0, 0.5, 0.3],
  shockUpper: [0.15, 0.3, 0.9],
  stopPad: [0, 0.4, 0.4],
  stopAxis: [0, 0.6, 0.8],
}
const ALL: readonly [string, Linkage][] = [
  ['ratio', { kind: 'ratio', shock: 0.6, stop: 0.8 }],
  ['table', table],
  ['arm', arm],
  ['axle', axle],
]

describe.each(ALL)('a linkage of kind %s', (_kind, given) => {
  const model = linkageModel(given)
  const places = [-0.09, -0.03, 0, 0.02, 0.11, 0.19]

  it('moves nothing at ride height', () => {
    const { shock, stop } = model.at(0)
    expect([shock, stop]).toEqual([0, 0])
  })

  it('has ratios that are the slopes of its movements, and slopes of those that are the slopes of its ratios', () => {
    const h = 1e-6
    for (const wheel of places) {
      const [before, here, after] = [model.at(wheel - h), model.at(wheel), model.at(wheel + h)]
      close(here.shockRatio, (after.shock - before.shock) / (2 * h), { abs: 1e-5 })
      close(here.stopRatio, (after.stop - before.stop) / (2 * h), { abs: 1e-5 })
      const above = model.ratioSlopes(wheel, 'above')
      close(above.shock, (after.shockRatio - here.shockRatio) / h, { abs: 1e-3 })
      close(above.stop, (after.stopRatio - here.stopRatio) / h, { abs: 1e-3 })
      const below = model.ratioSlopes(wheel, 'below')
      close(below.shock, (here.shockRatio - before.shockRatio) / h, { abs: 1e-3 })
      close(below.stop, (here.stopRatio - before.stopRatio) / h, { abs: 1e-3 })
    }
  })
})

describe('a table', () => {
  const model = linkageModel(table)
  it('goes through its rows, and is never continued beyond them', () => {
    expect([model.lowest, model.highest, model.knots]).toEqual([-0.1, 0.2, [-0.1, 0, 0.1, 0.2]])
    for (const { wheel, shock, stop } of table.rows) {
      close(model.at(wheel).shock, shock, { abs: 1e-15 })
      close(model.at(wheel).stop, stop, { abs: 1e-15 })
    }
    expect(model.at(0.5)).toEqual(model.at(0.2))
    expect(model.at(-0.5)).toEqual(model.at(-0.1))
  })
})

describe('an arm', () => {
  const model = linkageModel(arm)
  const [reach, height] = [0.6, 0]

  it('ends where the wheel stands straight above and below its pivots', () => {
    expect([model.lowest, model.highest]).toEqual([-reach - height, reach - height])
    const low = linkageModel({ ...arm, wheel: [0, 0.6, -0.25] })
    close(low.highest, 0.65 + 0.25, { rel: 1e-14 })
    close(low.lowest, -0.65 + 0.25, { rel: 1e-14 })
  })

  it('moves the pad straight up with the turn, whatever the length of the stop axis', () => {
    for (const angle of [-0.6, -0.1, 0.3, 1]) {
      close(model.at(0.6 * Math.sin(angle)).stop, 0.3 * Math.sin(angle), { abs: 1e-15 })
    }
  })

  it('brings the mounts together as the turn does', () => {
    for (const angle of [-0.6, -0.1, 0.3, 1]) {
      const mount = [0.4 * Math.cos(angle), 0.4 * Math.sin(angle)] as const
      const length = Math.hypot(0.4 - mount[0], 0.5 - mount[1])
      close(model.at(0.6 * Math.sin(angle)).shock, 0.5 - length, { abs: 1e-15 })
    }
  })

  it('turns points about the pivots: the wheel rises by just the wheel travel, distances stay', () => {
    const { move } = model
    if (move === null) throw new Error('no geometry')
    for (const wheel of [-0.4, 0.1, 0.55]) {
      const [x, y, z] = move([0, 0.6, 0], wheel)
      close(z, wheel, { abs: 1e-15 })
      close(Math.hypot(y, z), 0.6, { rel: 1e-14 })
      expect(x).toBe(0)
    }
  })

  it('at its dead points, and asked beyond them, still gives numbers: those of the dead point', () => {
    for (const wheel of [model.highest, model.lowest, 5, -5]) {
      const end = Math.min(model.highest, Math.max(model.lowest, wheel))
      expect(model.at(wheel)).toEqual(model.at(end))
      expect(Object.values(model.at(wheel)).every(Number.isFinite)).toBe(true)
      expect(Object.values(model.ratioSlopes(end, 'below')).every(Number.isFinite)).toBe(true)
    }
    expect(Math.abs(model.at(model.highest).shockRatio)).toBeGreaterThan(1e5)
  })

  it('is the same arm on a slanted pivot axis when wheel, mounts and pad turn about it as before', () => {
    const tilt = (point: Point): Point => [0.8 * point[0] - 0.6 * point[1], 0.6 * point[0] + 0.8 * point[1], point[2]]
    const turned = linkageModel({
      ...arm,
      pivot: [tilt(arm.pivot[0]), tilt(arm.pivot[1])],
      wheel: tilt(arm.wheel),
      shockLower: tilt(arm.shockLower),
      shockUpper: tilt(arm.shockUpper),
      stopPad: tilt(arm.stopPad),
    })
    close(turned.at(0.2).shock, model.at(0.2).shock, { rel: 1e-13 })
    close(turned.at(0.2).stopRatio, model.at(0.2).stopRatio, { rel: 1e-13 })
  })
})

describe('a solid axle', () => {
  const model = linkageModel(axle)
  it('has no end of its own, and its pad moves along the stop axis by the cosine to the vertical', () => {
    expect([model.lowest, model.highest]).toEqual([-Infinity, Infinity])
    close(model.at(0.1).stop, 0.08, { rel: 1e-14 })
    close(model.at(-0.3).stopRatio, 0.8, { rel: 1e-14 })
  })

  it('shortens the shock by the distance between mount and upper eye', () => {
    const length = (wheel: number) => Math.hypot(0.15, -0.2, 0.6 - wheel)
    for (const wheel of [-0.4, 0.2, 0.6]) close(model.at(wheel).shock, length(0) - length(wheel), { abs: 1e-15 })
    close(model.at(0.6).shockRatio, 0, { abs: 1e-15 })
  })
})
