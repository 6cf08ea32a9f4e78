import { type ClipboardEvent, type KeyboardEvent, useRef, useState } from 'react'
import { parseMeasure } from '../../core/units/parse.ts'
import { unitOf } from '../../core/units/quantity.ts'
import { put } from '../state/edit.ts'
import { isAssumed, valueAt } from '../state/place.ts'
import { placeOf } from '../state/selectors.ts'
import { useSelect, useStore } from '../window-context.ts'
import { FieldError } from './FieldError.tsx'
import type { FieldSpec } from './field-spec.ts'
import { fieldTable, generic } from './field-table.ts'
import { MeasureField } from './MeasureField.tsx'
import { wantedAt } from './refusals.ts'
import { pastedCells, rowAfter, sortedBy, type TableRow } from './table-rows.ts'

interface Props {
  /** The list: `corner.linkage.rows`. */
  readonly field: string
  /** As undo and screen readers call it: `linkage table`. */
  readonly name: string
  /** Columns in order; rows are kept sorted by the first. */
  readonly columns: readonly string[]
  readonly fewest: number
  /** What an empty table begins with. */
  readonly first: readonly TableRow[]
}

const none: readonly TableRow[] = []

/** The row a problem is in, as people count them; nothing where it is the whole table's. */
const rowOf = (path: string): string => {
  const row = /\[(\d+)\]\.\w+$/.exec(path)?.[1]
  return row === undefined ? '' : `in row ${Number(row) + 1}, `
}

/** Rows of numbers. Enter goes down, Alt with an arrow goes up or down, Ctrl+Enter adds a row, Ctrl+Delete takes one out; a spreadsheet's cells can be pasted. */
export function TableField({ field, name, columns, fewest, first }: Props) {
  const store = useStore()
  const rows = useSelect(state => (valueAt(state.plan, placeOf(state, field)) ?? none) as readonly TableRow[])
  const system = useSelect(state => state.plan.units)
  const assumed = useSelect(state => isAssumed(state.plan, placeOf(state, field)))
  const [trouble, setTrouble] = useState('')
  const table = useRef<HTMLTableElement>(null)
  const specs = columns.map(column => fieldTable[`${generic(field)}.*.${column}`]!)
  const cellId = (row: number, column: number) => `cell-${field.replaceAll('.', '-')}-${row}-${column}`

  const focus = (row: number, column: number) =>
    requestAnimationFrame(() => table.current?.querySelector<HTMLInputElement>(`#${cellId(row, column)}`)?.focus())

  const write = (label: string, next: readonly TableRow[]): boolean => {
    const problems = put(store, `${name}: ${label}`, field, next)
    const problem = problems[0]
    setTrouble(
      problem === undefined ? '' : `Not changed: ${rowOf(problem.path)}right would be ${wantedAt(problem, system)}.`,
    )
    return problem === undefined
  }

  const add = (after: number, column: number) => {
    const next = rows.length === 0 ? first : rows.toSpliced(after + 1, 0, rowAfter(rows, after))
    if (write('row added', next)) focus(rows.length === 0 ? 1 : after + 1, column)
  }

  const remove = (row: number, column: number) => {
    if (rows.length <= fewest) return setTrouble(`It takes at least ${fewest} rows.`)
    if (write(`row ${row + 1} removed`, rows.toSpliced(row, 1))) focus(Math.min(row, rows.length - 2), column)
  }

  const onKey = (event: KeyboardEvent<HTMLInputElement>, row: number, column: number): boolean => {
    const { key, altKey } = event
    const ctrl = event.ctrlKey || event.metaKey
    if (ctrl && key === 'Enter') add(row, column)
    else if (ctrl && (key === 'Delete' || key === 'Backspace')) remove(row, column)
    else if (key === 'Enter' && row < rows.length - 1) focus(row + 1, column)
    else if (altKey && key === 'ArrowDown') focus(Math.min(rows.length - 1, row + 1), column)
    else if (altKey && key === 'ArrowUp') focus(Math.max(0, row - 1), column)
    else return false
    return true
  }

  const paste = (event: ClipboardEvent) => {
    const cells = pastedCells(event.clipboardData.getData('text/plain'))
    if (cells === null) return
    event.preventDefault()
    const read = cells.map(line => columns.map((_, i) => parseMeasure(line[i] ?? '', specs[i]!.quantity, system)))
    const numbers = read.filter((line, i) => i > 0 || line.some(cell => cell.ok))
    const wrong = numbers.findIndex(line => line.some(cell => !cell.ok))
    if (wrong >= 0) return setTrouble(`Not pasted: line ${wrong + 1} needs ${columns.length} numbers.`)
    const next = numbers.map(line => Object.fromEntries(line.map((cell, i) => [columns[i]!, cell.ok ? cell.value : 0])))
    write(`${next.length} rows pasted`, sortedBy(next, columns[0]!))
  }

  return (
    <>
      <table className="steel" ref={table} onPaste={paste} aria-label={name}>
        {rows.length > 0 ? <Heads specs={specs} system={system} /> : null}
        <tbody>
          {rows.map((_, row) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: a row has no other name than its place
            <tr key={row}>
              {columns.map((column, i) => (
                <td key={column}>
                  <MeasureField
                    field={`${field}.${row}.${column}`}
                    spec={specs[i]!}
                    id={cellId(row, i)}
                    name={`${specs[i]!.label}, row ${row + 1}`}
                    onKey={event => onKey(event, row, i)}
                  />
                </td>
              ))}
              <td className="out">
                <button
                  type="button"
                  className="take"
                  aria-label={`Remove row ${row + 1}`}
                  onClick={() => remove(row, 0)}
                >
                  −
                </button>
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      {rows.map((_, row) =>
        columns.map((column, i) => (
          <FieldError key={cellId(row, i)} field={`${field}.${row}.${column}`} spec={specs[i]!} id={cellId(row, i)} />
        )),
      )}
      {assumed ? (
        <p className="aside">
          <i>assumed</i>, all of it
        </p>
      ) : null}
      {trouble === '' ? null : (
        <p className="trouble" role="alert">
          {trouble}
        </p>
      )}
      <button
        type="button"
        className="step"
        {...(rows.length === 0 && { 'data-field': field })}
        onClick={() => add(rows.length - 1, 0)}
      >
        Add a row
      </button>
    </>
  )
}

function Heads({ specs, system }: { specs: readonly FieldSpec[]; system: 'inch' | 'metric' }) {
  return (
    <thead>
      <tr>
        {specs.map(spec => (
          <th key={spec.label} scope="col">
            {spec.label}
            {unitOf(spec.quantity, system).label === '' ? '' : `, ${unitOf(spec.quantity, system).label}`}
          </th>
        ))}
        <td />
      </tr>
    </thead>
  )
}
