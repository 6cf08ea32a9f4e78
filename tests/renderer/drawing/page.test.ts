import { describe, expect, it } from 'vitest'
import { INCH } from '../../../core/units/constants.ts'
import { detailAt } from '../../../renderer/charts/drawing/detail.ts'
import { detailFrame } from '../../../renderer/charts/drawing/detail-frame.ts'
import { extentOf } from '../../../renderer/charts/drawing/extent.ts'
import { fanLine, fanShapes } from '../../../renderer/charts/drawing/fan.ts'
import { stationAt } from '../../../renderer/charts/drawing/figure.ts'
import { nameColumns, partNames } from '../../../renderer/charts/drawing/part-names.ts'
import { cornerSubtitles } from '../../../renderer/charts/drawing/subtitle.ts'
import { overlap } from '../../../renderer/charts/placement/box.ts'
import { close } from '../../close.ts'
import { allShapes } from './all-shapes.ts'
import { laidOut, positions } from './columns.ts'
import { axleOf, CORNERS, type CornerName, namedAxle } from './corners.ts'
import { numbersIn } from './paths.ts'
import { wideFont } from './widths.ts'

const names = Object.keys(CORNERS) as CornerName[]
/** Paths are written to a hundredth of a px. */
const ROUNDED = { abs: 0.011 }

describe.each(names)('%s in its column', name => {
  it.each([false, true])('stays inside it over the whole travel, small: %s', small => {
    const { model, figure, layout } = laidOut(namedAxle(name), small)
    const { column, place } = layout
    expect(place.scale).toBeGreaterThan(0)
    const covered: { readonly x: number[]; readonly y: number[] } = { x: [], y: [] }
    for (const wheel of positions(model)) {
      allShapes(
        {
          scale: place.scale,
          at: point => {
            const [x, y] = place.at(point)
            covered.x.push(x)
            covered.y.push(y)
            return [x, y]
          },
        },
        figure,
        stationAt(figure, wheel),
      )
    }
    expect(Math.min(...covered.x)).toBeGreaterThanOrEqual(column.x)
    expect(Math.max(...covered.x)).toBeLessThanOrEqual(layout.axisX)
    expect(Math.min(...covered.y)).toBeGreaterThanOrEqual(column.head)
    expect(Math.max(...covered.y)).toBeLessThanOrEqual(column.height)
  })

  it('has the hub at ride height on the axis’ own zero, and a fan that ends on the axis', () => {
    const { model, figure, layout } = laidOut(namedAxle(name))
    close(layout.place.at(figure.skeleton.at(0).hub)[1], layout.column.zero, { abs: 1e-9 }, 'hub')
    for (const wheel of [model.droop, 0, model.bump]) {
      const [, , x, y] = numbersIn(fanLine(figure, layout, wheel))
      close(x!, layout.axisX, ROUNDED, 'end of the line across')
      close(y!, layout.axisY(wheel), ROUNDED, 'end of the line up')
    }
  })

  it('has a line of ride height from the hub to the axis', () => {
    const { figure, layout } = laidOut(namedAxle(name))
    const marks = {
      coilover: { from: 0, to: 0 },
      engagementZone: { from: 0, to: 0 },
      engagement: null,
      otherEngagement: null,
    }
    const line = fanShapes(figure, layout, marks).find(one => one.look === 'rideHeight')!
    const hub = layout.place.at(figure.skeleton.at(0).hub)
    const [, y, hubX, hubY, axisX, axisY] = numbersIn(line.d)
    close(y!, hub[1], ROUNDED, 'left end')
    close(hubX!, hub[0], ROUNDED, 'at the hub, across')
    close(hubY!, hub[1], ROUNDED, 'at the hub, up')
    close(axisX!, layout.axisX, ROUNDED, 'at the axis, across')
    close(axisY!, layout.column.zero, ROUNDED, 'at the axis, up')
  })

  it('has names that overlap neither each other nor the detail, nor cross the axis', () => {
    const { model, figure, layout } = laidOut(namedAxle(name))
    const columns = nameColumns(figure, layout)
    const at = detailFrame(figure, layout)
    for (const wheel of positions(model)) {
      const tag = { x: layout.axisX - 98, y: layout.axisY(wheel) - 13, width: 98, height: 26 }
      const taken = at === null ? [tag] : [tag, at.frame]
      const placed = partNames(figure, layout, stationAt(figure, wheel), columns, taken, wideFont)
      const boxes = [...placed.map(one => one.box), ...taken.slice(1)]
      boxes.forEach((box, i) => {
        expect(box.x + box.width).toBeLessThanOrEqual(layout.axisX)
        expect(box.x).toBeGreaterThanOrEqual(layout.column.x)
        for (const other of boxes.slice(i + 1)) expect(overlap(box, other)).toBe(false)
      })
    }
  })
})

