import type { Box } from '../placement/box.ts'
import { type MeasureText, shortened } from '../text/span.ts'
import type { DemandBalance, DemandSpan, DemandsView } from './demands.ts'
import type { Column, Frame } from './frame.ts'
import type { TravelMarks } from './travel.ts'
import type { WheelAxis } from './wheel-axis.ts'

export interface DemandBar {
  readonly span: DemandSpan
  /** All counted loads at once. */
  readonly together: boolean
  readonly centre: number
  readonly name: string
  /** Centre and width of the name in the column's head. */
  readonly nameX: number
  readonly nameWidth: number
  readonly x: number
  readonly width: number
  /** px; equal when the load takes nothing, or has no place. */
  readonly top: number
  readonly bottom: number
  /** Where it is pressed: on its name, and on its bar with its number. */
  readonly nameReach: Box
  readonly barReach: Box
}

export interface DemandsGeometry {
  readonly column: Column
  readonly bars: readonly DemandBar[]
  /** Loads left out because the column is full. */
  readonly hidden: number
}

/** The bar the balance is counted from: all counted loads together, or the only one. */
export function lastCounted({ bars }: DemandsGeometry): DemandBar | undefined {
  const counted = bars.filter(({ span }) => span.counted)
  return counted.find(bar => bar.together) ?? (counted.length === 1 ? counted[0] : undefined)
}

/** The upright from the end of the bar the balance is counted from to the line it is counted to, px. */
export interface Balanced {
  readonly bar: DemandBar
  /** Of the bar's end. */
  readonly end: number
  /** Of the line: engagement, or full bump where no stop is met. */
  readonly line: number
}

/** null where nothing is counted, or has no place. */
export function balancedOn(
  demands: DemandsGeometry,
  balance: DemandBalance | null,
  axis: WheelAxis,
  { engagement, bump, droop }: Pick<TravelMarks, 'engagement' | 'bump' | 'droop'>,
): Balanced | null {
  const bar = lastCounted(demands)
  if (balance === null || bar === undefined || bar.span.to === null) return null
  const y = (wheel: number): number => Math.min(Math.max(axis.y(wheel), axis.top + 1), axis.bottom - 1)
  const to = balance.beforeStop === null ? bump : Math.max(engagement ?? bump, droop)
  return { bar, end: y(bar.span.to), line: y(to) }
}

/** What is kept clear of words around it. */
export const uprightBox = ({ bar: { centre }, end, line }: Balanced): Box => ({
  x: centre - 3,
  y: Math.min(end, line),
  width: 6,
  height: Math.abs(end - line),
})

/** Two bars stand no closer than what a finger needs, px. */
export const LEAST_PITCH = 24
const NAME_GAP = 4
/** A name never takes more than this where it is cut, px; the first that lets all names stand. */
const NAME_MOST = [46, 38, 30]
/** Height of what stands at the ends of a bar, px. */
const NUMBER_HIGH = 18

/** Where names in the head are pressed, px: as high as a finger needs, from just over their letters. */
export const nameBand = ({ small }: Frame): { readonly y: number; readonly height: number } => ({
  y: small ? 22 : 24,
  height: LEAST_PITCH,
})

const taken = ({ from, to }: DemandSpan): number => (to === null ? Number.POSITIVE_INFINITY : Math.abs(to - from))

/** How many bars a view asks for; a view without loads keeps room for the offer of some. */
export const demandCount = (view: DemandsView | null): number =>
  view === null ? 0 : Math.max(1, view.spans.length + (view.together === null ? 0 : 1))

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
    const cut = (most: number) => (text: string) => shortened(text, { size }, most, measure) ?? ''
    const wordings = [
      spans.map(load => load.label),
      spans.map(load => load.short),
      spans.map(load => load.tight),
      ...NAME_MOST.map(most => spans.map(load => load.tight).map(cut(most))),
    ]
    for (const names of wordings) {
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

/** Where the reach of each name ends and the next one's begins. */
function reaches(centres: readonly number[], widths: readonly number[], left: number, right: number): number[] {
  const between = centres.slice(1).map((centre, index) => {
    const end = (centres[index] ?? 0) + (widths[index] ?? 0) / 2
    return (end + centre - (widths[index + 1] ?? 0) / 2) / 2
  })
  return [left, ...between, right]
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
  if (view.spans.length === 0 && view.together === null) return { column, bars: [], hidden: 0 }
  const edge = frame.small ? 5 : 6
  const room = Math.max(column.width - 2 * edge, 1)
  const { spans, names, widths } = named(view, room, frame.type.axis, measure)
  const pitch = room / spans.length
  const width = Math.min(frame.small ? 12 : 16, pitch * 0.6)
  const centres = spans.map((_, index) => column.x + edge + pitch * (index + 0.5))
  const nameCentres = spread(centres, widths, column.x + edge, column.right - edge)
  const ends = reaches(nameCentres, widths, column.x + 1, column.right - 1)
  return {
    column,
    hidden: demandCount(view) - spans.length,
    bars: spans.map((span, index) => {
      const centre = centres[index] ?? column.x
      const held = [span.from, span.to ?? span.from].map(wheel =>
        Math.min(Math.max(axis.y(wheel), axis.top + 1), axis.bottom - 1),
      )
      const [top, bottom] = [Math.min(...held), Math.max(...held)]
      const [from, to] = [ends[index] ?? column.x, ends[index + 1] ?? column.right]
      const reach = { top: Math.max(axis.top, top - NUMBER_HIGH), bottom: Math.min(axis.bottom, bottom + NUMBER_HIGH) }
      return {
        span,
        together: span === view.together,
        centre,
        name: names[index] ?? '',
        nameX: nameCentres[index] ?? centre,
        nameWidth: widths[index] ?? 0,
        x: centre - width / 2,
        width,
        top,
        bottom,
        nameReach: { x: from, width: to - from, ...nameBand(frame) },
        barReach: { x: centre - pitch / 2, y: reach.top, width: pitch, height: reach.bottom - reach.top },
      }
    }),
  }
}
