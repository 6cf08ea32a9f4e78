import fc from 'fast-check'
import { createElement } from 'react'
import { renderToStaticMarkup } from 'react-dom/server'
import { expect, test } from 'vitest'
import type { Corner } from '../../../../core/plan/schema.ts'
import { INCH } from '../../../../core/units/constants.ts'
import { nearestFraction } from '../../../../core/units/fraction.ts'
import { ForceAreas } from '../../../../renderer/charts/plate/columns/ForceAreas.tsx'
import { ShaftFills, ShaftGrounds, ShaftOutlines } from '../../../../renderer/charts/plate/columns/ShaftBars.tsx'
import {
  BudgetColumn,
  CrossLines,
  DemandColumn,
  PlateRules,
  ZoneTints,
} from '../../../../renderer/charts/plate/columns/StaticLayer.tsx'
import { WeightMark, WheelMarks } from '../../../../renderer/charts/plate/columns/WheelMarks.tsx'
import { forceRows, forceStep } from '../../../../renderer/charts/plate/forces-geometry.ts'
import { plateFrame } from '../../../../renderer/charts/plate/frame.ts'
import type { Scene } from '../../../../renderer/charts/plate/scene.ts'
import { shownZones } from '../../../../renderer/charts/plate/travel.ts'
import { rulerTicks, wheelAxis } from '../../../../renderer/charts/plate/wheel-axis.ts'
import { arbitraryCorner } from '../../../laws/arbitrary-corner.ts'
import { between } from '../../../laws/arbitrary-linkage.ts'
import { hydraulicStop, sampleCorner } from '../sample-axles.ts'
import { arbitraryFont, arbitrarySize, arbitraryView, compiledCorner, evenFont } from './arbitrary-view.ts'
import { plateScene } from './whole-scene.ts'

const sixteenths = (length: number): number => {
  const { whole, numerator, denominator } = nearestFraction(length / INCH)
  return 16 * whole + (16 * numerator) / denominator
}

test('zones add up to the bump travel shown, in sixteenths and in millimetres', () => {
  fc.assert(
    fc.property(arbitraryCorner(), corner => {
      const { budget } = compiledCorner(corner, 'inch')
      const inch = shownZones(budget, 'inch')
      expect(sixteenths(inch.coilover) + sixteenths(inch.engagement)).toBe(sixteenths(inch.bump))
      const metric = shownZones(budget, 'metric')
      const millimetres = (length: number): number => Math.round(length * 1000)
      expect(millimetres(metric.coilover) + millimetres(metric.engagement)).toBe(millimetres(metric.bump))
      expect((inch.coiloverPercent ?? 0) + (inch.engagementPercent ?? 100)).toBe(100)
    }),
    { seed: 21, numRuns: 200 },
  )
}, 30_000)

test('the axis maps a wheel position to a height and back, full bump up', () => {
  fc.assert(
    fc.property(arbitrarySize, between(0, 1), between(-1, 0), between(0, 0.4), (size, bump, droop, reserve) => {
      const frame = plateFrame(size.width, size.height, 4)
      const axis = wheelAxis(frame, { bump, droop, reserve: bump + reserve })
      for (const share of [0, 0.3, 1]) {
        const wheel = droop + share * (bump - droop)
        expect(axis.wheelAt(axis.y(wheel))).toBeCloseTo(wheel, 9)
      }
      expect(axis.y(bump)).toBeLessThanOrEqual(axis.y(droop))
      expect(axis.y(bump)).toBeGreaterThanOrEqual(frame.head)
      expect(axis.y(droop)).toBeLessThanOrEqual(size.height)
    }),
    { seed: 22, numRuns: 200 },
  )
})

test('columns stand side by side and fill the plate, with loads and without', () => {
  for (const width of [320, 804, 1172, 3572])
    for (const demands of [0, 1, 4, 12]) {
      const { corner, budget, shafts, forces, demands: load, names } = plateFrame(width, 704, demands)
      const columns = [corner, budget, shafts, forces, ...(load === null ? [] : [load]), names]
      columns.slice(1).forEach((column, index) => {
        expect(column.x).toBeCloseTo(columns[index]!.right, 9)
      })
      expect(names.right).toBeCloseTo(width, 6)
      expect(Math.min(...columns.map(column => column.width))).toBeGreaterThan(20)
      expect(load === null).toBe(demands === 0)
    }
})

test('ruler ticks are whole marks of the unit inside the travel, long ones far enough apart for their numbers', () => {
  const frame = plateFrame(1172, 704, 0)
  for (const [bump, droop] of [
    [0.24, -0.235],
    [1, -1],
    [0.01, -0.002],
  ] as const) {
    const axis = wheelAxis(frame, { bump, droop, reserve: bump })
    const ticks = rulerTicks(axis, bump, droop, 'inch')
    expect(ticks.every(({ wheel }) => wheel <= bump + 1e-9 && wheel >= droop - 1e-9)).toBe(true)
    const long = ticks.filter(tick => tick.long)
    long.slice(1).forEach((tick, index) => {
      expect(long[index]!.y - tick.y).toBeGreaterThan(20)
    })
  }
})