describe('next to no bump or droop', () => {
  const near = (change: { bump: number | null; droop: number }) => {
    const axle = namedAxle('trailing')
    return laidOut(axleOf({ ...axle.corner, clearance: change }, 'rear'))
  }

  it('leaves the drawing at least half as large as elsewhere, inside its column', () => {
    for (const { figure, layout } of [near({ bump: 0, droop: 0.235 }), near({ bump: null, droop: 0.001 })]) {
      const usual = laidOut(namedAxle('trailing')).layout.place.scale
      expect(layout.place.scale).toBeGreaterThan(0.5 * usual)
      const { up, down } = extentOf(figure)
      expect(layout.place.at([0, up])[1]).toBeGreaterThanOrEqual(layout.column.head)
      expect(layout.place.at([0, -down])[1]).toBeLessThanOrEqual(layout.column.height)
    }
  })

  it('bends the line of ride height only then', () => {
    const bent = ({ layout }: ReturnType<typeof near>): boolean =>
      Math.abs(layout.place.at([0, 0])[1] - layout.column.zero) > 1
    expect([bent(near({ bump: 0, droop: 0.235 })), bent(near({ bump: null, droop: 0.235 }))]).toEqual([true, false])
  })
})

describe('names', () => {
  it('of all springs, the divider and the stop stand beside an ordinary corner', () => {
    const { figure, layout } = laidOut(namedAxle('solid'))
    const placed = partNames(figure, layout, stationAt(figure, 0.02), nameColumns(figure, layout), [], wideFont)
    expect(placed.map(one => one.spans[0]!.text).sort()).toEqual(['divider', 'helper', 'main', 'stop', 'tender'])
  })

  it('say what ends the travel when it does', () => {
    const said = (name: CornerName, where: 'bump' | 'droop'): string[] => {
      const { model, figure, layout } = laidOut(namedAxle(name))
      const station = stationAt(figure, model[where])
      const placed = partNames(figure, layout, station, nameColumns(figure, layout), [], wideFont)
      return placed.filter(one => one.spans[0]!.weight === 600).map(one => one.spans[0]!.text)
    }
    expect({
      trailing: said('trailing', 'bump'),
      coilBind: said('coilBind', 'bump'),
      shockClosed: said('shockClosed', 'bump'),
      across: said('across', 'bump'),
      droop: said('trailing', 'droop'),
    }).toEqual({
      trailing: ['stop, closed'],
      coilBind: ['main, bound'],
      shockClosed: ['shock, closed'],
      across: ['chassis'],
      droop: ['strap, taut'],
    })
  })

  it('are shortened where a spring is called something long', () => {
    const axle = namedAxle('trailing')
    const { springs } = axle.corner.springs
    const long = { ...springs[0]!, name: 'the second-hand one from the old red truck, painted over twice' }
    const renamed = axleOf(
      { ...axle.corner, springs: { ...axle.corner.springs, springs: [long, springs[1]!] } },
      'rear',
    )
    const { figure, layout } = laidOut(renamed)
    const placed = partNames(figure, layout, stationAt(figure, 0), nameColumns(figure, layout), [], wideFont)
    expect(placed.find(one => one.id === 'spring-0')!.spans[0]!.text).toMatch(/^the second.*…$/)
  })
})

