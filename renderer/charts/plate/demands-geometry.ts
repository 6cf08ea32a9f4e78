import type { DemandSpan, DemandsView } from './demands.ts'
import type { Column, Frame } from './frame.ts'
import type { WheelAxis } from './wheel-axis.ts'

export interface DemandBar {
  readonly span: DemandSpan
  /** All loads at once. */
  readonly together: boolean
  readonly centre: number
  readonly x: number
  readonly width: number
  /** px; equal when the load takes nothing, or nothing holds it. */
  readonly top: number
  readonly bottom: number
}

export interface DemandsGeometry {
  readonly column: Column
  readonly pitch: number
  readonly bars: readonly DemandBar[]
  /** Loads left out because the column is full. */
  readonly hidden: number
}

const LEAST_PITCH = 20

const taken = ({ from, to }: DemandSpan): number => (to === null ? Number.POSITIVE_INFINITY : Math.abs(to - from))

/** How many bars a view asks for. */
export const demandCount = (view: DemandsView | null): number =>
  view === null ? 0 : view.spans.length + (view.together === null ? 0 : 1)

/** Bars of the demands column; when they are too many, the largest stay, in their order. */
export function demandsGeometry(frame: Frame, axis: WheelAxis, view: DemandsView | null): DemandsGeometry | null {
  const column = frame.demands
  if (column === null || view === null) return null
  const edge = frame.small ? 5 : 6
  const room = Math.max(column.width - 2 * edge, 1)
  const most = Math.max(1, Math.floor(room / LEAST_PITCH) - (view.together === null ? 0 : 1))
  const kept = new Set([...view.spans].sort((a, b) => taken(b) - taken(a)).slice(0, most))
  const shown = view.spans.filter(load => kept.has(load)).map(span => ({ span, together: false }))
  if (view.together !== null) shown.push({ span: view.together, together: true })
  const pitch = room / shown.length
  const width = Math.min(frame.small ? 12 : 16, pitch * 0.6)
  return {
    column,
    pitch,
    hidden: view.spans.length - kept.size,
    bars: shown.map(({ span, together }, index) => {
      const centre = column.x + edge + pitch * (index + 0.5)
      const ends = [span.from, span.to ?? span.from].map(wheel =>
        Math.min(Math.max(axis.y(wheel), axis.top + 1), axis.bottom - 1),
      )
      return {
        span,
        together,
        centre,
        x: centre - width / 2,
        width,
        top: Math.min(...ends),
        bottom: Math.max(...ends),
      }
    }),
  }
}
