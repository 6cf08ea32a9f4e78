import type { Extent } from './extent.ts'
import { type Place, placeUpright } from './place.ts'

/** The column the drawing has, px; ride height is at `zero` and the axis' scale is `perMetre`. */
export interface Column {
  readonly x: number
  readonly width: number
  readonly head: number
  /** Of the whole plate: the drawing goes from `head` to here. */
  readonly height: number
  readonly zero: number
  readonly perMetre: number
  readonly small: boolean
}

/** Where the drawing stands in its column. */
export interface Layout {
  readonly column: Column
  readonly place: Place
  /** The wheel travel axis the fan runs to. */
  readonly axisX: number
  axisY(wheel: number): number
  /** px of the axis over px of the drawing. */
  readonly enlargement: number
}

/** Parts of the column's width that the fan between hub and axis has at least, and at most where the drawing leaves room. */
const FAN = { least: 0.27, most: 0.4 }

/** What the pointer tag at the axis and the hub need side by side, px: the wheel shown is never hidden by its own number. */
const BESIDE_TAG = { small: 96, wide: 112 }

/** A scale smaller than this part of what the width allows is not worth a straight line of ride height. */
const WORTH = 0.5

/** The drawing's scale does not follow every small step of an edit: what it covers is rounded up to this, m. */
const STEP = 0.01

const outward = (length: number): number => Math.ceil(length / STEP - 1e-9) * STEP

const rounded = ({ left, right, up, down }: Extent): Extent => ({
  left: outward(left),
  right: outward(right),
  up: outward(up),
  down: outward(down),
})

/**
 * The largest scale at which the corner stays in its column over its whole travel, with the hub at ride height on the axis' own zero. Where
 * the axis leaves next to no room above or below it (bump or droop near nothing), the drawing stands lower or higher and its line of ride
 * height bends to the axis.
 */
export function layoutOf(column: Column, extent: Extent): Layout {
  const { left, right, up, down } = rounded(extent)
  const { x, width, head, height, zero, perMetre, small } = column
  const margin = small ? { left: 9, right: 5, top: 6 } : { left: 14, right: 8, top: 10 }
  const fitting = (rooms: readonly (readonly [number, number])[]): number =>
    Math.min(...rooms.filter(([, need]) => need > 0).map(([room, need]) => Math.max(1, room) / need), 1e6)
  const leastFan = Math.min(FAN.most * width, Math.max(FAN.least * width, small ? BESIDE_TAG.small : BESIDE_TAG.wide))
  const across = fitting([
    [width - margin.left - margin.right, left + right],
    [width - leastFan - margin.left, left],
  ])
  const straight = Math.min(
    across,
    fitting([
      [zero - head - margin.top, up],
      [height - zero - margin.top, down],
    ]),
  )
  const free = Math.min(across, fitting([[height - head - 2 * margin.top, up + down]]))
  const bends = straight < WORTH * free
  const scale = bends ? free : straight
  const highest = head + margin.top + up * scale
  const lowest = height - margin.top - down * scale
  const hubY = bends ? Math.min(Math.max(zero, highest), Math.max(highest, lowest)) : zero
  const spare = width - margin.left - left * scale
  const fan = Math.max(margin.right + right * scale, leastFan, Math.min(FAN.most * width, spare))
  const axisX = x + width
  return {
    column,
    place: placeUpright([axisX - fan, hubY], scale),
    axisX,
    axisY: wheel => zero - wheel * perMetre,
    enlargement: perMetre / scale,
  }
}