describe('Detail A', () => {
  const told = (name: CornerName, wheel: number | 'bump' | 'touch') => {
    const { model, figure, layout } = laidOut(namedAxle(name))
    const frame = detailFrame(figure, layout)
    if (frame === null) return null
    const at = wheel === 'bump' ? model.bump : wheel === 'touch' ? model.engagement! : wheel
    const detail = detailAt(figure, layout, frame, stationAt(figure, at), 'inch', wideFont)!
    return { text: detail.dimension.spans.map(one => one.text).join(' '), detail, layout, frame }
  }

  it('dimensions the gap, then what is left in the stop', () => {
    expect([told('trailing', 0)?.text, told('trailing', 'touch')?.text, told('trailing', 'bump')?.text]).toEqual([
      '1 13/16 in gap',
      '3 in left',
      '0 in left',
    ])
    // On the stop at ride height: 3/4 in of its 3 in are used.
    expect(told('onStop', 0)?.text).toBe('2 1/4 in left')
  })

  it('keeps its dimension, and the pad it ends on, inside the frame however long the gap', () => {
    for (const name of ['trailing', 'solid', 'across', 'longStop'] as const)
      for (const wheel of [-8 * INCH, 0, 'bump'] as const) {
        const found = told(name, wheel)
        if (found === null) continue
        const { clip } = found.frame
        const ys = found.detail.dimension.shapes.flatMap(one => numbersIn(one.d)).filter((_, i) => i % 2 === 1)
        expect(Math.max(...ys)).toBeLessThanOrEqual(clip.y + clip.height)
        const drawn = found.detail.shapes.filter(one => one.look === 'pad').flatMap(one => numbersIn(one.d))
        const pad = drawn.filter((_, i) => i % 2 === 1)
        expect(Math.min(...pad)).toBeLessThan(clip.y + clip.height)
      }
  })

  it('cuts a long gap, and only a long one', () => {
    const isCut = (wheel: number) => told('across', wheel)!.detail.shapes.some(one => one.look === 'cut')
    expect([isCut(-0.15), isCut(0)]).toEqual([true, false])
  })

  it('is absent without a stop, and in a small column', () => {
    const none = laidOut(namedAxle('noStop'))
    const small = laidOut(namedAxle('trailing'), true)
    expect(detailFrame(none.figure, none.layout)).toBeNull()
    expect(detailFrame(small.figure, small.layout)).toBeNull()
  })
})

describe('what the head of the column says', () => {
  it('names the view and both scales', () => {
    const said = (name: CornerName, small = false) => {
      const { figure, layout } = laidOut(namedAxle(name), small)
      return cornerSubtitles(figure, layout.enlargement, small)[0]!.replace(/[\d.]+ ×/, 'N ×')
    }
    expect([said('trailing'), said('across'), said('solid'), said('ratio'), said('trailing', true)]).toEqual([
      'rear left, to scale; travel enlarged N × at the right',
      'seen from the front, to scale; travel enlarged N × at the right',
      'seen from behind, to scale; travel enlarged N × at the right',
      'front, schematic: the plan holds no points; travel enlarged N ×',
      'to scale; travel enlarged N ×',
    ])
  })

  it('has shorter words for less room, down to the factor alone', () => {
    for (const small of [false, true]) {
      const { figure, layout } = laidOut(namedAxle('trailing'), small)
      const lengths = cornerSubtitles(figure, layout.enlargement, small).map(text => text.length)
      expect(lengths).toEqual(lengths.toSorted((a, b) => b - a))
      expect(lengths.at(-1)).toBeLessThan(8)
    }
  })

  it('states the enlargement the drawing has', () => {
    const { figure, layout } = laidOut(namedAxle('solid'))
    const [a, b] = [figure.skeleton.at(0).hub, figure.skeleton.at(0.05).hub].map(hub => layout.place.at(hub)[1])
    const onAxis = layout.axisY(0) - layout.axisY(0.05)
    close(layout.enlargement, onAxis / (a! - b!), { rel: 1e-9 }, 'enlargement')
  })
})

describe('the fan', () => {
  const marks = (engagement: number | null, other: number | null) => ({
    coilover: { from: 0, to: Math.max(0, engagement ?? 0.1) },
    engagementZone: { from: Math.max(0, engagement ?? 0.1), to: 0.1 },
    engagement,
    otherEngagement: other,
  })
  const looks = (engagement: number | null, other: number | null): string[] => {
    const { figure, layout } = laidOut(namedAxle('trailing'))
    return fanShapes(figure, layout, marks(engagement, other)).map(one => one.look)
  }

  it('carries engagement in the stop’s ink and the other setup’s dashed, where there are any', () => {
    expect(looks(0.05, 0.07)).toEqual(
      expect.arrayContaining(['fanEngagement', 'fanOther', 'engagementZone', 'coiloverZone']),
    )
    const none = looks(null, null)
    expect(none).not.toContain('fanEngagement')
    expect(none).not.toContain('fanOther')
    expect(none).not.toContain('engagementZone')
  })

  it('has no coilover zone when the stop carries the car at ride height', () => {
    expect(looks(-0.02, null)).not.toContain('coiloverZone')
  })
})
