import type { System } from '../../../core/units/quantity.ts'
import { unitOf } from '../../../core/units/quantity.ts'
import type { Box } from '../placement/box.ts'
import { lengthSpans, onTape } from '../text/length-spans.ts'
import { lineWidth, type MeasureText, type Span, span } from '../text/span.ts'
import { armShapes } from './arm-shapes.ts'
import type { DetailFrame } from './detail-frame.ts'
import type { Figure, Station, StopFigure } from './figure.ts'
import type { Flat } from './flat.ts'
import type { Layout } from './layout.ts'
import { type Shape, shape } from './look.ts'
import { padShapes } from './pad.ts'
import { arrowHead, pagePath } from './pen.ts'
import { type Place, placeAlong, shifted } from './place.ts'
import { stopBodyShapes, stopMovingShapes } from './stop-shapes.ts'
import type { StopStations } from './stop-stack.ts'

/** Stop and pad enlarged, turned so that the stop stands upright. */
export interface Detail {
  readonly frame: Box
  readonly over: boolean
  readonly clip: Box
  readonly title: readonly Span[]
  readonly shapes: readonly Shape[]
  readonly dimension: {
    readonly shapes: readonly Shape[]
    readonly x: number
    readonly y: number
    readonly spans: readonly Span[]
  }
  /** Where the drawing itself says which part is enlarged. */
  readonly ring: { readonly centre: Flat; readonly radius: number }
}

/** A long gap or shaft is cut: how much of each is left out, px. */
function cuts({ build }: StopFigure, { face, pad, top, left }: StopStations, room: number, scale: number) {
  const hydraulic = build.kind === 'hydraulic'
  const whole = (hydraulic ? build.footThickness : top - face) * scale
  const open = Math.max(0, face - pad) * scale
  const shaft = hydraulic ? left * scale : 0
  const ofShaft = Math.max(0, shaft - Math.max(0.28 * room, room - whole - open))
  const ofGap = Math.max(0, open - Math.max(24, room - whole - (shaft - ofShaft)))
  return { shaft: ofShaft, gap: ofGap }
}

/** The two thin lines that say something was left out, across `from` to `to` at `y`. */
function breakShapes(from: number, to: number, y: number): Shape[] {
  const middle = (from + to) / 2
  const zigzag = (at: number): Flat[] => [
    [from, at],
    [middle - 5, at],
    [middle - 2, at - 4],
    [middle + 2, at + 4],
    [middle + 5, at],
    [to, at],
  ]
  return [
    shape('cutGround', pagePath([...zigzag(y - 2.5), ...zigzag(y + 2.5).reverse()], true)),
    shape('cut', pagePath(zigzag(y - 2.5)) + pagePath(zigzag(y + 2.5))),
  ]
}

/** A dimension shorter than this has its arrows outside, px. */
const FITS = 15

/** How far an arrow outside reaches, px. */
const OUTSIDE = 13

/** A vertical dimension between two heights, with its arrows outside where they would not fit. */
function dimensionShapes(from: number, x: number, high: number, low: number): Shape[] {
  const outside = low - high < FITS
  const line = outside
    ? [
        pagePath([
          [x, high - OUTSIDE],
          [x, high],
        ]),
        pagePath([
          [x, low],
          [x, low + OUTSIDE],
        ]),
      ]
    : [
        pagePath([
          [x, high],
          [x, low],
        ]),
      ]
  return [
    shape(
      'leader',
      pagePath([
        [from, high],
        [x + 4, high],
      ]) +
        pagePath([
          [from, low],
          [x + 4, low],
        ]),
    ),
    shape('dimension', line.join('')),
    shape('arrow', arrowHead([x, high], outside) + arrowHead([x, low], !outside)),
  ]
}

