import type { MeasuredCourse, RoadProfile } from '../../core/ride/measured-road.ts'
import type { Course } from '../../core/ride/terrain.ts'
import { onceFor } from './once-for.ts'
import type { State } from './state.ts'

/** What is ridden, and its number in the plan: null for a road from a file, which no plan holds. */
export interface ShownTerrain {
  readonly terrain: Course
  readonly index: number | null
}

/**
 * The terrain ridden; null when there is none.
 * @param own a road somebody brought from a file
 */
export function shownTerrain(
  { plan, view }: Pick<State, 'plan' | 'view'>,
  own: MeasuredCourse | null,
): ShownTerrain | null {
  const index = plan.terrains.findIndex(({ id }) => id === view.terrain)
  if (own !== null && (view.terrain === own.id || plan.terrains.length === 0)) return { terrain: own, index: null }
  const terrain = plan.terrains[Math.max(0, index)]
  return terrain === undefined ? null : { terrain, index: Math.max(0, index) }
}

let profiles = 0

/** A profile is never changed in place: its number stands for its many thousand heights. */
const numberOf = onceFor((_: RoadProfile): number => ++profiles)

/** What a ride hangs on: everything of a terrain but what it is called. */
export function terrainKey(course: Course): string {
  if (course.kind === 'measured') return `measured ${numberOf(course.profile)} ${course.speed}`
  const { id: _, name: __, ...rest } = course
  return JSON.stringify(rest)
}
