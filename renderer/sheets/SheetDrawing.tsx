import type { Plan } from '../../core/plan/schema.ts'
import {
  hubLayer,
  stillChassis,
  stillStop,
  stopLayer,
  suspensionLayer,
  wheelLayer,
} from '../charts/drawing/corner-shapes.ts'
import { extentOf } from '../charts/drawing/extent.ts'
import { fanShapes } from '../charts/drawing/fan.ts'
import { figureOf, stationAt } from '../charts/drawing/figure.ts'
import { layoutOf } from '../charts/drawing/layout.ts'
import { Shapes } from '../charts/drawing/Shapes.tsx'
import { Picture } from '../charts/marks/Group.tsx'
import { Spans } from '../charts/text/ChartText.tsx'
import { onTape } from '../charts/text/length-spans.ts'
import { type Side, taped } from './figures.ts'
import { hatch } from './hatch.ts'
import { numberSpans } from './page/number.ts'

/** What stands beside and below the drawn corner, px. */
const SIZE = { bar: 24, words: 118, top: 10, note: 18 } as const
/** What the zones are made of: springs open lines, the stop a dense cross of them. */
const FILLED = {
  springs: { tint: 'var(--coil-t)', ink: 'var(--coil)', apart: 7, ways: ['rising'] },
  stop: { tint: 'var(--stop-t)', ink: 'var(--stop)', apart: 5, ways: ['rising', 'falling'] },
} as const
const EMPTY = { tint: 'var(--sheet)', ink: 'none', apart: 1, ways: [] } as const

const LENGTH = { size: 16 } as const
const WORD = { fontSize: 12, fill: 'var(--ink2)' } as const

/** Labels no nearer than this, px: a short zone's words move, never overlap. */
const APART = 34

/** The first label no higher than this, px. */
const HIGHEST = 18

/** Moves labels apart, in their order down the page, and keeps them on it. */
function spread(wanted: readonly number[], lowest: number): number[] {
  const placed: number[] = []
  for (const y of wanted) placed.push(Math.max(y, (placed.at(-1) ?? HIGHEST - APART) + APART))
  for (let i = placed.length - 1, most = lowest; i >= 0; i -= 1, most -= APART) placed[i] = Math.min(placed[i]!, most)
  return placed
}

interface DrawingProps {
  readonly side: Side
  readonly plan: Plan
  /** The longest travel of the two sides, m. */
  readonly span: number
  /** px */
  readonly width: number
  readonly height: number
}

/** A corner, to scale, where its stop first touches, with the lengths of its travel beside it. */
export function SheetDrawing({ side, plan, span, width, height }: DrawingProps) {
  const { axle, model, budget } = side
  const axisX = width - SIZE.words - SIZE.bar
  const bottom = height - SIZE.note
  const perMetre = (bottom - SIZE.top) / Math.max(1e-3, span)
  const zero = SIZE.top + model.bump * perMetre
  const axisY = (wheel: number): number => zero - wheel * perMetre
  const figure = figureOf(axle, model)
  const column = { x: 0, width: axisX, head: 0, height: bottom + 6, zero, perMetre, small: true }
  const layout = layoutOf(column, extentOf(figure))
  const touch = model.engagement
  const wheel = touch === null ? 0 : Math.min(model.bump, Math.max(model.droop, touch))
  const station = stationAt(figure, wheel)
  const zone = (zoneId: 'coilover' | 'engagement') => budget.zones.find(each => each.id === zoneId)!
  const divide = zone('coilover').to
  const shapes = [
    ...wheelLayer(layout.place, figure, station),
    ...fanShapes(figure, layout, {
      coilover: zone('coilover'),
      engagementZone: zone('engagement'),
      engagement: touch,
      otherEngagement: null,
    }),
    ...stillChassis(layout.place, figure),
    ...suspensionLayer(layout.place, figure, station),
    ...stillStop(layout.place, figure),
    ...stopLayer(layout.place, figure, station),
    ...hubLayer(layout.place, figure, station),
  ]
  const [bump, met, droop] = [model.bump, divide, model.droop].map(value => onTape(value, plan.units)) as [
    number,
    number,
    number,
  ]
  const parts = [
    ...(bump - met > 0 ? [{ from: divide, to: model.bump, length: bump - met, what: 'on the stop' }] : []),
    { from: 0, to: divide, length: met, what: 'springs alone' },
    { from: model.droop, to: 0, length: -droop, what: 'down' },
  ]
  const places = spread(
    parts.map(({ from, to }) => axisY((from + to) / 2)),
    bottom - 14,
  )
  const bar = (from: number, to: number, filled: keyof typeof FILLED | null) => {
    const area = { left: axisX, right: axisX + SIZE.bar, top: axisY(to), bottom: Math.max(axisY(to), axisY(from)) }
    const box = { x: area.left, y: area.top, width: SIZE.bar, height: area.bottom - area.top }
    const { tint, ink, apart, ways } = filled === null ? EMPTY : FILLED[filled]
    return (
      <>
        <rect {...box} fill={tint} />
        <path d={hatch(area, apart, ways)} fill="none" stroke={ink} strokeWidth={1.4} />
        <rect {...box} fill="none" stroke="var(--ink)" strokeWidth={1.2} />
      </>
    )
  }
  const spoken = parts.map(({ length, what }) => `${taped(length, plan)} ${what}`).join(', ')
  const wordsX = axisX + SIZE.bar + 9
  return (
    <Picture label={spoken}>
      <Shapes shapes={shapes} />
      {bar(model.droop, 0, null)}
      {bar(0, divide, 'springs')}
      {bar(divide, model.bump, 'stop')}
      {touch !== null && touch >= model.droop && touch <= model.bump && (
        <path d={`M${axisX - 5} ${axisY(touch)}h${SIZE.bar + 10}`} fill="none" stroke="var(--stop)" strokeWidth={2.2} />
      )}
      {parts.map(({ length, what }, i) => (
        <g key={what}>
          <text x={wordsX} y={places[i]!}>
            <Spans spans={numberSpans(taped(length, plan), LENGTH)} />
          </text>
          <text x={wordsX} y={places[i]! + 14} {...WORD}>
            {what}
          </text>
        </g>
      ))}
      <text x={0} y={height - 4} {...WORD}>
        {touch === null ? 'drawn at ride height' : 'drawn where the stop first touches'}
      </text>
    </Picture>
  )
}
