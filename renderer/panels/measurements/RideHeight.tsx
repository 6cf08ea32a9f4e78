import { Row } from '../../fields/Row.tsx'
import { shownAxle } from '../../state/selectors.ts'
import { useSelect } from '../../window-context.ts'

export function RideHeight() {
  const stop = useSelect(state => shownAxle(state).axle.corner.stop !== null)
  return (
    <>
      {stop ? <Row field="corner.stop.gap" /> : null}
      <Row field="corner.shock.showing" />
    </>
  )
}
