import { paragraph, WIDTH } from './paragraph.ts'

/**
 * Rows of cells as text under the head row: the first column to the left, the others to the right, two spaces between.
 * What would be wider than WIDTH is set row by row instead, each value behind its head.
 */
export function table(rows: readonly (readonly string[])[], indent = '  '): string {
  const [head = [], ...others] = rows
  const widths = head.map((_, column) => Math.max(...rows.map(row => row[column]!.length)))
  const wide = indent.length + widths.reduce((sum, width) => sum + width, 0) + 2 * (widths.length - 1) > WIDTH
  if (wide)
    return others
      .map(([name, ...cells]) => {
        const said = cells.map((cell, i) => `${head[i + 1]} ${cell}`).join('; ')
        return paragraph(`${head[0]}, ${name}: ${said}`, indent, `${indent}  `)
      })
      .join('')
  return rows
    .map(row => {
      const cells = row.map((cell, column) =>
        column === 0 ? cell.padEnd(widths[column]!) : cell.padStart(widths[column]!),
      )
      return `${indent}${cells.join('  ').trimEnd()}\n`
    })
    .join('')
}
