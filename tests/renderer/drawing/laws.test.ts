import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { Corner, Linkage, Point } from '../../../core/plan/schema.ts'
import { detailAt } from '../../../renderer/charts/drawing/detail.ts'
import { detailFrame } from '../../../renderer/charts/drawing/detail-frame.ts'
import { extentOf } from '../../../renderer/charts/drawing/extent.ts'
import { fanShapes } from '../../../renderer/charts/drawing/fan.ts'
import { stationAt } from '../../../renderer/charts/drawing/figure.ts'
import { nameColumns, partNames } from '../../../renderer/charts/drawing/part-names.ts'
import { close } from '../../close.ts'
import { arbitraryCorner } from '../../laws/arbitrary-corner.ts'
import { allShapes } from './all-shapes.ts'
import { laidOut, positions } from './columns.ts'
import { axleOf, CORNERS } from './corners.ts'
import { numbersIn } from './paths.ts'
import { wideFont } from './widths.ts'

const RUNS = { numRuns: 40, seed: 20_260 }

describe('any corner a plan may hold', () => {
  it('is drawn in finite numbers, inside its column, at every wheel position', () => {
    let drawn = 0
    fc.assert(
      fc.property(arbitraryCorner(), corner => {
        const { model, figure, layout } = laidOut(axleOf(corner, 'rear'))
        const columns = nameColumns(figure, layout)
        const frame = detailFrame(figure, layout)
        const marks = {
          coilover: { from: 0, to: model.bump },
          engagementZone: { from: 0, to: model.bump },
          engagement: model.engagement,
          otherEngagement: model.engagement,
        }
        for (const wheel of positions(model)) {
          const station = stationAt(figure, wheel)
          const detail = frame === null ? null : detailAt(figure, layout, frame, station, 'metric', wideFont)
          const shapes = [
            ...allShapes(layout.place, figure, station),
            ...fanShapes(figure, layout, marks),
            ...(detail === null ? [] : [...detail.shapes, ...detail.dimension.shapes]),
          ]
          const named = partNames(figure, layout, station, columns, [], wideFont)
          const numbers = [
            ...shapes.flatMap(({ d, width }) => [...numbersIn(d), width ?? 0]),
            ...named.flatMap(({ box }) => Object.values(box) as number[]),
          ]
          expect(numbers.filter(value => !Number.isFinite(value))).toEqual([])
          drawn += shapes.length
        }
        const { left, up } = extentOf(figure)
        const [x, y] = layout.place.at([-left, up])
        expect(x).toBeGreaterThanOrEqual(layout.column.x)
        expect(y).toBeGreaterThanOrEqual(layout.column.head)
      }),
      RUNS,
    )
    expect(drawn).toBeGreaterThan(5000)
  }, 30_000)

  it('shows its stop touching where the model does, whatever its axis', () => {
    fc.assert(
      fc.property(arbitraryCorner(), corner => {
        const { model, figure } = laidOut(axleOf(corner, 'front'))
        const { engagement } = model
        if (figure.stop === null || engagement === null || engagement < model.droop) return
        const { stations, pad } = stationAt(figure, engagement).stop!
        close(stations.face, stations.pad, { abs: 1e-9 }, 'face on pad')
        // Square at the touch: the plate's face is where the model has the pad.
        close(pad.at, stations.pad, { abs: 1e-9 }, 'plate')
      }),
      RUNS,
    )
  })
})

/** Every length of a corner times a factor. */
function scaled(corner: Corner, factor: number): Corner {
  const point = ([x, y, z]: Point): Point => [x * factor, y * factor, z * factor]
  const { shock, springs, stop, tire, clearance } = corner
  const linkage = corner.linkage as Extract<Linkage, { kind: 'arm' }>
  return {
    ...corner,
    linkage: {
      ...linkage,
      pivot: [point(linkage.pivot[0]), point(linkage.pivot[1])],
      wheel: point(linkage.wheel),
      shockLower: point(linkage.shockLower),
      shockUpper: point(linkage.shockUpper),
      stopPad: point(linkage.stopPad),
    },
    shock: {
      ...shock,
      stroke: shock.stroke * factor,
      showing: shock.showing * factor,
      shaftDiameter: shock.shaftDiameter * factor,
    },
    springs: {
      springs: springs.springs.map(spring => ({
        ...spring,
        rate: spring.rate / factor,
        freeLength: spring.freeLength * factor,
        solidLength: spring.solidLength * factor,
      })),
      preload: springs.preload * factor,
      crossover: springs.crossover && { gap: springs.crossover.gap * factor },
    },
    stop:
      stop === null || stop.kind === 'elastomer'
        ? null
        : {
            ...stop,
            stroke: stop.stroke * factor,
            gap: stop.gap * factor,
            shaftDiameter: stop.shaftDiameter * factor,
            gasVolume: stop.gasVolume * factor ** 3,
          },
    tire: { ...tire, radius: tire.radius * factor },
    clearance: { bump: null, droop: clearance.droop && clearance.droop * factor },
  }
}

describe('a corner half or twice as large', () => {
  it.each([0.5, 1.7])('covers the same area in its own sizes, times %s', factor => {
    const { figure } = laidOut(axleOf(CORNERS.trailing, 'rear'))
    const { figure: other } = laidOut(axleOf(scaled(CORNERS.trailing, factor), 'rear'))
    const [a, b] = [extentOf(figure), extentOf(other)]
    for (const side of ['left', 'right', 'up', 'down'] as const) close(b[side], a[side] * factor, { rel: 1e-6 }, side)
  })
})
