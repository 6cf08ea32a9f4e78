import { Blocks } from './blocks.ts'
import { isMissing } from './cell.ts'
import type { Column, Reading } from './reading.ts'
import { type RowFault, RowReader } from './row-reader.ts'
import { lineFeeds, spaced, type Tokenize } from './table-text.ts'

/** What was not as it should be, in rows. */
export interface TableFaults {
  /** Rows with more or fewer cells, or with words for the time, and words for values. */
  readonly unreadable: number
  /** Rows at the time of the row before; the first is kept. */
  readonly repeated: number
  /** Rows before a row already read: left out, or places where the run goes on with its clock set back. */
  readonly backward: number
  /** Values that are not there, of the columns taken; a missing one is NaN. */
  readonly missing: number
}

export interface Table {
  readonly rows: number
  /** Strictly rising, s. */
  readonly time: Float64Array
  /** As in the file, one list a column. */
  readonly values: readonly Float64Array[]
  readonly faults: TableFaults
  /** The line of the file, from 1, on which each fault first came; null where it did not. */
  readonly firstLines: Readonly<Record<keyof TableFaults, number | null>>
  /** Time of day of the first row as it stands in the file; null where rows have none. */
  readonly startedAt: string | null
}

export type TableEnd =
  | { readonly ok: true; readonly table: Table }
  | { readonly ok: false; readonly why: 'no table' | 'too long' }

/**
 * Most rows taken. With it memory is bound: 8 bytes a number, for time and columns, one of them twice while it is joined, and a few pieces of
 * text with their cells.
 */
export const MOST_ROWS = 10_000_000

/** A line longer than this is cut: no row of a table is as long, and a file without line ends is no table. */
const LONGEST_LINE = 1_048_576

const COUNTED: Readonly<Record<RowFault, keyof TableFaults>> = {
  cells: 'unreadable',
  time: 'unreadable',
  repeated: 'repeated',
  backward: 'backward',
}

/**
 * Takes a table from text that comes in pieces, however it is cut: `push` each, then `end`. A line is a row: a cell holds no line end.
 * @param columns of the table; @param taken places of those whose values are taken, from 0
 */
export class TableImport {
  private rest = ''
  private stopped: (TableEnd & { ok: false })['why'] | null = null
  private header: number
  private line = 0
  private rows = 0
  private readonly reader: RowReader
  private readonly time = new Blocks()
  private readonly values: readonly Blocks[]
  private readonly faults = { unreadable: 0, repeated: 0, backward: 0, missing: 0 }
  private readonly firstLines: Record<keyof TableFaults, number | null> = {
    unreadable: null,
    repeated: null,
    backward: null,
    missing: null,
  }

  constructor(
    private readonly tokenize: Tokenize,
    private readonly reading: Reading,
    columns: readonly Column[],
    private readonly taken: readonly number[],
  ) {
    this.header = reading.headerRows
    this.reader = new RowReader(reading, columns.length)
    this.values = taken.map(() => new Blocks())
  }

  /** Nothing more needs to be read: it cannot be taken. */
  get over(): boolean {
    return this.stopped !== null
  }

  push(text: string): void {
    if (this.stopped !== null) return
    this.rest += lineFeeds(text, this.reading.lineEnd)
    this.take(this.rest.lastIndexOf('\n') + 1)
  }

  end(): TableEnd {
    this.take(this.rest.length)
    const { rows, time, values, faults, stopped, firstLines, reader } = this
    if (stopped !== null || time.length === 0) return { ok: false, why: stopped ?? 'no table' }
    return {
      ok: true,
      table: {
        rows,
        time: time.joined(),
        values: values.map(each => each.joined()),
        faults: { ...faults },
        firstLines: { ...firstLines },
        startedAt: reader.startedAt,
      },
    }
  }

  /** Takes the lines up to a place and keeps the rest. */
  private take(end: number): void {
    const text = this.rest.slice(0, end)
    this.rest = this.rest.slice(end)
    if (this.rest.length > LONGEST_LINE) this.stopped = 'no table'
    if (this.stopped !== null || text === '') return
    let from = 0
    for (; this.header > 0 && from < text.length; this.header -= 1) {
      const next = text.indexOf('\n', from)
      from = next < 0 ? text.length : next + 1
      this.line += 1
    }
    const { delimiter } = this.reading
    const lines = spaced(from === 0 ? text : text.slice(from), delimiter)
    if (lines === '') return
    // A quotation mark that is never closed must not swallow the lines after it.
    for (const piece of lines.includes('"')
      ? lines.split('\n').slice(0, lines.endsWith('\n') ? -1 : undefined)
      : [lines])
      if (piece === '') this.line += 1
      else for (const cells of this.tokenize(piece, delimiter)) this.row(cells)
  }

  private fault(kind: keyof TableFaults): void {
    this.faults[kind] += 1
    this.firstLines[kind] ??= this.line
  }

  private row(cells: readonly string[]): void {
    const { reader, taken, values } = this
    this.line += 1
    if (cells.length === 1 && cells[0]!.trim() === '') return
    this.rows += 1
    if (this.rows > MOST_ROWS) {
      this.stopped = 'too long'
      return
    }
    const setBack = reader.setBack
    const fault = reader.take(cells)
    if (fault !== null) {
      this.fault(COUNTED[fault])
      return
    }
    if (reader.setBack > setBack) this.fault('backward')
    this.time.push(reader.time)
    for (let i = 0; i < values.length; i += 1) {
      const cell = cells[taken[i]!]!
      const value = reader.number(cell)
      if (Number.isNaN(value)) this.fault(isMissing(cell) ? 'missing' : 'unreadable')
      values[i]!.push(value)
    }
  }
}
