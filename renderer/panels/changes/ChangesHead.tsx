import type { ReactNode } from 'react'
import type { Setup } from '../../../core/plan/schema.ts'
import { Switch } from '../../fields/Switch.tsx'
import type { ChangesWay } from '../../state/state.ts'

interface Props {
  readonly setup: Setup
  readonly axle: string
  readonly setups: readonly Setup[]
  readonly way: ChangesWay
  readonly onWay: (way: ChangesWay) => void
  readonly children: ReactNode
}

/** What changes go from, what that was made from, and the ways to look at them. */
export function ChangesHead({ setup, axle, setups, way, onWay, children }: Props) {
  const { name, madeFrom } = setup
  return (
    <header>
      <h2>Changes</h2>
      <span className="made-at" title={`from ${name}, ${axle}`}>
        {axle}, from {name}
      </span>
      <Switch
        label="How"
        options={[
          { value: 'look', label: 'Look for what fits' },
          { value: 'hand', label: 'By hand' },
          { value: 'compare', label: 'Before and after' },
          { value: 'shelf', label: 'Shelf' },
        ]}
        value={way}
        onChange={onWay}
      />
      {children}
      {madeFrom === undefined ? null : (
        <span className="made-from">
          made from {setups.find(each => each.id === madeFrom.setup)?.name ?? 'a setup since removed'}:{' '}
          {madeFrom.changes.join(' + ')}
        </span>
      )}
    </header>
  )
}
