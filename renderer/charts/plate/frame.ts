/** Sizes of type, px, from the zone lengths down to the axis names. */
export interface TypeScale {
  readonly number: number
  readonly second: number
  readonly heading: number
  readonly reading: number
  readonly body: number
  readonly label: number
  readonly axis: number
}

export interface Column {
  readonly x: number
  readonly width: number
  readonly right: number
}

/** The plate's columns and sizes of one window size, px. */
export interface Frame {
  readonly width: number
  readonly height: number
  /** A small window: shorter words, smaller type. */
  readonly small: boolean
  /** Height of the column heads. */
  readonly head: number
  readonly titleBaseline: number
  readonly subtitleBaseline: number
  /** Text inset from a column's edge. */
  readonly inset: number
  readonly type: TypeScale
  readonly corner: Column
  readonly budget: Column
  readonly shafts: Column
  readonly forces: Column
  readonly demands: Column | null
  readonly names: Column
}

const WIDE_TYPE: TypeScale = { number: 24, second: 18, heading: 13, reading: 13, body: 12, label: 11, axis: 10.5 }
const SMALL_TYPE: TypeScale = { number: 18, second: 15, heading: 12, reading: 12, body: 11, label: 11, axis: 10.5 }

/** Column widths to start from; extra width is shared out by `SHARE`. Order: corner, budget, shafts, forces, demands, names. */
const WIDE = [380, 176, 132, 222, 172, 96] as const
const SMALL = [206, 130, 118, 142, 130, 78] as const
const SHARE = [0.44, 0.08, 0.08, 0.28, 0.12, 0] as const
/** A column never gets narrower than this part of its small width while another can still give. */
const LEAST = [0.5, 0.8, 0.8, 0.7, 0.8, 0.9] as const

/** Width of the demands column: room for each load. */
function demandWidth(small: boolean, demands: number): number {
  const base = small ? SMALL[4] : WIDE[4]
  return Math.min(Math.max(base, (small ? 14 : 20) + (small ? 29 : 40) * demands), base * 1.8)
}

const total = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0)

function columnWidths(width: number, small: boolean, demands: number): number[] {
  const base: number[] = [...(small ? SMALL : WIDE)]
  base[4] = demands === 0 ? 0 : demandWidth(small, demands)
  const extra = width - total(base)
  if (extra >= 0) {
    const shares = SHARE.map((share, column) => (column === 4 && demands === 0 ? 0 : share))
    const all = total(shares)
    return base.map((value, column) => value + (extra * (shares[column] ?? 0)) / all)
  }
  const least = base.map((value, column) => value * (LEAST[column] ?? 1))
  const givable = base.map((value, column) => value - (least[column] ?? 0))
  const givableSum = total(givable)
  if (-extra <= givableSum) return base.map((value, column) => value + (extra * (givable[column] ?? 0)) / givableSum)
  const leastSum = total(least)
  return least.map(value => (value * width) / leastSum)
}

/**
 * The plate's frame.
 * @param width, height px, above 0
 * @param demands how many bars the demands column holds; 0 leaves the column out
 */
export function plateFrame(width: number, height: number, demands: number): Frame {
  const small = width < 960 || height < 560
  const columns: Column[] = []
  let x = 0
  for (const value of columnWidths(width, small, demands)) {
    columns.push({ x, width: value, right: x + value })
    x += value
  }
  const [corner, budget, shafts, forces, load, names] = columns as [Column, Column, Column, Column, Column, Column]
  return {
    width,
    height,
    small,
    head: small ? 38 : 44,
    titleBaseline: small ? 16 : 19,
    subtitleBaseline: small ? 31 : 36,
    inset: small ? 8 : 12,
    type: small ? SMALL_TYPE : WIDE_TYPE,
    corner,
    budget,
    shafts,
    forces,
    demands: demands === 0 ? null : load,
    names,
  }
}
