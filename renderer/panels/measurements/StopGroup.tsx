import { Row } from '../../fields/Row.tsx'
import { Switch } from '../../fields/Switch.tsx'
import { TableField } from '../../fields/TableField.tsx'
import type { StopKind } from '../../state/kinds.ts'
import { putSpacer, putStop } from '../../state/parts.ts'
import { shownAxle } from '../../state/selectors.ts'
import { useSelect, useSelectGroup, useStore } from '../../window-context.ts'

const KINDS = [
  { value: 'hydraulic', label: 'Hydraulic' },
  { value: 'elastomer', label: 'Foam' },
  { value: 'none', label: 'None' },
] as const

const NO_BODY = { value: undefined, word: 'unknown', takes: 'corner.stop.body' } as const
const NO_RATING = { value: undefined, word: 'unknown' } as const

export function StopGroup() {
  const store = useStore()
  const kind = useSelect((state): StopKind => shownAxle(state).axle.corner.stop?.kind ?? 'none')
  return (
    <>
      <Switch label="Kind of stop" className="inner" options={KINDS} value={kind} onChange={k => putStop(store, k)} />
      {kind === 'hydraulic' ? <Hydraulic /> : null}
      {kind === 'elastomer' ? (
        <TableField
          field="corner.stop.curve"
          name="Stop curve"
          columns={['deflection', 'force']}
          fewest={2}
          first={[]}
        />
      ) : null}
    </>
  )
}

function Hydraulic() {
  const store = useStore()
  const { body, spacer } = useSelectGroup(state => {
    const { stop } = shownAxle(state).axle.corner
    if (stop?.kind !== 'hydraulic') return { body: false, spacer: false }
    return { body: stop.body !== undefined, spacer: stop.spacer !== undefined }
  })
  return (
    <>
      <Row field="corner.stop.stroke" />
      <Row field="corner.stop.shaftDiameter" />
      <Row field="corner.stop.charge" />
      <Row field="corner.stop.gasVolume" />
      <Row field="corner.stop.body.bore" empty={NO_BODY} />
      {body ? <Row field="corner.stop.body.ratedPressure" empty={NO_RATING} /> : null}
      {spacer ? (
        <>
          <Row field="corner.stop.spacer.length" />
          <Row field="corner.stop.spacer.outerDiameter" />
          <Row field="corner.stop.spacer.wall" />
        </>
      ) : null}
      <button type="button" className="step" onClick={() => putSpacer(store, !spacer)}>
        {spacer ? 'Take the spacer out' : 'Add a spacer inside'}
      </button>
    </>
  )
}
