import { memo, useId, useMemo } from 'react'
import type { AxleBudget } from '../../../core/budget/results.ts'
import type { CornerModel } from '../../../core/corner/corner-model.ts'
import type { Axle } from '../../../core/plan/schema.ts'
import type { System } from '../../../core/units/quantity.ts'
import { Picture } from '../marks/Group.tsx'
import type { Box } from '../placement/box.ts'
import { spokenLength, spokenPosition } from '../text/length-spans.ts'
import { canvasMeasure } from '../text/measure-text.ts'
import { type MeasureText, span } from '../text/span.ts'
import { hubLayer, stillChassis, stillStop, stopLayer, suspensionLayer, wheelLayer } from './corner-shapes.ts'
import { DetailView } from './DetailView.tsx'
import { type Detail, detailAt } from './detail.ts'
import { detailFrame } from './detail-frame.ts'
import { extentOf } from './extent.ts'
import { type FanMarks, fanLine, fanShapes } from './fan.ts'
import { type Figure, figureOf, type Station, stationAt } from './figure.ts'
import { type Column, type Layout, layoutOf } from './layout.ts'
import { type Shape, shape } from './look.ts'
import { nameColumns, partNames } from './part-names.ts'
import { circlePath, pagePath } from './pen.ts'
import { Shapes } from './Shapes.tsx'
import { cornerSubtitles, leanNote } from './subtitle.ts'
import { Words } from './Words.tsx'

export interface CornerDrawingProps {
  readonly axle: Axle
  /** Of `axle.corner`. */
  readonly model: CornerModel
  readonly budget: AxleBudget
  /** The setup it is compared with: its engagement is carried to the axis as a dashed line. */
  readonly other: { readonly name: string; readonly budget: AxleBudget; readonly model: CornerModel } | null
  /** m from ride height. */
  readonly wheel: number
  readonly system: System
  /** The column, px: the travel axis is at `x + width`; the drawing goes from `head` down to `height`. */
  readonly x: number
  readonly width: number
  readonly head: number
  readonly height: number
  /** Page y of a wheel position; the same number of px for every metre. */
  readonly axisY: (wheel: number) => number
  /** Without detail and part names. */
  readonly small: boolean
  /** Width of texts, px; measured in the page's own font when not given. */
  readonly measure?: MeasureText
}

/** Layers that stay as they are while the wheel moves; an edit moves them. */
const Still = memo(({ shapes }: { readonly shapes: readonly Shape[] }) => <Shapes shapes={shapes} className="moves" />)
Still.displayName = 'Still'

const marksOf = (budget: AxleBudget, other: AxleBudget | undefined): FanMarks => {
  const zone = (id: 'coilover' | 'engagement') => budget.zones.find(one => one.id === id) ?? { from: 0, to: 0 }
  return {
    coilover: zone('coilover'),
    engagementZone: zone('engagement'),
    engagement: budget.engagement?.wheel ?? null,
    otherEngagement: other?.engagement?.wheel ?? null,
  }
}

/** Everything about a drawing that does not hang on the wheel position. */
interface Prepared {
  readonly figure: Figure
  readonly layout: Layout
  /** A line over the drawing, which keeps clear of it. */
  readonly note: string | null
}

/** Height of the note's line, px. */
const NOTE = 15

function prepareDrawing(axle: Axle, model: CornerModel, column: Column): Prepared {
  const figure = figureOf(axle, model)
  const note = column.small ? null : leanNote(stationAt(figure, 0).shrink)
  const head = column.head + (note === null ? 0 : NOTE)
  return { figure, layout: layoutOf({ ...column, head }, extentOf(figure)), note }
}

/** The pointer tag on the axis is drawn over the column's right edge: names keep out from under it. */
const TAG = { width: 98, height: 26 }

/**
 * The corner at one wheel position, to scale, and the fan that carries its travel to the axis. To be placed in the plate's SVG, after
 * the column's ground and before the lines across it.
 */
