import type { Box } from '../placement/box.ts'
import { extentWithoutTire } from './extent.ts'
import { type Figure, wheelPath } from './figure.ts'
import { clamp, type Flat } from './flat.ts'
import type { Layout } from './layout.ts'
import { tireHalf } from './tire-shapes.ts'

/** Where Detail A stands and how large it draws; the same at every wheel position. */
export interface DetailFrame {
  readonly frame: Box
  readonly clip: Box
  /** px per m. */
  readonly scale: number
  /** Page x of the stop's axis. */
  readonly middle: number
  /** Whether it hides part of the tire, and so needs an edge. */
  readonly over: boolean
}

/** px. */
const TITLE = 24
const LEAST = { width: 165, height: 118 }
const MOST = { width: 232, height: 184 }
const CLEAR = 8

/** How wide a box with its upper edge at `top` may be before the tire touches it anywhere in its travel. */
function widthBesideTire(figure: Figure, { place, column }: Layout, left: number, top: number): number {
  const { radius } = figure.axle.corner.tire
  const { view } = figure.skeleton
  const tall = radius * place.scale + CLEAR
  const half = tireHalf(view, radius) * place.scale + CLEAR
  const { droop, bump } = figure.model
  const free = wheelPath(figure, droop, bump).map((hub): number => {
    const [x, y]: Flat = place.at(hub)
    if (top >= y + tall) return Infinity
    const reach = view === 'side' ? Math.sqrt(Math.max(0, tall ** 2 - Math.max(0, top - y) ** 2)) : half
    return x - reach - left
  })
  return Math.min(place.at([0, 0])[0] - 24 - left, column.width * 0.62, ...free)
}

/**
 * Looks for the largest place at the lower left clear of drawing and tire; over the tire, with an edge, when there is none.
 * Null when the column is too low or narrow for it.
 */
export function detailFrame(figure: Figure, layout: Layout): DetailFrame | null {
  const { stop } = figure
  const { x, height, head, width: whole, small } = layout.column
  if (stop === null || small) return null
  const ride = layout.place.at([0, 0])[1]
  const left = x + 16
  const bottom = height - 12
  const most = { width: clamp(0.42 * whole, MOST.width, 320), height: clamp(0.25 * (height - head), MOST.height, 250) }
  const highest = Math.max(ride + extentWithoutTire(figure).down * layout.place.scale + 10, bottom - most.height)
  const lowest = bottom - LEAST.height
  if (highest > lowest) return null
  const choices = [0, 0.25, 0.5, 0.75, 1].map(share => {
    const top = highest + share * (lowest - highest)
    return { top, width: Math.min(most.width, widthBesideTire(figure, layout, left, top)) }
  })
  const best = choices
    .filter(choice => choice.width >= LEAST.width)
    .sort((a, b) => b.width * (bottom - b.top) - a.width * (bottom - a.top))[0]
  const over = best === undefined
  const { top, width } = best ?? {
    top: highest,
    width: Math.min(most.width, layout.place.at([0, 0])[0] - 24 - left),
  }
  if (width < LEAST.width) return null
  const widest = 2 * Math.max(stop.build.half, stop.build.foot * 1.45)
  return {
    frame: { x: left, y: top, width, height: bottom - top },
    clip: { x: left, y: top + TITLE - 4, width, height: bottom - top - TITLE + 4 },
    scale: clamp(2 * layout.place.scale, (0.15 * width) / widest, (0.3 * width) / widest),
    middle: left + 0.25 * width,
    over,
  }
}
