import { type FormEvent, useMemo, useState } from 'react'
import { axleBudget } from '../../../core/budget/budget.ts'
import { parsePlan } from '../../../core/plan/parse.ts'
import type { Axle, Plan } from '../../../core/plan/schema.ts'
import { fieldText } from '../../../core/units/format.ts'
import { parseMeasure } from '../../../core/units/parse.ts'
import { unitOf } from '../../../core/units/quantity.ts'
import { FindingBadge } from '../../charts/marks/FindingShape.tsx'
import { saidElsewhere } from '../../fields/refusals.ts'
import { type Built, blanks, builtAxle, consequences, differences } from '../../sheets/as-built.ts'
import { upper } from '../../sheets/done.ts'
import type { Sides } from '../../sheets/Sheet.tsx'
import { addAsBuilt } from '../../state/as-built.ts'
import { useStore } from '../../window-context.ts'

/** What the differences come to; nothing for a car that could not be. */
function comesTo(plan: Plan, after: Sides['after'], axle: Axle): string[] {
  const setup = { ...after.setup, axles: after.setup.axles.map(each => (each.id === axle.id ? axle : each)) }
  const parsed = parsePlan({ ...plan, setups: plan.setups.map(each => (each.id === setup.id ? setup : each)) })
  return parsed.ok ? consequences(plan, after.budget, axleBudget(axle, plan)) : []
}

/** What was written on the shop sheet, typed back: it becomes a setup, and what is off by more than its tolerance is a finding. */
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
  const off = differences(plan, before.axle, after.axle, built)
  const key = JSON.stringify(built)
  const axle = useMemo(() => builtAxle(after.axle, JSON.parse(key) as Built), [after, key])
  const result = useMemo(() => (key === '{}' ? [] : comesTo(plan, after, axle)), [plan, after, axle, key])
  const ready = !wrong && Object.keys(built).length > 0
  const make = (event: FormEvent): void => {
    event.preventDefault()
    if (!ready) return
    const problems = addAsBuilt(
      store,
      after.setup.id,
      axle,
      off.map(({ short }) => short),
    )
    const said = problems[0] === undefined ? null : saidElsewhere(problems[0], plan.units)
    setRefused(said === null ? null : `No car could be so. ${said.right}`)
    if (problems.length === 0) setTyped({})
  }
  const findings = off.filter(({ held }) => !held)
  return (
    <form className="as-built" aria-label="As built" onSubmit={make}>
      <h3>As built</h3>
      <p>Type what was written on the shop sheet. Empty: as planned.</p>
      {fields.map(({ row, text, read }) => {
        const id = `built-${row.path}`
        const difference = off.find(({ path }) => path === row.path)
        const told = read?.ok === false ? read.problem : difference?.held === true ? difference.sentence : null
        return (
          <div key={row.path}>
            <div className="row">
              <label htmlFor={id}>{upper(row.name)}</label>
              <input
                id={id}
                className={`f${read?.ok === false ? ' bad' : ''}`}
                value={text}
                placeholder={fieldText(row.after!, row.quantity, plan.units)}
                autoComplete="off"
                aria-invalid={read?.ok === false}
                aria-describedby={told === null ? undefined : `${id}-told`}
                onChange={({ currentTarget: { value } }) => setTyped(was => ({ ...was, [row.path]: value }))}
              />
              <span className="u">{unitOf(row.quantity, plan.units).label}</span>
            </div>
            {told === null ? null : (
              <p id={`${id}-told`} className={read?.ok === false ? 'wrong' : 'held'}>
                {told}
              </p>
            )}
          </div>
        )
      })}
      <ul aria-live="polite" aria-label="Findings as built">
        {findings.map(({ path, sentence }, i) => (
          <li key={path}>
            <FindingBadge severity="caution" number={i + 1} />
            <span>{sentence}</span>
          </li>
        ))}
        {result.map(text => (
          <li key={text}>
            <FindingBadge severity="note" number={findings.length + 1 + result.indexOf(text)} />
            <span>{text}</span>
          </li>
        ))}
      </ul>
      {refused === null ? null : (
        <p className="wrong" role="alert">
          {refused}
        </p>
      )}
      <button type="submit" className="plain" disabled={!ready}>
        Make it a setup
      </button>
    </form>
  )
}
