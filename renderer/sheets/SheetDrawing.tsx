import type { Plan } from '../../core/plan/schema.ts'
import { INCH } from '../../core/units/constants.ts'
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
import { ChartPatterns, patternFill } from '../charts/patterns/ChartPatterns.tsx'
import { type Side, taped } from './figures.ts'

const SIZE = { width: 325, height: 250, axis: 206, bar: 24, top: 10, bottom: 232 } as const

/** Where a mark of the tape, or a millimetre, puts it: positions are rounded first, then subtracted, so that lengths add up. */
const onMark = (value: number, units: Plan['units']): number => {
  const mark = units === 'inch' ? INCH / 16 : 1e-3
  return Math.round(value / mark) * mark
}

/** Labels no nearer than this, px: a short zone's words move, never overlap. */
const APART = 32

/** Moves labels apart, in their order down the page, and keeps them on it. */
function spread(wanted: readonly number[]): number[] {
  const placed: number[] = []
  for (const y of wanted) placed.push(Math.max(y, (placed.at(-1) ?? -Infinity) + APART))
  for (let i = placed.length - 1, most = SIZE.bottom - 14; i >= 0; i -= 1, most -= APART)
    placed[i] = Math.min(placed[i]!, most)
  return placed
}

/** A corner, to scale, where its stop first touches, with the lengths of its travel beside it. `span` is the longest travel of the two sides, m. */
export function SheetDrawing({ side, plan, id, span }: { side: Side; plan: Plan; id: string; span: number }) {
  const { axle, model, budget } = side
  const perMetre = (SIZE.bottom - SIZE.top) / Math.max(1e-3, span)
  const zero = SIZE.top + model.bump * perMetre
  const axisY = (wheel: number): number => zero - wheel * perMetre
  const figure = figureOf(axle, model)
  const column = { x: 0, width: SIZE.axis, head: 0, height: SIZE.bottom + 6, zero, perMetre, small: true }
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
  const [bump, met, droop] = [model.bump, divide, model.droop].map(value => onMark(value, plan.units)) as [
    number,
    number,
    number,
  ]
  const parts = [
    ...(bump - met > 0 ? [{ from: divide, to: model.bump, length: bump - met, what: 'on the stop' }] : []),
    { from: 0, to: divide, length: met, what: 'springs alone' },
    { from: model.droop, to: 0, length: -droop, what: 'down' },
  ]
  const places = spread(parts.map(({ from, to }) => axisY((from + to) / 2)))
  const bar = (from: number, to: number, fill: string) => (
    <rect
      x={SIZE.axis}
      y={axisY(to)}
      width={SIZE.bar}
      height={Math.max(0, axisY(from) - axisY(to))}
      style={{ fill, stroke: 'var(--ink)', strokeWidth: 1.2 }}
    />
  )
  const spoken = parts.map(({ length, what }) => `${taped(length, plan)} ${what}`).join(', ')
  return (
    <svg className="corner" viewBox={`0 0 ${SIZE.width} ${SIZE.height}`} role="img" aria-label={spoken}>
      <ChartPatterns prefix={id} />
      <Shapes shapes={shapes} />
      {bar(model.droop, 0, 'var(--sheet)')}
      {bar(0, divide, patternFill(id, 'springs'))}
      {bar(divide, model.bump, patternFill(id, 'stop'))}
      {touch !== null && touch >= model.droop && touch <= model.bump && (
        <path
          d={`M${SIZE.axis - 5} ${axisY(touch)}h${SIZE.bar + 10}`}
          style={{ fill: 'none', stroke: 'var(--stop)', strokeWidth: 2.2 }}
        />
      )}
      {parts.map(({ length, what }, i) => (
        <g key={what}>
          <text x={SIZE.axis + SIZE.bar + 9} y={places[i]!} className="length">
            {taped(length, plan)}
          </text>
          <text x={SIZE.axis + SIZE.bar + 9} y={places[i]! + 13} className="what">
            {what}
          </text>
        </g>
      ))}
      <text x={2} y={SIZE.height - 3} className="what">
        {touch === null ? 'drawn at ride height' : 'drawn where the stop first touches'}
      </text>
    </svg>
  )
}
