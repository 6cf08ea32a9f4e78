import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { Terrain } from '../../../core/plan/schema.ts'
import { forceScale } from '../../../renderer/charts/terrain/force-scale.ts'
import {
  histogramBars,
  histogramScale,
  stepsPath,
  zoneOf,
  zonePath,
} from '../../../renderer/charts/terrain/histogram-geometry.ts'
import { terrainLabels } from '../../../renderer/charts/terrain/labels.ts'
import { bottomTimes, highestMoment, momentAt, spansOnStop } from '../../../renderer/charts/terrain/moment.ts'
import { areaPath, linePath, placeOf, signalPoints, valueAt } from '../../../renderer/charts/terrain/signal-path.ts'
import { terrainFrame } from '../../../renderer/charts/terrain/terrain-frame.ts'
import { type TerrainView, terrainScene } from '../../../renderer/charts/terrain/terrain-scene.ts'
import { timeAxis, timeWindow } from '../../../renderer/charts/terrain/time-axis.ts'
import { travelAxis } from '../../../renderer/charts/terrain/travel-axis.ts'
import { travelLines } from '../../../renderer/charts/terrain/travel-lines.ts'
import { sampleAxle, withCorner } from '../charts/sample-axles.ts'
import { measure, rode, terrains } from './rode.ts'

const SEED = 4_117
const runs = { seed: SEED, numRuns: 200 }

const width = fc.integer({ min: 1, max: 3840 })
const height = fc.integer({ min: 1, max: 2160 })
const number = (min: number, max: number) => fc.double({ min, max, noNaN: true })

/** Every number written in a path. */
const numbersIn = (path: string): number[] =>
  [...path.matchAll(/-?\d+(?:\.\d+)?|NaN|Infinity/g)].map(([text]) => Number(text))

describe('the frame', () => {
  it('has every strip and column inside the plate, one after the other, at any size', () => {
    fc.assert(
      fc.property(width, height, fc.boolean(), (w, h, windowed) => {
        const frame = terrainFrame(w, h, windowed)
        const across = [frame.corner, frame.trace, frame.histogram, frame.names]
        const down = [frame.travel, frame.road, frame.forces]
        expect(across[0]!.x).toBe(0)
        for (const [i, column] of across.entries()) {
          expect(column.width).toBeGreaterThan(0)
          expect(column.right).toBeLessThanOrEqual(w + 1 + 1e-6)
          if (i > 0) expect(column.x).toBeCloseTo(across[i - 1]!.right, 6)
        }
        for (const [i, strip] of down.entries()) {
          expect(strip.bottom).toBeGreaterThan(strip.top)
          if (i > 0) expect(strip.top).toBeGreaterThanOrEqual(down[i - 1]!.bottom - 1e-6)
        }
        expect(frame.forces.bottom).toBeLessThanOrEqual(h)
      }),
      runs,
    )
  })
})

describe('the travel axis', () => {
  it('leads back to the wheel position it came from, and has full bump above full droop', () => {
    fc.assert(
      fc.property(width, height, number(0, 0.6), number(-0.6, 0), number(-0.6, 0.6), (w, h, bump, droop, wheel) => {
        const axis = travelAxis(terrainFrame(w, h, false), bump, droop)
        expect(Math.abs(axis.wheelAt(axis.y(wheel)) - wheel)).toBeLessThan(1e-9)
        expect(axis.y(bump)).toBeLessThanOrEqual(axis.y(droop) + 1e-9)
        expect(axis.y(bump)).toBeGreaterThanOrEqual(axis.top - 1e-9)
        expect(axis.y(droop)).toBeLessThanOrEqual(axis.bottom + 1e-9)
      }),
      runs,
    )
  })
})