export function CornerDrawing(props: CornerDrawingProps) {
  const { axle, model, budget, other, wheel, system, x, width, head, height, axisY, small } = props
  const zero = axisY(0)
  const perMetre = zero - axisY(1)
  const id = useId()
  const measure = useMemo(
    () => props.measure ?? canvasMeasure(getComputedStyle(document.body).fontFamily),
    [props.measure],
  )
  const prepared = useMemo(
    () => prepareDrawing(axle, model, { x, width, head, height, zero, perMetre, small }),
    [axle, model, x, width, head, height, zero, perMetre, small],
  )
  const { figure, layout, note } = prepared
  const { place } = layout
  const detailPlace = useMemo(() => detailFrame(figure, layout), [figure, layout])
  const columns = useMemo(() => (small ? null : nameColumns(figure, layout)), [figure, layout, small])
  const chassis = useMemo(
    () => [...fanShapes(figure, layout, marksOf(budget, other?.budget)), ...stillChassis(place, figure)],
    [figure, layout, place, budget, other?.budget],
  )
  const stopBody = useMemo(() => stillStop(place, figure), [figure, place])

  const station = stationAt(figure, wheel)
  const detail = detailPlace === null ? null : detailAt(figure, layout, detailPlace, station, system, measure)
  const tag: Box = {
    x: layout.axisX - TAG.width,
    y: layout.axisY(wheel) - TAG.height / 2,
    width: TAG.width,
    height: TAG.height,
  }
  const letter = detail === null ? null : detailLetter(detail, figure)
  const room = width - (small ? 12 : 16) - 4
  const wordings = cornerSubtitles(figure, layout.enlargement, small)
  const subtitle = wordings.find(text => measure(text, 11, 400) <= room) ?? ''
  const noteBox: Box[] = note === null ? [] : [{ x: x + 16, y: head + 8, width: measure(note, 11, 400), height: 13 }]
  const names =
    columns === null
      ? []
      : partNames(
          figure,
          layout,
          station,
          columns,
          [tag, ...noteBox, ...(detail === null || letter === null ? [] : [detail.frame, letter.box])],
          measure,
        )

  return (
    <g>
      <Words x={x + (small ? 12 : 16)} y={small ? 31 : 36} spans={[span(subtitle, { size: 11, ink: 'ink2' })]} />
      <clipPath id={`${id}-column`}>
        <rect x={x} y={head} width={width} height={Math.max(0, height - head)} />
      </clipPath>
      <g clipPath={`url(#${id}-column)`}>
        <Picture label={spokenDrawing(figure, station, system)}>
          <Shapes shapes={wheelLayer(place, figure, station)} />
          <Still shapes={chassis} />
          <Shapes shapes={suspensionLayer(place, figure, station)} />
          <Still shapes={stopBody} />
          <Shapes shapes={stopLayer(place, figure, station)} />
          <Shapes shapes={[shape('fanWheel', fanLine(figure, layout, wheel))]} />
          <g data-wheel-hub={place.scale}>
            <Shapes shapes={hubLayer(place, figure, station)} />
          </g>
          {detail !== null && letter !== null && (
            <>
              <path d={ringPath(detail)} style={{ fill: 'none', stroke: 'var(--ink2)', strokeWidth: 0.9 }} />
              <Words x={letter.x} y={letter.y} anchor={letter.anchor} spans={[span('A', { size: 11, weight: 600 })]} />
              <DetailView id={`${id}-detail`} detail={detail} />
            </>
          )}
          {note !== null && <Words x={x + 16} y={head + 18} spans={[span(note, { size: 11, ink: 'ink2' })]} />}
          {names.map(name => (
            <g key={name.id}>
              {name.leader !== null && <Shapes shapes={[shape('leader', pagePath(name.leader))]} />}
              <Words x={name.x} y={name.y} anchor={name.anchor} spans={name.spans} />
            </g>
          ))}
        </Picture>
      </g>
    </g>
  )
}

const ringPath = ({ ring: { centre, radius } }: Detail): string =>
  circlePath({ scale: 1, at: point => point }, centre, radius)

/** The letter beside the ring, on the side away from the shock. */
function detailLetter({ ring: { centre, radius } }: Detail, { skeleton }: Figure) {
  const left = skeleton.pad[0] <= skeleton.at(0).lower[0]
  const x = centre[0] + (left ? -radius - 3 : radius + 3)
  const y = centre[1] + 4
  return {
    x,
    y,
    anchor: left ? ('end' as const) : ('start' as const),
    box: { x: left ? x - 9 : x, y: y - 10, width: 9, height: 13 },
  }
}

function spokenDrawing({ model, axle }: Figure, { wheel }: Station, system: System): string {
  const { stopGap, stopLeft, shockLeft } = model.parts(wheel)
  const stop =
    stopGap === null || stopLeft === null
      ? 'no stop'
      : stopGap > 0
        ? `pad ${spokenLength(stopGap, system)} from the stop`
        : `on the stop, ${spokenLength(stopLeft, system)} left in it`
  return `${axle.id === 'front' ? 'Front' : 'Rear'} corner, wheel ${spokenPosition(wheel, system)}: ${stop}, ${spokenLength(shockLeft, system)} of shock shaft showing`
}
