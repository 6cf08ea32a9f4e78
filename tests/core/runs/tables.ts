import { dsvFormat } from 'd3'
import { type Detected, detectReading } from '../../../core/runs/detect.ts'
import type { Reading } from '../../../core/runs/reading.ts'
import { type Table, type TableEnd, TableImport } from '../../../core/runs/table-import.ts'
import type { Tokenize } from '../../../core/runs/table-text.ts'

export const tokenize: Tokenize = (text, delimiter) => dsvFormat(delimiter).parseRows(text)

export const detected = (text: string): Detected => detectReading(text, 'utf-8', tokenize)

/** A table from its text, handed over in pieces of `size` letters; every column besides the time, unless others are named. */
export function imported(text: string, size = text.length, reading: Partial<Reading> = {}): TableEnd {
  const { reading: told, columns } = detected(text)
  const read = { ...told, ...reading }
  const { time } = read
  const taken = columns.flatMap((_, i) => (time.kind !== 'rate' && time.column === i ? [] : [i]))
  const table = new TableImport(tokenize, read, columns, taken)
  for (let i = 0; i < text.length; i += size) table.push(text.slice(i, i + size))
  return table.end()
}

/** The same where it must be a table. */
export function tableIn(text: string, reading: Partial<Reading> = {}): Table {
  const end = imported(text, undefined, reading)
  if (!end.ok) throw new Error(end.why)
  return end.table
}