describe('the time axis', () => {
  it('leads back to the time it came from inside its window, and is kept to it outside', () => {
    fc.assert(
      fc.property(number(0.5, 4000), number(0, 1), number(10, 2000), (duration, share, right) => {
        const time = share * duration
        const window = timeWindow(duration, time)
        const axis = timeAxis(window, 40, 40 + right)
        expect(window.from).toBeLessThanOrEqual(time)
        expect(window.to).toBeGreaterThanOrEqual(time)
        expect(window.from).toBeGreaterThanOrEqual(0)
        expect(window.to).toBeLessThanOrEqual(duration + 1e-9)
        expect(Math.abs(axis.timeAt(axis.x(time)) - time)).toBeLessThan(1e-6 * duration)
        expect(axis.timeAt(-1e6)).toBe(window.from)
        expect(axis.timeAt(1e6)).toBe(window.to)
      }),
      runs,
    )
  })

  it('shows a short run whole and a long one in parts that stand still', () => {
    expect(timeWindow(7.4, 3)).toEqual({ from: 0, to: 7.4 })
    expect([0, 5, 8].map(time => timeWindow(30, time))).toEqual(Array(3).fill({ from: 0, to: 12 }))
    expect(
      [0, 5, 11.9, 12].map(time => timeWindow(30, time, { from: 0, to: 12 })),
      'a hand drags to its end',
    ).toEqual(Array(4).fill({ from: 0, to: 12 }))
    expect(timeWindow(30, 12.1, { from: 0, to: 12 })).toEqual({ from: 9, to: 21 })
    expect(timeWindow(30, 30)).toEqual({ from: 18, to: 30 })
    expect(timeWindow(20, 5, { from: 9, to: 21 }), 'of another run').toEqual({ from: 0, to: 12 })
  })

  it('shows what comes before and after a moment together with it', () => {
    fc.assert(
      fc.property(number(15.1, 4000), number(0, 1), (duration, share) => {
        const time = share * duration
        const { from, to } = timeWindow(duration, time)
        expect(Math.min(time - from, 1.5)).toBeGreaterThanOrEqual(Math.min(time, 1.5) - 1e-9)
        expect(Math.min(to - time, 1.5)).toBeGreaterThanOrEqual(Math.min(duration - time, 1.5) - 1e-9)
      }),
      runs,
    )
  })
})

describe('a signal on the screen', () => {
  it('is written to a tenth of a pixel, whatever its size and side', () => {
    for (const x of [0, -0.04, -0.06, 0.05, 12.34, -12.38, 99.96, 1234567.89, -0.96]) {
      const [, said] = /^M(\S+) 0$/.exec(linePath([{ x, y: 0 }])) ?? []
      expect(said).toMatch(/^-?\d+(\.\d)?$/)
      expect(Math.abs(Number(said) - x)).toBeLessThanOrEqual(0.05 + 1e-9)
    }
  })

  const signal = fc.array(number(-5, 5), { minLength: 2, maxLength: 400 })
  const evenly = (values: readonly number[]) => Float64Array.from(values, (_, i) => i * 0.01)

  it('keeps its highest and its lowest however many moments share a pixel', () => {
    fc.assert(
      fc.property(signal, number(0.5, 200), (values, pixels) => {
        const time = evenly(values)
        const points = signalPoints(
          time,
          values,
          0,
          time.at(-1)!,
          t => t * pixels,
          v => v,
        )
        const drawn = points.map(({ y }) => y)
        expect(Math.max(...drawn)).toBe(Math.max(...values))
        expect(Math.min(...drawn)).toBe(Math.min(...values))
        expect(points.every(({ x }, i) => i === 0 || x >= points[i - 1]!.x)).toBe(true)
        expect(points.length).toBeLessThanOrEqual(4 * (Math.ceil(time.at(-1)! * pixels) + 2))
      }),
      runs,
    )
  })

  it('leaves out what is not a number', () => {
    const points = signalPoints(
      [0, 1, 2],
      [1, Number.NaN, 3],
      0,
      2,
      t => 10 * t,
      v => v,
    )
    expect(linePath(points)).toBe('M0 1L20 3')
    expect(areaPath(points, 0)).toBe('M0 1L20 3L20 0L0 0z')
    expect([linePath([]), areaPath([], 0)]).toEqual(['', ''])
  })

  it('is read between two moments on the straight line between them', () => {
    expect([-1, 0, 0.25, 1, 9].map(at => valueAt([0, 1], [2, 4], at))).toEqual([2, 2, 2.5, 4, 4])
    expect([0, 0.5, 1, 2].map(at => placeOf([0, 1], at))).toEqual([0, 1, 1, 2])
  })
})

