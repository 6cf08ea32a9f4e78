import type { Terrain } from '../../core/plan/schema.ts'
import type { State } from './state.ts'

/** The terrain ridden, and its number in the plan; null when the plan has none. */
export function shownTerrain({ plan, view }: Pick<State, 'plan' | 'view'>): { terrain: Terrain; index: number } | null {
  const index = Math.max(
    0,
    plan.terrains.findIndex(({ id }) => id === view.terrain),
  )
  const terrain = plan.terrains[index]
  return terrain === undefined ? null : { terrain, index }
}

/** What a ride hangs on: everything of a terrain but what it is called. */
export const terrainKey = ({ id: _, name: __, ...rest }: Terrain): string => JSON.stringify(rest)
