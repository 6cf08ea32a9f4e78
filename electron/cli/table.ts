/** Rows of cells as text: the first column to the left, the others to the right, two spaces between. */
export function table(rows: readonly (readonly string[])[], indent = '  '): string {
  const widths = rows[0]!.map((_, column) => Math.max(...rows.map(row => row[column]!.length)))
  return rows
    .map(row => {
      const cells = row.map((cell, column) =>
        column === 0 ? cell.padEnd(widths[column]!) : cell.padStart(widths[column]!),
      )
      return `${indent}${cells.join('  ').trimEnd()}\n`
    })
    .join('')
}
