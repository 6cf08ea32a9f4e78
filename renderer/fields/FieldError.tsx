import { fieldText } from '../../core/units/format.ts'
import { unitOf } from '../../core/units/quantity.ts'
import { valueAt } from '../state/place.ts'
import { placeOf } from '../state/selectors.ts'
import { useSelectGroup } from '../window-context.ts'
import { ErrorMark } from './ErrorMark.tsx'
import type { FieldSpec } from './field-spec.ts'
import { errorId } from './MeasureField.tsx'

/** What is wrong with an entry, what would be right, and which value still counts. */
export function FieldError({ field, spec, id }: { field: string; spec: FieldSpec; id: string }) {
  const { refused, value, system } = useSelectGroup(state => {
    const place = placeOf(state, field)
    return { refused: state.view.refused[place], value: valueAt(state.plan, place), system: state.plan.units }
  })
  if (refused === undefined) return null
  const unit = unitOf(spec.quantity, system).label
  return (
    <div className="err" id={errorId(id)} role="alert">
      <ErrorMark />
      <span>
        <b>{refused.wrong}</b> {refused.right}{' '}
        {typeof value === 'number' ? (
          <>
            Still using{' '}
            <span className="whole">
              {fieldText(value, spec.quantity, system)} {unit}.
            </span>
          </>
        ) : null}
      </span>
    </div>
  )
}