describe('the histogram', () => {
  const shares = fc
    .array(number(0, 1), { minLength: 1, maxLength: 60 })
    .filter(values => values.some(value => value > 0.01))
    .map(values => {
      const sum = values.reduce((total, value) => total + value, 0)
      return values.map(value => value / sum)
    })
  const column = { x: 100, width: 150, right: 250 }

  it('has bars that add up to the whole run and fill the travel without a gap', () => {
    fc.assert(
      fc.property(shares, number(-0.4, -0.001), number(0.01, 0.4), (values, droop, bump) => {
        const bars = histogramBars(values, droop, bump)
        expect(bars.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 9)
        expect([bars[0]!.from, bars.at(-1)!.to]).toEqual([droop, bump])
        expect(bars.every(({ from }, i) => i === 0 || Math.abs(from - bars[i - 1]!.to) < 1e-12)).toBe(true)
      }),
      runs,
    )
  })

  it('splits bars at ride height and engagement, so that the zones cover just what the bars do', () => {
    fc.assert(
      fc.property(
        shares,
        number(-0.4, -0.01),
        number(0.02, 0.4),
        fc.option(number(-0.3, 0.3)),
        (values, droop, bump, engagement) => {
          const bars = histogramBars(values, droop, bump)
          const axis = travelAxis(terrainFrame(1172, 560, false), bump, droop)
          const scale = histogramScale([bars], column, 10)
          const area = (path: string): number =>
            path
              .split('z')
              .filter(part => part !== '')
              .map(numbersIn)
              .reduce((sum, [left = 0, bottom = 0, right = 0, top = 0]) => sum + (right - left) * (bottom - top), 0)
          const zones = (['droop', 'coilover', 'engagement'] as const).map(zone =>
            zonePath(bars, zone, engagement, axis, scale),
          )
          const whole = bars.reduce(
            (sum, { from, to, share }) => sum + (scale.x(share) - scale.x(0)) * (axis.y(from) - axis.y(to)),
            0,
          )
          // Written to a tenth of a pixel.
          expect(Math.abs(zones.reduce((sum, zone) => sum + area(zone), 0) - whole)).toBeLessThan(0.02 * whole + 40)
          expect(numbersIn(stepsPath(bars, axis, scale)).every(Number.isFinite)).toBe(true)
        },
      ),
      runs,
    )
  })

  it('counts what is above engagement as on the stop, even below ride height', () => {
    expect([-0.1, 0.02, 0.2].map(wheel => zoneOf(wheel, 0.1))).toEqual(['droop', 'coilover', 'engagement'])
    expect([-0.1, -0.02, 0.2].map(wheel => zoneOf(wheel, -0.05))).toEqual(['droop', 'engagement', 'engagement'])
    expect([-0.1, 0.2].map(wheel => zoneOf(wheel, null))).toEqual(['droop', 'coilover'])
  })

  it('cuts the one bar of a car that stands still instead of flattening all the others', () => {
    const bars = histogramBars([0.02, 0.9, 0.03, 0.05], -0.1, 0.1)
    const scale = histogramScale([bars], column, 10)
    expect(scale.cap).toBeLessThan(0.1)
    expect(scale.x(0.9)).toBe(scale.x(scale.cap))
    expect(scale.x(0.05)).toBeGreaterThan(column.x + 20)
  })
})

const views: Record<string, TerrainView> = {}
const other = withCorner({ stop: { ...sampleAxle.corner.stop!, gap: 0.08 } as never })
const viewOf = (terrain: Terrain, system: TerrainView['system'] = 'inch'): TerrainView => {
  views[`${terrain.id} ${system}`] ??= {
    shown: rode('As found', sampleAxle, terrain),
    other: rode('Proposed', other, terrain),
    system,
  }
  return views[`${terrain.id} ${system}`]!
}

describe('moments of a ride', () => {
  const { model, ride } = viewOf(terrains.landing).shown
  const trace = ride!.trace!

  it('has the highest wheel where the figures have it', () => {
    const highest = momentAt(trace, highestMoment(trace))
    expect(Math.abs(highest.wheel - ride!.wheelMax)).toBeLessThan(2e-3)
  })

  it('is on the stop as long as the figures say', () => {
    const spans = spansOnStop(trace)
    const total = spans.reduce((sum, [from, to]) => sum + to - from, 0)
    expect(Math.abs(total / ride!.duration - ride!.share.onStop)).toBeLessThan(0.01)
  })

  it('comes to full bump as often as it bottoms', () => {
    const hard = rode('Hard', sampleAxle, { ...terrains.landing, drop: 3 })
    expect(hard.ride!.bottoms).toBeGreaterThan(0)
    expect(bottomTimes(hard.ride!.trace!, model.bump).length).toBeGreaterThan(0)
    const soft = rode('Soft', sampleAxle, { ...terrains.landing, drop: 0.05 })
    expect([soft.ride!.bottoms, bottomTimes(soft.ride!.trace!, model.bump)]).toEqual([0, []])
  })
})

describe('the scale of the forces', () => {
  it('reaches what springs and stop push with, not what steel does', () => {
    const { model, ride } = rode('Hard', sampleAxle, { ...terrains.landing, drop: 3 })
    const { bump, droop } = model
    const scale = forceScale([{ trace: ride!.trace!, bump, droop }], { top: 0, bottom: 100 }, 'inch')
    expect(ride!.suspensionForceMax).toBeGreaterThan(2 * scale.cap)
    expect(scale.y(ride!.suspensionForceMax)).toBe(scale.y(scale.cap))
    expect(scale.y(0)).toBeGreaterThan(scale.y(scale.cap))
  })

  it('is a scale where there is no ride', () => {
    const scale = forceScale([], { top: 0, bottom: 100 }, 'metric')
    expect([scale.y(0), scale.y(5), scale.cap].every(Number.isFinite)).toBe(true)
  })
})

