import type { Problem } from '../plan/problem.ts'
import type { Reading } from './reading.ts'

/** Most lines before the rows, and the rows a second any logger takes. */
const MOST_HEAD = 250
const RATES = { least: 0.1, most: 1e6 } as const

/** What keeps a file from being read so; empty when nothing does. @param columns how many its table has */
export function readingProblems(reading: Reading, columns: number): Problem[] {
  const problems: Problem[] = []
  const refuse = (path: string, found: unknown, wanted: string): void => {
    problems.push({ path, found: String(found), wanted })
  }
  const { headerRows, unitsRow, time, longestPause } = reading
  if (!Number.isInteger(headerRows) || headerRows < 0 || headerRows > MOST_HEAD)
    refuse('headerRows', headerRows, `a whole number of lines, 0 to ${MOST_HEAD}`)
  else if (unitsRow !== null && (!Number.isInteger(unitsRow) || unitsRow < 0 || unitsRow >= headerRows))
    refuse('unitsRow', unitsRow, 'one of the lines before the first row, or none')
  if (time.kind === 'rate') {
    if (!(time.rowsPerSecond >= RATES.least && time.rowsPerSecond <= RATES.most))
      refuse('time.rowsPerSecond', time.rowsPerSecond, 'rows a second, such as 500')
  } else {
    if (!Number.isInteger(time.column) || time.column < 0 || time.column >= columns)
      refuse(
        'time.column',
        time.column,
        columns === 0 ? 'a table with columns' : `a column of the table, 0 to ${columns - 1}`,
      )
    if (time.kind === 'numbers' && !(time.unit > 0 && time.unit < Infinity))
      refuse('time.unit', time.unit, 'the size of one of them in seconds, more than 0')
  }
  if (longestPause !== null && !(longestPause > 0 && longestPause < Infinity))
    refuse('longestPause', longestPause, 'seconds, more than 0, or none given')
  return problems
}
