import { useSelect } from '../window-context.ts'
import { FieldError } from './FieldError.tsx'
import { fieldTable, generic } from './field-table.ts'
import { MeasureField } from './MeasureField.tsx'

const AXES = ['x', 'y', 'z'] as const

/** A point by its three coordinates. */
export function PointRow({ field, label }: { field: string; label: string }) {
  const on = useSelect(state => state.view.field?.startsWith(`${field}.`) ?? false)
  const spec = fieldTable[generic(`${field}.0`)]!
  const id = (i: number) => `point-${field.replaceAll('.', '-')}-${i}`
  return (
    <>
      <fieldset className={on ? 'row point on' : 'row point'}>
        <legend className="spoken">{label}</legend>
        <span className="label" title={label} aria-hidden="true">
          {label}
        </span>
        {AXES.map((axis, i) => (
          <MeasureField key={axis} field={`${field}.${i}`} spec={spec} id={id(i)} name={`${label}, ${axis}`} />
        ))}
      </fieldset>
      {AXES.map((axis, i) => (
        <FieldError key={axis} field={`${field}.${i}`} spec={spec} id={id(i)} />
      ))}
    </>
  )
}