describe('the scene', () => {
  it.each(
    Object.values(terrains).flatMap(terrain => (['inch', 'metric'] as const).map(system => [terrain, system] as const)),
  )('of $kind in $1 is made of numbers, at any size', (terrain, system) => {
    const view = viewOf(terrain, system)
    for (const [w, h] of [
      [1172, 470],
      [804, 330],
      [3572, 1400],
      [320, 200],
      [1, 1],
    ] as const) {
      const scene = terrainScene(view, timeWindow(view.shown.ride!.duration, 0), w, h, measure)
      const paths = [scene.shown, scene.other].flatMap(drawing => [
        linePath(drawing!.wheel),
        areaPath(drawing!.stop, scene.forces.y(0)),
        linePath(drawing!.suspension),
        stepsPath(drawing!.bars, scene.axis, scene.histogram),
      ])
      expect([...paths, linePath(scene.road)].flatMap(numbersIn).every(Number.isFinite)).toBe(true)
      expect(travelLines(scene).every(({ y }) => Number.isFinite(y))).toBe(true)
    }
  })

  it('draws its axis for a setup that could not be ridden', () => {
    const view = viewOf(terrains.ledge)
    const bare: TerrainView = { ...view, shown: { ...view.shown, ride: null }, other: null }
    const scene = terrainScene(bare, timeWindow(0, 0), 1172, 470, measure)
    expect([scene.shown, scene.other, scene.road]).toEqual([null, null, []])
    expect(terrainLabels(scene, 'Ledge').labels.map(({ id }) => id)).toContain('name-bump')
  })

  it('keeps the shares of the time off the bars, and says of a cut bar that it is one height', () => {
    const words: Record<string, string[]> = { share: [], cut: [] }
    for (const terrain of Object.values(terrains))
      for (const [w, h] of [
        [1172, 470],
        [804, 310],
      ] as const) {
        const scene = terrainScene(viewOf(terrain), timeWindow(20, 0), w, h, measure)
        for (const { box, id, spans } of terrainLabels(scene, terrain.name).labels) {
          words[id.split('-')[0]!]?.push(spans.map(({ text }) => text).join(''))
          if (!id.startsWith('share-')) continue
          const under = scene.shown!.bars.filter(({ from, to, share }) => {
            const [top, bottom] = [scene.axis.y(to), scene.axis.y(from)]
            return share > 0 && bottom > box.y && top < box.y + box.height && scene.histogram.x(share) > box.x
          })
          expect(under, `${terrain.name}, ${id}`).toEqual([])
        }
      }
    expect(words.share).toContain('above engagement')
    expect(words.cut!.length).toBeGreaterThan(0)
    for (const cut of words.cut!) expect(cut).toMatch(/% (at one height|here)$/)
  })

  it('names what it is compared with on its own side of ride height, or not at all', () => {
    for (const [w, h] of [
      [1172, 470],
      [804, 330],
      [804, 260],
    ] as const) {
      const scene = terrainScene(viewOf(terrains.whoops), timeWindow(20, 0), w, h, measure)
      const { labels } = terrainLabels(scene, 'Whoops')
      const top = (id: string) => labels.find(label => label.id.startsWith(id))?.box.y
      expect(scene.otherTravel!.engagement).toBeGreaterThan(0)
      expect(top('name-ride')).toBeDefined()
      expect(top('name-other') ?? 0, `${w} × ${h}`).toBeLessThan(top('name-ride')!)
    }
  })

  it('names things without one word lying on another', () => {
    for (const terrain of Object.values(terrains))
      for (const [w, h] of [
        [1172, 470],
        [804, 330],
        [1652, 640],
      ] as const) {
        const { labels } = terrainLabels(terrainScene(viewOf(terrain), timeWindow(20, 0), w, h, measure), terrain.name)
        for (const [i, { box: a, id }] of labels.entries()) {
          expect(a.x, id).toBeGreaterThanOrEqual(0)
          expect(a.x + a.width, id).toBeLessThanOrEqual(w + 1e-6)
          for (const { box: b, id: second } of labels.slice(i + 1)) {
            const apart =
              a.x + a.width <= b.x + 1e-6 ||
              b.x + b.width <= a.x + 1e-6 ||
              a.y + a.height <= b.y + 1e-6 ||
              b.y + b.height <= a.y + 1e-6
            expect(apart, `${id} and ${second}`).toBe(true)
          }
        }
      }
  })
})
