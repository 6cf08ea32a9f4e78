import type { Problem } from '../../../core/plan/problem.ts'
import type { Quantity, System } from '../../../core/units/quantity.ts'
import { NumberField } from '../../fields/NumberField.tsx'
import type { PartField } from './part-fields.ts'
import { problemWords } from './part-problem.ts'

interface Props<Part> {
  readonly fields: readonly PartField<Part>[]
  readonly part: Part
  readonly system: System
  /** What would be wrong with the part as it would be. */
  readonly wouldBe: (part: Part) => readonly Problem[]
  readonly onChange: (part: Part, what: string) => void
}

/** Values of a part, one under the other. */
export function Fields<Part>({ fields, part, system, wouldBe, onChange }: Props<Part>) {
  const words = (problems: readonly Problem[], quantity: Quantity, own: string) => {
    const others = Object.fromEntries(fields.filter(({ path }) => path !== own).map(field => [field.path, field]))
    return problemWords(problems, quantity, system, others)
  }
  return fields.map(({ label, quantity, of, set, clear, waits, path }) => (
    <NumberField
      key={path}
      label={label}
      value={of(part)}
      quantity={quantity}
      system={system}
      refuses={value => waits?.(part) ?? words(wouldBe(set(part, value)), quantity, path)}
      onChange={value => onChange(set(part, value), label.toLowerCase())}
      {...(clear && { onClear: () => onChange(clear(part), label.toLowerCase()) })}
    />
  ))
}
