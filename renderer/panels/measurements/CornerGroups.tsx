import { Row } from '../../fields/Row.tsx'
import { TableField } from '../../fields/TableField.tsx'
import { FIRST_CURVE } from '../../state/kinds.ts'
import { shownAxle } from '../../state/selectors.ts'
import { useSelect } from '../../window-context.ts'

const NOTHING = { value: null, word: 'none' } as const

export const WeightGroup = () => (
  <>
    <Row field="corner.cornerMass" />
    <Row field="corner.unsprungMass" />
  </>
)

export const TireGroup = () => (
  <>
    <Row field="corner.tire.rate" />
    <Row field="corner.tire.radius" />
    <Row field="corner.tire.damping" />
  </>
)

export const ClearanceGroup = () => (
  <>
    <Row field="corner.clearance.bump" empty={NOTHING} />
    <Row field="corner.clearance.droop" empty={NOTHING} />
  </>
)

const CURVES = [
  ['corner.shock.compression', 'Shock, going in'],
  ['corner.shock.rebound', 'Shock, coming out'],
] as const

const STOP_CURVES = [
  ['corner.stop.compression', 'Stop, going in'],
  ['corner.stop.rebound', 'Stop, coming out'],
] as const

export function DamperGroup() {
  const hydraulic = useSelect(state => shownAxle(state).axle.corner.stop?.kind === 'hydraulic')
  return (
    <>
      {[...CURVES, ...(hydraulic ? STOP_CURVES : [])].map(([field, name]) => (
        <div key={field} className="part">
          <h4>{name}</h4>
          <TableField field={field} name={name} columns={['velocity', 'force']} fewest={0} first={FIRST_CURVE} />
        </div>
      ))}
    </>
  )
}
