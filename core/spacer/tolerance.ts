import { INCH } from '../units/constants.ts'
import type { TubeSize } from './tube.ts'

/** The least and most a size may be as delivered, m. */
export interface Band {
  readonly least: number
  readonly most: number
}

/**
 * Tolerances of drawn-over-mandrel tube, ASTM A513 Type 5, in inches. Outer diameter: plus this, minus nothing; bore: plus nothing, minus this
 * (teamtubellc.com, DOM technical data; the bore's above 1.699 in taken to go the same way: from memory).
 */
const DIAMETER: readonly (readonly [upTo: number, amount: number])[] = [
  [1.699, 0.005],
  [2.099, 0.006],
  [2.499, 0.007],
  [2.899, 0.008],
  [3.299, 0.009],
]
const LEAST_DIAMETER = 0.5

/**
 * Wall, plus and minus, by wall and outer diameter, in inches (boyersteel.com, ASTM A513 T-5 DOM). Walls the page does not have are not
 * guessed: a tube of such a wall is measured before it is cut.
 */
const WALL_COLUMNS = [0.875, 1.875, 3.75, 15] as const
type PlusMinus = readonly [plus: number, minus: number]
const WALL: readonly (readonly [wall: number, columns: readonly (PlusMinus | null)[]])[] = [
  [
    0.083,
    [
      [0.002, 0.002],
      [0.002, 0.003],
      [0.003, 0.003],
      [0.004, 0.005],
    ],
  ],
  [
    0.095,
    [
      [0.002, 0.002],
      [0.002, 0.003],
      [0.003, 0.003],
      [0.004, 0.005],
    ],
  ],
  [
    0.109,
    [
      [0.002, 0.003],
      [0.002, 0.004],
      [0.003, 0.003],
      [0.005, 0.005],
    ],
  ],
  [
    0.12,
    [
      [0.003, 0.003],
      [0.002, 0.004],
      [0.003, 0.003],
      [0.005, 0.005],
    ],
  ],
  [0.134, [null, [0.002, 0.004], [0.003, 0.003], [0.005, 0.005]]],
]
/** A wall this near a listed one is that one, inches. */
const SAME_WALL = 0.0005
const LEAST_WALL_DIAMETER = 0.375

/** Amount a diameter may be off, m; null outside the sizes of the table. */
function diameterTolerance(outerDiameter: number): number | null {
  const inches = outerDiameter / INCH
  if (inches < LEAST_DIAMETER - SAME_WALL) return null
  const row = DIAMETER.find(([upTo]) => inches <= upTo + SAME_WALL)
  return row === undefined ? null : row[1] * INCH
}

/** Outer diameter as delivered; null outside the sizes of the table. */
export function outerBand({ outerDiameter }: TubeSize): Band | null {
  const amount = diameterTolerance(outerDiameter)
  return amount === null ? null : { least: outerDiameter, most: outerDiameter + amount }
}

/** Wall as delivered; null where the table does not have it. */
export function wallBand({ outerDiameter, wall }: TubeSize): Band | null {
  const inches = outerDiameter / INCH
  const row = WALL.find(([listed]) => Math.abs(listed - wall / INCH) <= SAME_WALL)
  const column = WALL_COLUMNS.findIndex(upTo => inches <= upTo)
  const amounts = inches < LEAST_WALL_DIAMETER ? null : (row?.[1][column] ?? null)
  return amounts === null ? null : { least: wall - amounts[1] * INCH, most: wall + amounts[0] * INCH }
}

/**
 * Bore as delivered, whichever two of outer diameter, bore and wall it was ordered by: from the bore's own tolerance, and from those of outer
 * diameter and wall, the wider of the two. Null outside the sizes of the table.
 */
export function boreBand(size: TubeSize): Band | null {
  const amount = diameterTolerance(size.outerDiameter)
  const outer = outerBand(size)
  if (amount === null || outer === null) return null
  const nominal = size.outerDiameter - 2 * size.wall
  const wall = wallBand(size)
  const byWall = wall === null ? [] : [outer.least - 2 * wall.most, outer.most - 2 * wall.least]
  return { least: Math.min(nominal - amount, ...byWall), most: Math.max(nominal, ...byWall) }
}
