import type { Linkage } from '../../../core/plan/schema.ts'
import { formatMeasure } from '../../../core/units/format.ts'
import { PointRow } from '../../fields/PointRow.tsx'
import { Row } from '../../fields/Row.tsx'
import { Switch } from '../../fields/Switch.tsx'
import { TableField } from '../../fields/TableField.tsx'
import { putLinkage } from '../../state/parts.ts'
import { isAssumed } from '../../state/place.ts'
import { placeOf, resultsShown, shownAxle } from '../../state/selectors.ts'
import { useSelect, useSelectGroup, useStore } from '../../window-context.ts'
import { linkageNames } from './key-values.ts'

const KINDS = (['ratio', 'table', 'arm', 'axle'] as const).map(value => ({ value, label: linkageNames[value] }))

const ARM = [
  ['pivot', 'Pivots'],
  ['wheel', 'Wheel'],
] as const

const MOUNTS = [
  ['shockLower', 'Shock, lower'],
  ['shockUpper', 'Shock, upper'],
  ['stopPad', 'Stop pad'],
  ['stopAxis', 'Stop axis'],
] as const

export function LinkageGroup() {
  const store = useStore()
  const kind = useSelect((state): Linkage['kind'] => shownAxle(state).axle.corner.linkage.kind)
  return (
    <>
      <Switch label="Linkage by" className="inner" options={KINDS} value={kind} onChange={k => putLinkage(store, k)} />
      {kind === 'ratio' ? (
        <>
          <Row field="corner.linkage.shock" />
          <Row field="corner.linkage.stop" />
        </>
      ) : (
        <>
          {kind === 'table' ? <Table /> : <Points arm={kind === 'arm'} />}
          <Ratios />
        </>
      )}
    </>
  )
}

const Table = () => (
  <TableField
    field="corner.linkage.rows"
    name="Linkage table"
    columns={['wheel', 'shock', 'stop']}
    fewest={3}
    first={[]}
  />
)

function Points({ arm }: { arm: boolean }) {
  return (
    <>
      <div className="row point heads" aria-hidden="true">
        <span />
        <span>x</span>
        <span>y</span>
        <span>z</span>
      </div>
      {arm ? (
        <>
          <PointRow field="corner.linkage.pivot.0" label="Pivot, one" />
          <PointRow field="corner.linkage.pivot.1" label="Pivot, other" />
          <PointRow field="corner.linkage.wheel" label="Wheel" />
        </>
      ) : null}
      {MOUNTS.map(([key, label]) => (
        <PointRow key={key} field={`corner.linkage.${key}`} label={label} />
      ))}
      <AssumedPoints arm={arm} />
    </>
  )
}

/** Which points are assumed, in words: their rows have no room for it. */
function AssumedPoints({ arm }: { arm: boolean }) {
  const points = [...(arm ? ARM : []), ...MOUNTS]
  const said = useSelect(state => {
    const assumed = points.filter(([key]) => isAssumed(state.plan, placeOf(state, `corner.linkage.${key}`)))
    return assumed.length === points.length ? 'all points' : assumed.map(([, label]) => label.toLowerCase()).join('; ')
  })
  return said === '' ? null : (
    <p className="aside">
      <i>assumed</i>: {said}
    </p>
  )
}

/** What the linkage makes of it at ride height. */
function Ratios() {
  const { shock, stop } = useSelectGroup(state => {
    const { shockRatio, stopRatio } = resultsShown(state).model.linkage.at(0)
    const say = (ratio: number) => formatMeasure(ratio, 'ratio', state.plan.units, { digits: 2 })
    return { shock: say(shockRatio), stop: say(stopRatio) }
  })
  return (
    <>
      <div className="row">
        <span className="label">
          <span className="wide-only">Motion ratio, shock</span>
          <span className="narrow-only">Ratio, shock</span>
        </span>
        <span />
        <output className="reading">{shock}</output>
      </div>
      <div className="row">
        <span className="label">
          <span className="wide-only">Motion ratio, stop</span>
          <span className="narrow-only">Ratio, stop</span>
        </span>
        <span />
        <output className="reading">{stop}</output>
      </div>
    </>
  )
}
