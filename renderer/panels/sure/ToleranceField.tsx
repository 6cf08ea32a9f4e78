import type { Measured } from '../../../core/tolerance/measured.ts'
import type { System } from '../../../core/units/quantity.ts'
import { NumberField } from '../../fields/NumberField.tsx'
import { saidOf } from '../../fields/refusals.ts'
import { putTolerance, toleranceProblems } from '../../state/tolerances.ts'
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
  const refuses = (value: number): string | null => {
    const [problem] = toleranceProblems(store.read().plan, path, value)
    if (problem === undefined) return null
    const { wrong, right } = saidOf(problem, quantity, system)
    return `${wrong} ${right}`
  }
  return (
    <NumberField
      label={name}
      name={`${name}, how far off either way`}
      source={SOURCES[source]}
      assumed={source === 'assumed'}
      value={halfWidth}
      quantity={quantity}
      system={system}
      refuses={refuses}
      onChange={value => putTolerance(store, name, path, value)}
      onClear={() => putTolerance(store, name, path, null)}
    />
  )
}
