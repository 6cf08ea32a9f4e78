import { type MeasureText, shortened } from '../text/span.ts'
import type { DemandSpan, DemandsView } from './demands.ts'
import type { Column, Frame } from './frame.ts'
import type { WheelAxis } from './wheel-axis.ts'

export interface DemandBar {
  readonly span: DemandSpan
  /** All loads at once. */
  readonly together: boolean
  readonly centre: number
  readonly name: string
  /** Centre of the name in the column's head. */
  readonly nameX: number
  readonly x: number
  readonly width: number
  /** px; equal when the load takes nothing, or nothing holds it. */
  readonly top: number
  readonly bottom: number
}

export interface DemandsGeometry {
  readonly column: Column
  readonly bars: readonly DemandBar[]
  /** Loads left out because the column is full. */
  readonly hidden: number
}

const LEAST_PITCH = 18
const NAME_GAP = 4
/** A name never takes more than this, px. */
const NAME_MOST = 46

const taken = ({ from, to }: DemandSpan): number => (to === null ? Number.POSITIVE_INFINITY : Math.abs(to - from))

/** How many bars a view asks for. */
export const demandCount = (view: DemandsView | null): number =>
  view === null ? 0 : view.spans.length + (view.together === null ? 0 : 1)

interface Naming {
  readonly spans: readonly DemandSpan[]
  readonly names: readonly string[]
  readonly widths: readonly number[]
}

const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0)

/** The loads that can be shown with their names: all if they fit, else the largest, in their order. */
function named(view: DemandsView, room: number, size: number, measure: MeasureText): Naming {
  const bySize = [...view.spans].sort((a, b) => taken(b) - taken(a))
  const last = view.together === null ? [] : [view.together]
  for (let count = bySize.length; ; count--) {
    const kept = new Set(bySize.slice(0, count))
    const spans = [...view.spans.filter(load => kept.has(load)), ...last]
    const cut = (text: string): string => shortened(text, { size }, NAME_MOST, measure) ?? ''
    for (const names of [spans.map(load => load.label), spans.map(load => cut(load.short))]) {
      const widths = names.map(name => measure(name, size, 400))
      const wide = sum(widths) + NAME_GAP * (names.length - 1)
      if (wide <= room && room / spans.length >= LEAST_PITCH) return { spans, names, widths }
    }
    if (count <= 1) return { spans, names: spans.map(() => ''), widths: spans.map(() => 0) }
  }
}

/** Centres of names: over their bars, pushed apart where they would touch, all of them between two edges. */
function spread(centres: readonly number[], widths: readonly number[], left: number, right: number): number[] {
  const placed: number[] = []
  let edge = left
  centres.forEach((centre, index) => {
    const width = widths[index] ?? 0
    const x = Math.max(centre - width / 2, edge)
    placed.push(x)
    edge = x + width + NAME_GAP
  })
  let limit = right
  for (let index = placed.length - 1; index >= 0; index--) {
    const width = widths[index] ?? 0
    const x = Math.min(placed[index] ?? 0, limit - width)
    placed[index] = x
    limit = x - NAME_GAP
  }
  return placed.map((x, index) => x + (widths[index] ?? 0) / 2)
}

/** Bars of the demands column, each with its name. */
export function demandsGeometry(
  frame: Frame,
  axis: WheelAxis,
  view: DemandsView | null,
  measure: MeasureText,
): DemandsGeometry | null {
  const column = frame.demands
  if (column === null || view === null) return null
  const edge = frame.small ? 5 : 6
  const room = Math.max(column.width - 2 * edge, 1)
  const { spans, names, widths } = named(view, room, frame.type.axis, measure)
  const pitch = room / spans.length
  const width = Math.min(frame.small ? 12 : 16, pitch * 0.6)
  const centres = spans.map((_, index) => column.x + edge + pitch * (index + 0.5))
  const nameCentres = spread(centres, widths, column.x + edge, column.right - edge)
  return {
    column,
    hidden: demandCount(view) - spans.length,
    bars: spans.map((span, index) => {
      const centre = centres[index] ?? column.x
      const ends = [span.from, span.to ?? span.from].map(wheel =>
        Math.min(Math.max(axis.y(wheel), axis.top + 1), axis.bottom - 1),
      )
      return {
        span,
        together: span === view.together,
        centre,
        name: names[index] ?? '',
        nameX: nameCentres[index] ?? centre,
        x: centre - width / 2,
        width,
        top: Math.min(...ends),
        bottom: Math.max(...ends),
      }
    }),
  }
}
