import { Row } from '../../fields/Row.tsx'
import { putShockGas } from '../../state/parts.ts'
import { shownAxle } from '../../state/selectors.ts'
import { useSelect, useStore } from '../../window-context.ts'

export function ShockGroup() {
  const store = useStore()
  const gas = useSelect(state => shownAxle(state).axle.corner.shock.gas !== null)
  return (
    <>
      <Row field="corner.shock.stroke" />
      <Row field="corner.shock.shaftDiameter" />
      {gas ? (
        <>
          <Row field="corner.shock.gas.charge" />
          <Row field="corner.shock.gas.volume" />
        </>
      ) : null}
      <button type="button" className="step" onClick={() => putShockGas(store, !gas)}>
        {gas ? 'Take the gas charge out' : 'Put a gas charge in'}
      </button>
    </>
  )
}
