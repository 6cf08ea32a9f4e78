import { unitOf } from '../../core/units/quantity.ts'
import { isAssumed } from '../state/place.ts'
import { placeOf } from '../state/selectors.ts'
import { useSelectGroup } from '../window-context.ts'
import { FieldError } from './FieldError.tsx'
import type { FieldSpec } from './field-spec.ts'
import { fieldTable, generic } from './field-table.ts'
import { MeasureField } from './MeasureField.tsx'
import type { Empty } from './use-typing.ts'

interface Props {
  readonly field: string
  readonly empty?: Empty | null
}

const specFor = (field: string): FieldSpec => {
  const spec = fieldTable[generic(field)]
  if (spec === undefined) throw new Error(`There is no entry for “${field}” in the field table: add one.`)
  return spec
}

/** Letters of a name that stand in one line with the word “assumed”. */
const BESIDE_ASSUMED = 12

/** One measurement: its name, whether it is only assumed, its number and its unit. */
export function Row({ field, empty = null }: Props) {
  const spec = specFor(field)
  const id = `field-${field.replaceAll('.', '-')}`
  const { on, assumed, unit } = useSelectGroup(state => ({
    on: state.view.field === field,
    assumed: isAssumed(state.plan, placeOf(state, field)),
    unit: unitOf(spec.quantity, state.plan.units).label,
  }))
  return (
    <>
      <div className={on ? 'row on' : 'row'}>
        <label htmlFor={id} title={spec.label}>
          <Names spec={spec} brief={assumed && spec.label.length > BESIDE_ASSUMED} />
        </label>
        <span className="as">{assumed ? 'assumed' : ''}</span>
        <MeasureField key={field} field={field} spec={spec} id={id} empty={empty} />
        <span className="u">{unit}</span>
      </div>
      <FieldError field={field} spec={spec} id={id} />
    </>
  )
}

/** The name of a field, shorter where it shares the line or the window is narrow. */
const Names = ({ spec, brief }: { spec: FieldSpec; brief: boolean }) =>
  spec.short === undefined || brief ? (
    (spec.short ?? spec.label)
  ) : (
    <>
      <span className="wide-only">{spec.label}</span>
      <span className="narrow-only">{spec.short}</span>
    </>
  )
