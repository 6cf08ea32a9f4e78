import { unitOf } from '../../../core/units/quantity.ts'
import { FieldError } from '../../fields/FieldError.tsx'
import { fieldTable } from '../../fields/field-table.ts'
import { MeasureField } from '../../fields/MeasureField.tsx'
import { Row } from '../../fields/Row.tsx'
import { TextField } from '../../fields/TextField.tsx'
import { putSprings } from '../../state/parts.ts'
import { isAssumed } from '../../state/place.ts'
import { placeOf, shownAxle } from '../../state/selectors.ts'
import { useSelect, useStore } from '../../window-context.ts'
import { focusField } from './focus-field.ts'

const COLUMNS = ['rate', 'freeLength', 'solidLength'] as const
const NO_RING = { value: null, word: 'no ring', takes: 'corner.springs.crossover' } as const

const specs = COLUMNS.map(column => fieldTable[`corner.springs.springs.*.${column}`]!)

export function SpringGroup() {
  const store = useStore()
  const count = useSelect(state => shownAxle(state).axle.corner.springs.springs.length)
  const system = useSelect(state => state.plan.units)
  // The keyboard goes to the topmost spring, the new one: its button may be gone.
  const put = (next: number) => {
    putSprings(store, next)
    focusField('corner.springs.springs.0.rate')
  }
  const places = Array.from({ length: count }, (_, i) => i)
  return (
    <>
      <table className="steel springs" aria-label="Springs, from the chassis end">
        <thead>
          <tr>
            <th>
              <span className="spoken">name</span>
            </th>
            {specs.map(spec => (
              <th key={spec.label} scope="col">
                {spec.label}, {unitOf(spec.quantity, system).label}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {places.map(i => (
            <tr key={i}>
              <td>
                <TextField
                  field={`corner.springs.springs.${i}.name`}
                  id={`spring-${i}-name`}
                  name={`Name of spring ${i + 1}`}
                  called="spring name"
                  longest={200}
                />
              </td>
              {COLUMNS.map((column, j) => (
                <td key={column}>
                  <MeasureField
                    field={`corner.springs.springs.${i}.${column}`}
                    spec={specs[j]!}
                    id={`spring-${i}-${column}`}
                    name={`Spring ${i + 1}, ${specs[j]!.label}`}
                  />
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
      {places.map(i =>
        COLUMNS.map((column, j) => (
          <FieldError
            key={`${i}-${column}`}
            field={`corner.springs.springs.${i}.${column}`}
            spec={specs[j]!}
            id={`spring-${i}-${column}`}
          />
        )),
      )}
      <AssumedSprings count={count} />
      <Row field="corner.springs.preload" />
      {count > 1 ? <Row field="corner.springs.crossover.gap" empty={NO_RING} /> : null}
      <p className="steps">
        {count < 3 ? (
          <button type="button" className="step" onClick={() => put(count + 1)}>
            Add a spring
          </button>
        ) : null}
        {count > 1 ? (
          <button type="button" className="step" onClick={() => put(count - 1)}>
            Remove a spring
          </button>
        ) : null}
      </p>
    </>
  )
}

/** Which columns of which springs are assumed, in words: the table has no room for a word in each cell. */
function AssumedSprings({ count }: { count: number }) {
  const assumed = useSelect(state => {
    const { springs } = shownAxle(state).axle.corner.springs
    return springs
      .slice(0, count)
      .flatMap((spring, i) =>
        COLUMNS.filter(column => isAssumed(state.plan, placeOf(state, `corner.springs.springs.${i}.${column}`))).map(
          column => `${spring.name} ${fieldTable[`corner.springs.springs.*.${column}`]!.label}`,
        ),
      )
      .join(', ')
  })
  return assumed === '' ? null : (
    <p className="aside">
      <i>assumed</i>: {assumed}
    </p>
  )
}
