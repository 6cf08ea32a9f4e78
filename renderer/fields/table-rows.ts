/** Rows of a table of the plan: numbers by column name, SI. */
export type TableRow = Readonly<Record<string, number>>

/** A row between row `at` and the next, halfway; past the last row, one more stride of the same kind. */
export function rowAfter(rows: readonly TableRow[], at: number): TableRow {
  const here = rows[at]!
  const next = rows[at + 1]
  const before = rows[at - 1]
  const between = (column: string): number => {
    const value = here[column]!
    if (next !== undefined) return (value + next[column]!) / 2
    return before === undefined ? value + 0.1 : value + (value - before[column]!)
  }
  return Object.fromEntries(Object.keys(here).map(column => [column, between(column)]))
}

export const sortedBy = (rows: readonly TableRow[], column: string): TableRow[] =>
  [...rows].sort((a, b) => a[column]! - b[column]!)

/** The cells of pasted text: one row a line, cells apart by tabs, semicolons or several spaces. Null when it is one cell only. */
export function pastedCells(text: string): string[][] | null {
  const lines = text
    .split(/\r?\n/)
    .map(line => line.trim())
    .filter(line => line !== '')
  const cells = lines.map(line => line.split(/\t|;|\s{2,}/).map(cell => cell.trim()))
  return cells.length > 1 || (cells[0]?.length ?? 0) > 1 ? cells : null
}
