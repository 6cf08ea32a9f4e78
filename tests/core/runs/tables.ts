import { dsvFormat } from 'd3'
import type { Tokenize } from '../../../core/runs/shape.ts'
import { type TableChoice, type TableEnd, TableImport } from '../../../core/runs/table-import.ts'

export const tokenize: Tokenize = (text, delimiter) => dsvFormat(delimiter).parseRows(text)

/** A table from its text, handed over in pieces of `size` letters. */
export function imported(text: string, size = text.length, choice?: TableChoice): TableEnd {
  const table = new TableImport(
    tokenize,
    shape => choice ?? { time: 0, timeUnit: 1, values: shape.columns.slice(1).map((_, i) => i + 1) },
  )
  for (let i = 0; i < text.length; i += size) table.push(text.slice(i, i + size))
  return table.end()
}
