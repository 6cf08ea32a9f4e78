import { addTerrain } from '../../state/demands.ts'
import { useStore } from '../../window-context.ts'
import { TERRAIN_KINDS } from './describe.ts'

/** A plan without terrain: what to add. */
export function NoTerrain() {
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
      </ul>
    </div>
  )
}
