import { columnsOf } from './head.ts'
import type { Column, Reading } from './reading.ts'
import { RowReader } from './row-reader.ts'
import { cellsOf, linesOf, type Tokenize, usualWidth } from './table-text.ts'

export interface PreviewRow {
  /** In the file, from 1. */
  readonly line: number
  readonly cells: readonly string[]
  /** s; null where the row gives none. */
  readonly time: number | null
  /** Of each cell; null where it holds no number. */
  readonly numbers: readonly (number | null)[]
  /** Why the row is not taken: other than so many cells, no time, the time of the row before, an earlier time. */
  readonly fault: 'cells' | 'time' | 'repeated' | 'backward' | null
}

/** The beginning of a file as it would be read. */
export interface Preview {
  /** Cells of the lines before the first row. */
  readonly head: readonly (readonly string[])[]
  readonly columns: readonly Column[]
  readonly rows: readonly PreviewRow[]
}

/** What the first rows of a file come to when it is read in a way. @param most rows; @param sample the file's first letters */
export function previewRows(sample: string, reading: Reading, most: number, tokenize: Tokenize): Preview {
  const lines = linesOf(sample, reading.lineEnd)
  const all = lines.map(line => cellsOf(line, reading.delimiter, tokenize))
  const head = all.slice(0, reading.headerRows)
  const columns = columnsOf(head, reading.unitsRow, usualWidth(all.slice(reading.headerRows)))
  const reader = new RowReader(reading, columns.length)
  const rows: PreviewRow[] = []
  for (let i = head.length; i < all.length && rows.length < most; i += 1) {
    const cells = all[i]!
    if (cells.length === 1 && cells[0]!.trim() === '') continue
    const fault = reader.take(cells)
    rows.push({
      line: i + 1,
      cells,
      time: fault === 'cells' || fault === 'time' ? null : reader.time,
      numbers: cells.map(cell => {
        const value = reader.number(cell)
        return Number.isNaN(value) ? null : value
      }),
      fault,
    })
  }
  return { head, columns, rows }
}
