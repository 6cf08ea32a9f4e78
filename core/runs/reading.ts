import type { Encoding } from './encoding.ts'

export type Delimiter = ',' | ';' | '\t' | '|' | ' '

/** How lines end: a bare carriage return is told apart only where there is no line feed. */
export type LineEnd = 'lf' | 'crlf' | 'cr'

/** Order of day, month and year in a calendar date. */
export type DateOrder = 'year first' | 'day first' | 'month first'

/** Where a row's time comes from. Columns are counted from 0. */
export type TimeSource =
  /** Plain numbers. `unit`: s for one of them. */
  | { readonly kind: 'numbers'; readonly column: number; readonly unit: number }
  /** Times of day, with or without a calendar date; told in s from the first row. Past midnight without a date they go on. */
  | { readonly kind: 'clock'; readonly column: number; readonly dates: DateOrder }
  /** No column tells it: rows follow each other evenly, so many a second. */
  | { readonly kind: 'rate'; readonly rowsPerSecond: number }

/** How a table of text is read: what was told from the file, and all of it a person can put right. Plain data. */
export interface Reading {
  readonly encoding: Encoding
  readonly lineEnd: LineEnd
  readonly delimiter: Delimiter
  readonly decimalComma: boolean
  /** Lines before the first row of numbers. */
  readonly headerRows: number
  /** The line of those that holds units, from 0; null without one. */
  readonly unitsRow: number | null
  readonly time: TimeSource
  /** Rows before a row already read are left out; or the clock was set back there, and the run goes on after a gap. */
  readonly backward: 'left out' | 'goes on'
  /** A longer pause between rows is a gap that nothing is said about, s; null: five of the usual steps. */
  readonly longestPause: number | null
}

export interface Column {
  /** As in the head, without its unit; its place where the head has none. */
  readonly name: string
  readonly unit: string | null
}
