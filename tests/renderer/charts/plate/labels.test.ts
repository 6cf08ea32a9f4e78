import fc from 'fast-check'
import { expect, test } from 'vitest'
import { type Box, inside, overlap } from '../../../../renderer/charts/placement/box.ts'
import type { Label } from '../../../../renderer/charts/placement/label.ts'
import { balancedOn, uprightBox } from '../../../../renderer/charts/plate/demands-geometry.ts'
import { demandHeadLabels, headLabels } from '../../../../renderer/charts/plate/labels/heads.ts'
import { lineNames } from '../../../../renderer/charts/plate/labels/line-names.ts'
import { MARK_RADIUS, type MarkPlace } from '../../../../renderer/charts/plate/labels/mark-places.ts'
import { placeLabels } from '../../../../renderer/charts/plate/labels/place-labels.ts'
import type { Scene } from '../../../../renderer/charts/plate/scene.ts'
import { between } from '../../../laws/arbitrary-linkage.ts'
import { sampleFindings } from '../gallery/cases.ts'
import { hydraulicStop, sampleCorner } from '../sample-axles.ts'
import {
  arbitraryFindings,
  arbitraryFont,
  arbitrarySize,
  arbitraryView,
  compiledCorner,
  evenFont,
} from './arbitrary-view.ts'
import { plateScene } from './whole-scene.ts'

const markBox = ({ x, y }: MarkPlace): Box => ({
  x: x - MARK_RADIUS,
  y: y - MARK_RADIUS,
  width: 2 * MARK_RADIUS,
  height: 2 * MARK_RADIUS,
})

/** Everything written on a plate at one wheel position, with what it is. */
function everything(scene: Scene, findings: Parameters<typeof placeLabels>[1], wheel: number): [string, Box][] {
  const { labels, marks, handle } = placeLabels(scene, findings, wheel)
  const named = (list: readonly Label[]): [string, Box][] =>
    list.map(label => [`${label.id} “${label.spans.map(({ text }) => text).join('')}”`, label.box])
  return [
    ...named(headLabels(scene)),
    ...named(demandHeadLabels(scene)),
    ...named(labels),
    ...named(lineNames(scene).labels),
    ...marks.map((mark): [string, Box] => [`mark ${mark.number}`, markBox(mark)]),
    ['handle', handle.box],
  ]
}

function overlaps(list: readonly [string, Box][]): string[] {
  return list.flatMap(([name, box], index) =>
    list
      .slice(index + 1)
      .filter(([, other]) => overlap(box, other))
      .map(([other]) => `${name} over ${other}`),
  )
}

test('no word, number or mark on the plate ever lies over another, nor outside it', () => {
  fc.assert(
    fc.property(
      arbitraryView,
      arbitraryFindings,
      arbitraryFont,
      arbitrarySize,
      between(0, 1),
      (view, findings, measure, { width, height }, share) => {
        const scene = plateScene(view, width, height, measure)
        const wheel = scene.travel.droop + share * (scene.travel.bump - scene.travel.droop)
        const all = everything(scene, findings, wheel)
        expect(overlaps(all)).toEqual([])
        const balance = scene.view.demands?.balance ?? null
        const counted = scene.demands && balancedOn(scene.demands, balance, scene.axis, scene.travel)
        const upright: Box[] = counted === null ? [] : [uprightBox(counted)]
        const crossed = placeLabels(scene, findings, wheel).labels.filter(({ box }) =>
          upright.some(line => overlap(line, box)),
        )
        expect(crossed.map(({ id }) => id)).toEqual([])
        const plate = { x: 0, y: 0, width, height }
        expect(all.filter(([, box]) => !inside(box, plate)).map(([name]) => name)).toEqual([])
      },
    ),
    { seed: 20, numRuns: 120 },
  )
}, 60_000)

const stated = (scene: Scene, wheel = 0): string[] => placeLabels(scene, [], wheel).labels.map(({ id }) => id)

const plate = (stop: (typeof sampleCorner)['stop'], width = 1172, height = 704, font = 0.55): Scene =>
  plateScene(
    { ...compiledCorner({ ...sampleCorner, stop }, 'inch'), other: null, demands: null, system: 'inch' },
    width,
    height,
    evenFont(font),
  )

test('in little room the tag lets the hub be seen at ride height, and is one width elsewhere', () => {
  const scene = plate(hydraulicStop, 804, 513)
  const width = (wheel: number): number => placeLabels(scene, [], wheel).handle.width
  expect(width(0)).toBeLessThan(width(0.0254))
  expect(width(0.0254)).toBe(width(0.0127))
})

const textOf = (scene: Scene, id: string): string =>
  placeLabels(scene, [], 0.1)
    .labels.filter(label => label.id === id || label.id.startsWith(`${id}-`))
    .map(({ spans }) => spans.map(({ text }) => text).join(''))
    .join(' / ')

test.each([
  [1172, 704, 0.55],
  [804, 513, 0.62],
])('at %i by %i the zones, readings and step are always there', (width, height, font) => {
  const ids = stated(plate(hydraulicStop, width, height, font), 0.1)
  expect(ids).toEqual(
    expect.arrayContaining([
      'zone-coilover',
      'zone-engagement',
      'zone-droop',
      'left-shock',
      'left-main',
      'left-stop',
      'force-reading',
      'force-step',
      'force-weight',
    ]),
  )
})

test('a stop already touched at ride height leaves a coilover zone of 0 and says where it is touched', () => {
  const scene = plate({ ...hydraulicStop, gap: -0.01 })
  expect(scene.travel.engagement).toBeLessThan(0)
  expect(textOf(scene, 'zone-coilover')).toMatch(/^0in \/ Coilover.* \/ (touches )?at ?−/)
})

test('without a stop there is one coilover zone, and the bar says so', () => {
  const scene = plate(null)
  expect(stated(scene)).not.toContain('zone-engagement')
  expect(textOf(scene, 'absent-stop')).toBe('no stop')
  expect(scene.zones.coilover).toBe(scene.zones.bump)
})

test('every finding keeps its mark, also when many meet at one place', () => {
  const scene = plate(hydraulicStop)
  const meeting = Array.from({ length: 9 }, (_, index) => ({
    ...sampleFindings(scene.view.budget)[1]!,
    id: `finding-${index}`,
  }))
  const { marks } = placeLabels(scene, meeting, 0.1)
  expect(marks.map(({ number }) => number)).toEqual([1, 2, 3, 4, 5, 6, 7, 8, 9])
  expect(overlaps(marks.map(mark => [`mark ${mark.number}`, markBox(mark)]))).toEqual([])
})