test('the force outline holds the step at the touch, as wide as the charge pushes', () => {
  const { model } = compiledCorner(sampleCorner, 'inch')
  const rows = forceRows(model)
  const pair = rows.filter(row => row.wheel === model.engagement)
  expect(pair).toHaveLength(2)
  const [foot, head] = pair as [(typeof rows)[0], (typeof rows)[0]]
  const area = (Math.PI / 4) * hydraulicStop.shaftDiameter ** 2
  const pushed = area * hydraulicStop.charge * model.linkage.at(model.engagement!).stopRatio
  expect(head.slow - foot.slow).toBeCloseTo(pushed, 6)
  expect(head.springs).toBeCloseTo(foot.springs, 9)
  expect(forceStep(model)).toEqual({ wheel: model.engagement, below: foot.slow, above: head.slow })
  expect(rows.map(row => row.wheel)).toEqual([...rows.map(row => row.wheel)].sort((a, b) => a - b))
  for (const kink of model.kinks) expect(rows.some(row => row.wheel === kink)).toBe(true)
})

test('areas are stacked: springs within gas within the slow total within the fast', () => {
  fc.assert(
    fc.property(arbitraryCorner(), corner => {
      const { model } = compiledCorner(corner, 'inch')
      for (const { springs, gas, slow, fast } of forceRows(model)) {
        const slack = 1e-6 * Math.max(1, fast)
        expect(springs).toBeLessThanOrEqual(gas + slack)
        expect(gas).toBeLessThanOrEqual(slow + slack)
        expect(slow).toBeLessThanOrEqual(fast + slack)
      }
    }),
    { seed: 23, numRuns: 60 },
  )
})

const drawn = (scene: Scene, wheel: number): string =>
  renderToStaticMarkup(
    createElement(
      'svg',
      null,
      createElement(ZoneTints, { scene }),
      createElement(PlateRules, { scene }),
      createElement(BudgetColumn, { scene, patterns: 'p' }),
      createElement(DemandColumn, { scene }),
      createElement(ShaftGrounds, { scene }),
      createElement(ShaftFills, { scene, patterns: 'p', y: scene.axis.y(wheel) }),
      createElement(ShaftOutlines, { scene }),
      createElement(ForceAreas, { scene, patterns: 'p' }),
      createElement(CrossLines, { scene }),
      createElement(WheelMarks, { scene, wheel }),
      createElement(WeightMark, { scene }),
    ),
  )

const unfit = (markup: string): string[] => [
  ...(markup.match(/[^"]{0,30}(NaN|Infinity|undefined)[^"]{0,30}/g) ?? []),
  ...(markup.match(/(width|height)="-[^"]*"/g) ?? []),
]

test('nothing drawn is without a number or of negative size, whatever the corner', () => {
  fc.assert(
    fc.property(arbitraryView, arbitraryFont, arbitrarySize, between(0, 1), (view, measure, size, share) => {
      const scene = plateScene(view, size.width, size.height, measure)
      const { droop, bump } = scene.travel
      expect(unfit(drawn(scene, droop + share * (bump - droop)))).toEqual([])
    }),
    { seed: 24, numRuns: 60 },
  )
}, 60_000)

const extremes: Record<string, Corner> = {
  'no bump travel': { ...sampleCorner, clearance: { bump: 0, droop: 0.2 } },
  'no droop': { ...sampleCorner, clearance: { bump: null, droop: 0 } },
  'no travel at all': { ...sampleCorner, clearance: { bump: 0, droop: 0 } },
  'a metre of travel each way': {
    ...sampleCorner,
    linkage: { kind: 'ratio', shock: 0.3, stop: 0.3 },
    shock: { ...sampleCorner.shock, stroke: 1, showing: 0.5, gas: null },
    springs: {
      springs: [{ name: 'main', rate: 1e4, freeLength: 2, solidLength: 0.3 }],
      preload: 0,
      crossover: null,
    },
    stop: null,
    clearance: { bump: 1, droop: 1 },
  },
  'a stop that is never met': { ...sampleCorner, stop: { ...hydraulicStop, gap: 0.6 } },
  'a stop touched at full droop': {
    ...sampleCorner,
    stop: { ...hydraulicStop, stroke: 0.5, gap: -0.45, gasVolume: 0.01 },
  },
  'a stop met exactly at ride height': { ...sampleCorner, stop: { ...hydraulicStop, gap: 0 } },
  'forces of a million pounds': {
    ...sampleCorner,
    cornerMass: 40_000,
    stop: { ...hydraulicStop, charge: 1e8, gasVolume: 1.3e-4 },
  },
  'no forces to speak of': {
    ...sampleCorner,
    cornerMass: 0.2,
    unsprungMass: 0.1,
    springs: { ...sampleCorner.springs, preload: -0.4 },
    shock: { ...sampleCorner.shock, gas: null },
    stop: null,
  },
}

test.each(Object.entries(extremes))('%s is drawn', (_, corner) => {
  for (const system of ['inch', 'metric'] as const)
    for (const [width, height] of [
      [1172, 704],
      [804, 420],
      [240, 120],
    ] as const) {
      const view = { ...compiledCorner(corner, system), other: null, demands: null, system }
      const scene = plateScene(view, width, height, evenFont(0.6))
      for (const wheel of [scene.travel.droop, 0, scene.travel.bump]) expect(unfit(drawn(scene, wheel))).toEqual([])
    }
})
