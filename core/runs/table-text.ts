import type { Delimiter, LineEnd } from './reading.ts'

/** Rows of cells from the text of whole lines. */
export type Tokenize = (text: string, delimiter: string) => string[][]

/** Letters, and of those lines, of a table's beginning that is told from what it is like. */
export const SHAPE_SAMPLE = 65_536
const SHAPE_LINES = 300
/** A sample of so few lines is the whole file, so that its last line is not cut. */
const FEW_LINES = 20

/** Spaces in a row count once where they part cells. */
export const spaced = (text: string, delimiter: Delimiter): string =>
  delimiter === ' ' ? text.replace(/^ +| +$/gm, '').replace(/ +/g, ' ') : text

/** The cells of a line; all of it where quotation marks alone would part it. */
export function cellsOf(line: string, delimiter: Delimiter, tokenize: Tokenize): string[] {
  const text = spaced(line, delimiter)
  const cells = tokenize(text, delimiter)[0] ?? ['']
  return text.split(delimiter).length < cells.length ? [text] : cells
}

/** How the lines of a sample end; `lf` where it is one line. */
export const lineEndOf = (sample: string): LineEnd =>
  sample.includes('\n') ? (sample.includes('\r\n') ? 'crlf' : 'lf') : sample.includes('\r') ? 'cr' : 'lf'

/** Text whose lines end in a line feed: with one after each bare carriage return there, others left alone. */
export const lineFeeds = (text: string, lineEnd: LineEnd): string =>
  lineEnd === 'cr' ? text.replaceAll('\r', '\n') : text

/** The first lines of a table; one the sample cuts is left out. */
export function linesOf(sample: string, lineEnd: LineEnd): string[] {
  const lines = lineFeeds(sample.slice(0, SHAPE_SAMPLE), lineEnd)
    .split('\n', SHAPE_LINES + 1)
    .map(line => line.replace(/\r$/, ''))
  if (lines.length > FEW_LINES) lines.pop()
  while (lines.at(-1) === '') lines.pop()
  return lines
}

/** The width most rows have, empty lines aside; 0 without rows. */
export function usualWidth(rows: readonly (readonly string[])[]): number {
  const widths = new Map<number, number>()
  for (const { length, 0: first = '' } of rows)
    if (length > 1 || first.trim() !== '') widths.set(length, (widths.get(length) ?? 0) + 1)
  return [...widths].sort((a, b) => b[1] - a[1])[0]?.[0] ?? 0
}
