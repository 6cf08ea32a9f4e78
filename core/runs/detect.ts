import { isMissing, numberIn } from './cell.ts'
import { hasDate, isDate } from './clock.ts'
import { isUnit } from './column-units.ts'
import type { Encoding } from './encoding.ts'
import { columnsOf } from './head.ts'
import type { Column, Delimiter, Reading } from './reading.ts'
import type { Fingerprint } from './recipe.ts'
import { cellsOf, lineEndOf, linesOf, type Tokenize, usualWidth } from './table-text.ts'
import { type Doubt, isClock, timeSourceOf } from './time-source.ts'

/** What a file looks like from its first lines. */
export interface Detected {
  /** Whether anything in it reads as rows of numbers. */
  readonly readable: boolean
  readonly reading: Reading
  readonly columns: readonly Column[]
  readonly fingerprint: Fingerprint
  readonly doubts: readonly Doubt[]
}

const WAYS: readonly Pick<Reading, 'delimiter' | 'decimalComma'>[] = (['\t', ';', ',', '|', ' '] as const).flatMap(
  delimiter => [
    { delimiter, decimalComma: false },
    { delimiter, decimalComma: true },
  ],
)

const isNumber = (cell: string, decimalComma: boolean): boolean =>
  !Number.isNaN(numberIn(cell, decimalComma)) || isClock(cell) || hasDate(cell)

/** How well a row reads as numbers: each of them counts for it, each word twice against it; null when it is no row of numbers. */
function score(cells: readonly string[], decimalComma: boolean): number | null {
  let numbers = 0
  let words = 0
  for (const cell of cells)
    if (isDate(cell)) continue
    else if (isNumber(cell, decimalComma)) numbers += 1
    else if (!isMissing(cell)) words += 1
  return numbers > 0 && numbers >= words ? numbers - 2 * words : null
}

interface Cut {
  readonly delimiter: Delimiter
  readonly decimalComma: boolean
  readonly rows: readonly (readonly string[])[]
  readonly width: number
  readonly headerRows: number
}

/** The lines cut into cells the way by which most of them reads as numbers, in two columns or more; in one where there is no other. */
function bestCut(lines: readonly string[], tokenize: Tokenize): Cut | null {
  let best: { points: number; cut: Cut } | null = null
  for (const single of [false, true]) {
    for (const way of WAYS) {
      const rows = lines.map(line => cellsOf(line, way.delimiter, tokenize))
      const scores = rows.map(cells => (single || cells.length > 1 ? score(cells, way.decimalComma) : null))
      const width = single ? 1 : usualWidth(rows.filter((_, i) => scores[i] !== null))
      const fits = rows.map((cells, i) => cells.length === width && scores[i] !== null)
      const points = scores.reduce<number>((sum, points, i) => sum + (fits[i] ? points! : 0), 0)
      if (points <= (best?.points ?? 0)) continue
      best = { points, cut: { ...way, rows, width, headerRows: fits.indexOf(true) } }
    }
    if (best !== null) break
  }
  return best?.cut ?? null
}

function unitsRowOf({ rows, width, headerRows }: Cut): number | null {
  const whole = rows.flatMap((cells, i) => (i < headerRows && cells.length === width ? [i] : []))
  const last = whole.at(-1)
  const isUnits =
    last !== undefined &&
    whole.length > 1 &&
    rows[last]!.every(isUnit) &&
    !rows[last]!.every(cell => cell.trim() === '')
  return isUnits ? last : null
}

/**
 * How a table is written and read, from its first lines: the delimiter and decimal mark by which most of it reads as numbers; what stands
 * before the first such row is its head. Where nothing reads as numbers it says so and gives a way of reading to begin from.
 */
export function detectReading(sample: string, encoding: Encoding, tokenize: Tokenize): Detected {
  const lineEnd = lineEndOf(sample)
  const lines = linesOf(sample, lineEnd)
  const found = bestCut(lines, tokenize)
  const cut = found ?? { delimiter: ',', decimalComma: false, rows: [], width: 0, headerRows: 0 }
  const unitsRow = unitsRowOf(cut)
  const columns = columnsOf(cut.rows.slice(0, cut.headerRows), unitsRow, cut.width)
  const body = cut.rows.slice(cut.headerRows).filter(cells => cells.length === cut.width)
  const { time, doubts } = timeSourceOf(columns, body, cut.decimalComma)
  const { delimiter, decimalComma, headerRows } = cut
  return {
    readable: found !== null,
    reading: {
      encoding,
      lineEnd,
      delimiter,
      decimalComma,
      headerRows,
      unitsRow,
      time,
      backward: 'left out',
      longestPause: null,
    },
    columns,
    fingerprint: { columns, delimiter },
    doubts:
      found === null
        ? [
            {
              about: 'table',
              says: 'Nothing in it reads as rows of numbers. Choose how cells are parted and where the rows begin.',
            },
          ]
        : doubts,
  }
}
