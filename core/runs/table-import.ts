import { Blocks } from './blocks.ts'
import { isMissing, numberIn } from './cell.ts'
import { SHAPE_LINES, SHAPE_SAMPLE, shapeOf, spaced, type TableShape, type Tokenize } from './shape.ts'

/** What is taken from a table: its columns, from 0. */
export interface TableChoice {
  readonly time: number
  /** Size of the time column's unit, s. */
  readonly timeUnit: number
  readonly values: readonly number[]
}

/** What was not as it should be, in rows. */
export interface TableFaults {
  /** Rows with more or fewer cells, or with words for the time. */
  readonly unreadable: number
  /** Rows at the time of the row before; the first is kept. */
  readonly repeated: number
  /** Rows before a row already read; left out. */
  readonly backward: number
  /** Values that are not there, of the columns taken; a missing one is NaN. */
  readonly missing: number
}

export interface Table {
  readonly shape: TableShape
  readonly rows: number
  /** Strictly rising, s. */
  readonly time: Float64Array
  /** As in the file, one list a column. */
  readonly values: readonly Float64Array[]
  readonly faults: TableFaults
}

export type TableEnd =
  | { readonly ok: true; readonly table: Table }
  | { readonly ok: false; readonly why: 'no table' | 'not chosen' | 'too long' }

/** Most rows taken. With it memory is bound: 8 bytes a number, time and columns, twice while lists are joined, and one piece of text. */
export const MOST_ROWS = 10_000_000

/** A line longer than this is cut: no row of a table is as long, and a file without line ends is no table. */
const LONGEST_LINE = 1_048_576

/**
 * Takes a table from text that comes in pieces, however it is cut: `push` each, then `end`. A line is a row: a cell holds no line end.
 * @param choose what to take, once the shape is known; null when it cannot be said
 */
export class TableImport {
  private rest = ''
  private shape: TableShape | null = null
  private choice: TableChoice | null = null
  private stopped: (TableEnd & { ok: false })['why'] | null = null
  private header = 0
  private rows = 0
  private last = -Infinity
  private readonly time = new Blocks()
  private values: Blocks[] = []
  private readonly faults = { unreadable: 0, repeated: 0, backward: 0, missing: 0 }

  constructor(
    private readonly tokenize: Tokenize,
    private readonly choose: (shape: TableShape) => TableChoice | null,
  ) {}

  /** Nothing more needs to be read: it cannot be taken. */
  get over(): boolean {
    return this.stopped !== null
  }

  push(text: string): void {
    if (this.stopped !== null) return
    this.rest += text
    if (this.shape === null && this.rest.length < SHAPE_SAMPLE) return
    if (this.shape === null) this.look(this.rest.slice(0, SHAPE_SAMPLE).lastIndexOf('\n'))
    this.take(this.rest.lastIndexOf('\n') + 1)
  }

  end(): TableEnd {
    if (this.shape === null && this.stopped === null) this.look(this.rest.length)
    this.take(this.rest.length)
    const { shape, rows, time, values, faults, stopped } = this
    if (stopped !== null || shape === null) return { ok: false, why: stopped ?? 'no table' }
    return {
      ok: true,
      table: { shape, rows, time: time.joined(), values: values.map(each => each.joined()), faults: { ...faults } },
    }
  }

  private look(end: number): void {
    const lines = this.rest
      .slice(0, Math.max(0, end))
      .split('\n', SHAPE_LINES)
      .map(line => line.replace(/\r$/, ''))
    while (lines.at(-1) === '') lines.pop()
    this.shape = shapeOf(lines, this.tokenize)
    this.choice = this.shape === null ? null : this.choose(this.shape)
    if (this.shape === null) this.stopped = 'no table'
    else if (this.choice === null) this.stopped = 'not chosen'
    else {
      this.values = this.choice.values.map(() => new Blocks())
      this.header = this.shape.headerRows
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
    }
    const lines = spaced(from === 0 ? text : text.slice(from), this.shape!.delimiter)
    // A quotation mark that is never closed must not swallow the lines after it.
    for (const piece of lines.includes('"') ? lines.split('\n') : [lines])
      for (const cells of this.tokenize(piece, this.shape!.delimiter)) this.row(cells)
  }

  private row(cells: readonly string[]): void {
    const { shape, choice, faults } = this
    if (cells.length === 1 && cells[0]!.trim() === '') return
    this.rows += 1
    if (this.rows > MOST_ROWS) {
      this.stopped = 'too long'
      return
    }
    const { columns, decimalComma } = shape!
    const time = cells.length === columns.length ? numberIn(cells[choice!.time]!, decimalComma) : Number.NaN
    if (Number.isNaN(time)) {
      faults.unreadable += 1
      return
    }
    if (time <= this.last) {
      if (time === this.last) faults.repeated += 1
      else faults.backward += 1
      return
    }
    this.last = time
    this.time.push(time * choice!.timeUnit)
    for (let i = 0; i < this.values.length; i += 1) {
      const cell = cells[choice!.values[i]!]!
      const value = numberIn(cell, decimalComma)
      if (Number.isNaN(value)) {
        if (isMissing(cell)) faults.missing += 1
        else faults.unreadable += 1
      }
      this.values[i]!.push(value)
    }
  }
}
