import { addTerrain } from '../../state/demands.ts'
import { useStore } from '../../window-context.ts'
import { TERRAIN_KINDS } from './describe.ts'
import type { Bringing } from './own-road.ts'
import { RoadFile } from './RoadFile.tsx'

/** A plan without terrain: what to add. */
export function NoTerrain({ trouble, bring }: Pick<Bringing, 'trouble' | 'bring'>) {
  const store = useStore()
  return (
    <div className="no-terrain">
      <h2>No terrain yet</h2>
      <p>
        Add what the car is driven over, and this page shows how much of the time it is on its stop, how often it
        bottoms, and what a landing costs. It begins at usual values; change them under Terrains, on the left.
      </p>
      <ul>
        {TERRAIN_KINDS.map(({ kind, name, says }) => (
          <li key={kind}>
            <button type="button" className="plain" onClick={() => addTerrain(store, kind)}>
              Add {name.toLowerCase()}
            </button>
            <span>{says}</span>
          </li>
        ))}
        <li>
          <RoadFile name="Road from a file" className="plain" onFile={bring} />
          <span>a road somebody measured: distance and height in a CSV file, kept while this window is open</span>
        </li>
      </ul>
      {trouble === null ? null : (
        <p className="trouble" role="alert">
          {trouble}
        </p>
      )}
    </div>
  )
}
