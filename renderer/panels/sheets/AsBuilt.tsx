import { useState } from 'react'
import type { Plan } from '../../../core/plan/schema.ts'
import { parseMeasure } from '../../../core/units/parse.ts'
import { unitOf } from '../../../core/units/quantity.ts'
import { type Built, beyond, blanks, builtAxle } from '../../sheets/as-built.ts'
import type { Sides } from '../../sheets/Sheet.tsx'
import { addAsBuilt } from '../../state/as-built.ts'
import { useStore } from '../../window-context.ts'

/** What was written on the shop sheet, typed back: it becomes a setup, and what is off by more than its tolerance is said. */
export function AsBuilt({ plan, sides: { before, after } }: { plan: Plan; sides: Sides }) {
  const store = useStore()
  const [typed, setTyped] = useState<Readonly<Record<string, string>>>({})
  const [refused, setRefused] = useState<string | null>(null)
  const fields = blanks(before.axle, after.axle).map(row => {
    const text = typed[row.path] ?? ''
    return { row, text, read: text.trim() === '' ? null : parseMeasure(text, row.quantity, plan.units) }
  })
  const built: Built = Object.fromEntries(
    fields.flatMap(({ row, read }) => (read?.ok === true ? [[row.path, read.value]] : [])),
  )
  const wrong = fields.some(({ read }) => read?.ok === false)
  const off = beyond(plan, before.axle, after.axle, built)
  const make = (): void => {
    const problems = addAsBuilt(store, after.setup.id, builtAxle(after.axle, built))
    setRefused(problems[0] === undefined ? null : `Found ${problems[0].found}; wanted ${problems[0].wanted}.`)
    if (problems.length === 0) setTyped({})
  }
  return (
    <section className="as-built" aria-label="As built">
      <h3>As built</h3>
      <p>Type what was written on the shop sheet. Empty: as planned.</p>
      {fields.map(({ row, text, read }) => (
        <div key={row.path}>
          <div className="row">
            <label htmlFor={`built-${row.path}`}>{row.name}</label>
            <span className="as" />
            <input
              id={`built-${row.path}`}
              className={`f${read?.ok === false ? ' bad' : ''}`}
              value={text}
              aria-invalid={read?.ok === false}
              onChange={({ currentTarget: { value } }) => setTyped(was => ({ ...was, [row.path]: value }))}
            />
            <span className="u">{unitOf(row.quantity, plan.units).label}</span>
          </div>
          {read?.ok === false ? <p className="wrong">{read.problem}</p> : null}
        </div>
      ))}
      <ul aria-live="polite">
        {off.map(text => (
          <li key={text}>{text}</li>
        ))}
      </ul>
      {refused === null ? null : <p className="wrong">{refused}</p>}
      <button type="button" disabled={wrong || Object.keys(built).length === 0} onClick={make}>
        Make it a setup
      </button>
    </section>
  )
}
