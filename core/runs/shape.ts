import { isMissing, numberIn } from './cell.ts'

export type Delimiter = ',' | ';' | '\t' | '|' | ' '

/** Rows of cells from the text of whole lines. */
export type Tokenize = (text: string, delimiter: string) => string[][]

export interface Column {
  /** As in the head, without its unit; its place where the head has none. */
  readonly name: string
  readonly unit: string | null
}

/** How a table is written. */
export interface TableShape {
  readonly delimiter: Delimiter
  readonly decimalComma: boolean
  /** Lines before the first row of numbers. */
  readonly headerRows: number
  /** The line of those that holds units, from 0; null without one. */
  readonly unitsRow: number | null
  readonly columns: readonly Column[]
}

/** Letters, and of those lines, of a table's beginning that its shape is told from. */
export const SHAPE_SAMPLE = 65_536
export const SHAPE_LINES = 300

const WAYS: readonly { readonly delimiter: Delimiter; readonly decimalComma: boolean }[] = (
  ['\t', ';', ',', '|', ' '] as const
).flatMap(delimiter => [
  { delimiter, decimalComma: false },
  { delimiter, decimalComma: true },
])

/** Every unit a head may name, as size in SI; volts and counts are their own. */
export const RUN_UNITS: Readonly<Record<string, number>> = {
  s: 1,
  sec: 1,
  ms: 1e-3,
  us: 1e-6,
  µs: 1e-6,
  min: 60,
  m: 1,
  cm: 1e-2,
  mm: 1e-3,
  in: 0.0254,
  inch: 0.0254,
  v: 1,
  mv: 1e-3,
  volt: 1,
  volts: 1,
}
/** Other units a row of units may hold. */
const OTHERS = new Set([
  '',
  '-',
  'g',
  'n',
  'lb',
  'deg',
  '°',
  '%',
  'c',
  '°c',
  'm/s',
  'km/h',
  'mph',
  'rpm',
  'counts',
  'm/s²',
])

const bare = (text: string): string =>
  text
    .trim()
    .replace(/^[([](.*)[)\]]$/, '$1')
    .trim()
    .toLowerCase()
const isUnit = (text: string): boolean => Object.hasOwn(RUN_UNITS, bare(text)) || OTHERS.has(bare(text))

/** Spaces in a row count once where they part cells. */
export const spaced = (text: string, delimiter: Delimiter): string =>
  delimiter === ' ' ? text.replace(/^ +| +$/gm, '').replace(/ +/g, ' ') : text

/** How well a row reads as numbers: each of them counts for it, each word twice against it; null when it is no row of numbers. */
function score(cells: readonly string[], decimalComma: boolean): number | null {
  let numbers = 0
  let words = 0
  for (const cell of cells)
    if (!Number.isNaN(numberIn(cell, decimalComma))) numbers += 1
    else if (!isMissing(cell)) words += 1
  return numbers > 0 && numbers >= words && cells.length > 1 ? numbers - 2 * words : null
}

/** The cells of a line; all of it where quotation marks alone would part it. */
function cellsOf(line: string, delimiter: Delimiter, tokenize: Tokenize): string[] {
  const text = spaced(line, delimiter)
  const cells = tokenize(text, delimiter)[0] ?? ['']
  return text.split(delimiter).length < cells.length ? [text] : cells
}

/** `Front left (mm)` → its name and unit. */
function named(head: string, place: number): Column {
  const match = /^(.*?)\s*[([]([^()[\]]*)[)\]]\s*$/.exec(head.trim())
  const name = (match === null ? head : match[1]!).trim()
  return { name: name === '' ? `column ${place + 1}` : name, unit: match === null ? null : bare(match[2]!) }
}

/**
 * How a table is written, from its first lines: the delimiter and decimal mark by which most of it reads as numbers; what stands before the
 * first such row is its head. Null when nothing in it reads as rows of two numbers or more.
 */
export function shapeOf(lines: readonly string[], tokenize: Tokenize): TableShape | null {
  let best: { points: number; shape: TableShape } | null = null
  for (const { delimiter, decimalComma } of WAYS) {
    const rows = lines.map(line => cellsOf(line, delimiter, tokenize))
    const scores = rows.map(cells => score(cells, decimalComma))
    const widths = new Map<number, number>()
    for (const [i, cells] of rows.entries())
      if (scores[i] !== null) widths.set(cells.length, (widths.get(cells.length) ?? 0) + 1)
    const width = [...widths].sort((a, b) => b[1] - a[1])[0]?.[0]
    if (width === undefined) continue
    const fits = rows.map((cells, i) => cells.length === width && scores[i] !== null)
    const points = scores.reduce<number>((sum, points, i) => sum + (fits[i] ? points! : 0), 0)
    if (points <= 0 || (best !== null && points <= best.points)) continue
    const headerRows = fits.indexOf(true)
    best = { points, shape: { delimiter, decimalComma, headerRows, ...headOf(rows.slice(0, headerRows), width) } }
  }
  return best?.shape ?? null
}

function headOf(rows: readonly string[][], width: number): Pick<TableShape, 'unitsRow' | 'columns'> {
  const whole = rows.flatMap((cells, i) => (cells.length === width ? [i] : []))
  const last = whole.at(-1)
  const headsIn = (i: number | undefined): string[] => (i === undefined ? Array(width).fill('') : rows[i]!)
  const units =
    last !== undefined &&
    whole.length > 1 &&
    rows[last]!.every(isUnit) &&
    !rows[last]!.every(cell => cell.trim() === '')
  const heads = headsIn(units ? whole.at(-2) : last).map(named)
  return {
    unitsRow: units ? last : null,
    columns: units ? heads.map((head, i) => ({ ...head, unit: bare(rows[last]![i]!) || head.unit })) : heads,
  }
}
