import type { Box } from '../placement/box.ts'
import { nameBand } from './demands-geometry.ts'
import type { Scene } from './scene.ts'

/** What a person does with loads on the plate itself. */
export interface DemandActions {
  /** Counts a load among the demands, or leaves it out. */
  readonly count: (id: string, counted: boolean) => void
  /** Leads to a load's size among the measurements. */
  readonly edit: (id: string) => void
  /** Makes a load a mark larger or smaller; steps of one `gesture` are undone as one. */
  readonly step: (id: string, direction: 1 | -1, big: boolean, gesture: string) => void
  /** The steps of a gesture are over. */
  readonly stepped: () => void
  /** Begins with usual loads. */
  readonly begin: () => void
  /** Shows the axle in roll. */
  readonly roll: () => void
}

/** Words in the head of the demands column that lead somewhere. */
export interface HeadLink {
  readonly words: string
  readonly size: number
  /** px; baseline `y`, the end of the words at `x`. */
  readonly x: number
  readonly y: number
  readonly width: number
  readonly reach: Box
}

const APART = 10

/** The way to the axle in roll, beside the column's title where there is room; null without loads, or without room. */
export function rollLink({ demands, frame, measure }: Scene): HeadLink | null {
  if (demands === null || demands.bars.length === 0) return null
  const { column } = demands
  const { type, inset, titleBaseline: y } = frame
  const x = column.right - inset
  const from = column.x + inset + measure('Demands', type.heading, 600) + APART
  for (const words of ['Axle in roll', 'In roll']) {
    const width = measure(words, type.label, 400)
    if (x - width < from) continue
    return {
      words,
      size: type.label,
      x,
      y,
      width,
      // Its middle is as far from the names below as a finger needs.
      reach: { x: x - width - 4, y: 0, width: width + 8, height: 2 * (nameBand(frame).y - 12) },
    }
  }
  return null
}
