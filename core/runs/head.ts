import { bareUnit } from './column-units.ts'
import type { Column } from './reading.ts'

/** `Front left (mm)` → its name and unit. */
function named(head: string, place: number): Column {
  const match = /^(.*?)\s*[([]([^()[\]]*)[)\]]\s*$/.exec(head.trim())
  const name = (match === null ? head : match[1]!).trim()
  const unit = match === null ? '' : bareUnit(match[2]!)
  return { name: name === '' ? `column ${place + 1}` : name, unit: unit === '' ? null : unit }
}

/**
 * The names and units of a table's columns, from the lines before its first row: names are in the last of them that is as wide as the table
 * and holds no units. @param heads their cells; @param width columns of the table
 */
export function columnsOf(heads: readonly (readonly string[])[], unitsRow: number | null, width: number): Column[] {
  const units = unitsRow === null ? undefined : heads[unitsRow]
  const others = heads.filter((cells, i) => i !== unitsRow && cells.some(cell => cell.trim() !== ''))
  // A row may end in a delimiter where its head does not, or the other way round.
  const names =
    others.findLast(cells => cells.length === width) ??
    (width > 2 ? others.findLast(cells => Math.abs(cells.length - width) === 1) : undefined)
  return Array.from({ length: width }, (_, i): Column => {
    const column = named(names?.[i] ?? '', i)
    const unit = bareUnit(units?.[i] ?? '')
    return unit === '' ? column : { ...column, unit }
  })
}
