import { type KeyboardEvent, useState } from 'react'
import type { Measured } from '../../../core/tolerance/measured.ts'
import { fieldText } from '../../../core/units/format.ts'
import { parseMeasure } from '../../../core/units/parse.ts'
import { type System, unitOf } from '../../../core/units/quantity.ts'
import { saidOf } from '../../fields/refusals.ts'
import { edit } from '../../state/edit.ts'
import { useStore } from '../../window-context.ts'

const SOURCES: Readonly<Record<Measured['source'], string>> = { plan: 'yours', usual: 'usual', assumed: 'assumed' }

interface Given {
  readonly name: string
  /** As the plan's tolerances have it. */
  readonly path: string
  readonly measured: Measured
  readonly system: System
}

/** How far off one measurement may be, to type over; empty goes back to what is usual. */
export function ToleranceField({ name, path, measured, system }: Given) {
  const store = useStore()
  const { quantity, halfWidth, source } = measured
  const [typed, setTyped] = useState<string | null>(null)
  const [wrong, setWrong] = useState<string | null>(null)
  const unit = unitOf(quantity, system).label
  const put = (value: number | null): void => {
    const problems = edit(store, `tolerance of ${name}`, plan => {
      const values = { ...plan.tolerances?.values }
      if (value === null) delete values[path]
      else values[path] = value
      if (Object.keys(values).length === 0) delete plan.tolerances
      else plan.tolerances = { version: 1, values }
    })
    const said = problems[0] === undefined ? null : saidOf(problems[0], quantity, system)
    setWrong(said === null ? null : `${said.wrong} ${said.right}`)
    if (problems.length === 0) setTyped(null)
  }
  const commit = (): void => {
    if (typed === null) return
    if (typed.trim() === '') {
      put(null)
      return
    }
    const read = parseMeasure(typed, quantity, system)
    if (!read.ok) setWrong(read.problem)
    else if (read.value < 0) setWrong('Less than nothing. Enter how far off it may be, 0 or more.')
    else put(read.value)
  }
  const onKeyDown = (event: KeyboardEvent): void => {
    if (event.key === 'Enter') commit()
    if (event.key === 'Escape') {
      setTyped(null)
      setWrong(null)
    }
  }
  const id = `tolerance-${path}`
  return (
    <>
      <div className="row">
        <label htmlFor={id}>{name}</label>
        <span className="as">{SOURCES[source]}</span>
        <input
          id={id}
          className={`f${source === 'assumed' ? ' assumed' : ''}${wrong === null ? '' : ' bad'}`}
          value={typed ?? fieldText(halfWidth, quantity, system)}
          aria-label={`${name}, how far off either way`}
          aria-invalid={wrong !== null}
          aria-describedby={wrong === null ? undefined : `${id}-wrong`}
          onChange={event => setTyped(event.currentTarget.value)}
          onBlur={commit}
          onKeyDown={onKeyDown}
        />
        <span className="u">{unit}</span>
      </div>
      {wrong === null ? null : (
        <p className="wrong" id={`${id}-wrong`}>
          {wrong} Still using {fieldText(halfWidth, quantity, system)} {unit}.
        </p>
      )}
    </>
  )
}
