import { fieldText } from '../../core/units/format.ts'
import { unitOf } from '../../core/units/quantity.ts'
import { valueAt } from '../state/place.ts'
import { placeOf } from '../state/selectors.ts'
import { useSelectGroup } from '../window-context.ts'
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
      <svg width="16" height="16" viewBox="0 0 16 16" aria-hidden="true">
        <path d="M5 1h6l4 4v6l-4 4H5l-4-4V5z" fill="var(--alarm)" />
        <path d="M8 4v5M8 11v1.6" stroke="var(--sheet)" strokeWidth="1.8" />
      </svg>
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