export function detailAt(
  figure: Figure,
  layout: Layout,
  at: DetailFrame,
  station: Station,
  system: System,
  measure: MeasureText,
): Detail | null {
  const { stop, skeleton } = figure
  if (stop === null || station.stop === null) return null
  const { stations, pad } = station.stop
  const { build, frame } = stop
  const { scale, clip, middle } = at
  const hydraulic = build.kind === 'hydraulic'
  const high = clip.y + 6
  const room = clip.height - 6
  const shown = hydraulic ? Math.min(0.22 * room, 0.42 * build.body * scale) : 0.09 * build.height * scale
  const under = Math.min(0.3 * room, 4.2 * build.foot * scale)
  // What hangs still: the end of a hydraulic stop's body, an elastomer's cup.
  const hung = hydraulic ? stations.shaft.to : stations.top
  const gap = stations.face - stations.pad
  const cut = cuts(stop, stations, room - shown - under, scale)
  const still: Place = placeAlong(frame(0, hung), skeleton.stopAxis, [middle, high + shown], scale)
  const footPlace = shifted(still, [0, -cut.shaft])
  const padPlace = shifted(still, [0, -cut.shaft - cut.gap])
  const page = (place: Place, along: number): number => place.at(frame(0, along))[1]

  const open = onTape(gap, system) > 0
  const [upper, lower] = open
    ? [page(footPlace, stations.face), page(padPlace, stations.pad)]
    : hydraulic
      ? [page(still, stations.shaft.to), page(footPlace, stations.shaft.from)]
      : [page(footPlace, stations.shaft.to), page(footPlace, stations.shaft.from)]
  const widest = Math.max(build.half, 1.45 * build.foot) * scale
  const line = middle + widest + 14
  const across = (half: number): [number, number] => [middle - half, middle + half]
  return {
    frame: at.frame,
    over: at.over,
    clip,
    title: [
      span('A', { size: 11, weight: 600 }),
      span(
        title(scale / layout.place.scale, skeleton.stopAxis, clip.width - 20, measure),
        { size: 11, ink: 'ink2' },
        7,
      ),
    ],
    shapes: [
      ...armShapes(padPlace, figure, station, false),
      ...padShapes(padPlace, frame, pad, build, station.pose.members, figure.thickness.chassis),
      ...stopMovingShapes(footPlace, frame, build, stations, pad),
      ...stopBodyShapes(still, frame, build, stations),
      ...(cut.shaft > 0
        ? breakShapes(
            ...across(build.shaft * scale + 7),
            (page(still, stations.shaft.to) + page(footPlace, stations.shaft.from)) / 2,
          )
        : []),
      ...(cut.gap > 0
        ? breakShapes(...across(widest), (page(footPlace, stations.face) + page(padPlace, stations.pad)) / 2)
        : []),
    ],
    dimension: {
      shapes: dimensionShapes(middle + (open ? build.foot : build.shaft) * scale + 3, line, upper, lower),
      x: line + 9,
      // Arrows outside leave no room between them: the figure stands over the upper one, clear of an arm that rises outward.
      y: lower - upper < FITS ? upper - OUTSIDE - 2 : (upper + lower) / 2 + 4.5,
      spans: worded(
        open ? gap : stations.left,
        system,
        open ? 'gap' : 'left',
        clip.x + clip.width - line - 11,
        measure,
      ),
    },
    ring: {
      centre: layout.place.at(frame(0, stations.face)),
      radius: Math.max(8, (0.4 * room * layout.place.scale) / scale),
    },
  }
}

/** A length with its unit and what it is, as much of it as fits. */
function worded(value: number, system: System, word: string, room: number, measure: MeasureText): Span[] {
  const number = lengthSpans(value, system, { size: 13 })
  const unit = unitOf('length', system).label
  const whole = [...number, span(`${unit} ${word}`, { size: 11, ink: 'ink2' }, 4)]
  return lineWidth(whole, measure) <= room ? whole : [...number, span(unit, { size: 11, ink: 'ink2' }, 4)]
}

/** What is enlarged and how much; shorter where it does not fit. */
function title(enlarged: number, axis: Flat, room: number, measure: MeasureText): string {
  const turned = Math.abs(axis[0]) > 0.05 || axis[1] < 0
  const scale = `enlarged ${enlarged.toFixed(1)} ×${turned ? ', upright' : ''}`
  const whole = `stop and pad, ${scale}`
  return measure(whole, 11, 400) <= room ? whole : scale
}
