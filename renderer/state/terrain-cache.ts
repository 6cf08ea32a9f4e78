import type { UnitSystem } from '../../core/plan/schema.ts'
import type { RideFinding } from '../../core/ride/findings/rule.ts'
import type { Course } from '../../core/ride/terrain.ts'
import type { Ridden } from '../workers/messages.ts'
import { terrainKey } from './terrain.ts'
import type { DrivenCorner } from './terrain-driven.ts'

/** One point of a sweep: what the corner did there. */
export interface SweptPoint {
  /** Of what is swept, SI. */
  readonly value: number
  readonly onStop: number
  /** m from ride height. */
  readonly wheelMax: number
  readonly bottoms: number
}

/** Rides kept with every moment of them: each is some hundred thousand numbers. */
const KEPT = 16

/** Findings call the terrain by its name, in the units people read. */
const findingsKey = ({ as }: DrivenCorner, terrain: Course, units: UnitSystem): string =>
  `${as} ${units} ${terrain.id} ${terrain.name ?? ''} ${terrainKey(terrain)}`

const keyOf = ({ as }: DrivenCorner, terrain: Course): string => `${as} ${terrainKey(terrain)}`

/** What was ridden before. What is driven is never changed in place: the same object rides the same. */
export class RideCache {
  private readonly rides: { of: object; key: string; ridden: Ridden }[] = []
  private readonly said = new WeakMap<object, Map<string, readonly RideFinding[]>>()
  private readonly points = new WeakMap<object, Map<string, SweptPoint | null>>()

  ride(corner: DrivenCorner, terrain: Course): Ridden | null {
    const key = keyOf(corner, terrain)
    const at = this.rides.findIndex(each => each.of === corner.of && each.key === key)
    if (at < 0) return null
    const [found] = this.rides.splice(at, 1)
    this.rides.unshift(found!)
    return found!.ridden
  }

  keepRide(corner: DrivenCorner, terrain: Course, ridden: Ridden): void {
    this.rides.unshift({ of: corner.of, key: keyOf(corner, terrain), ridden })
    this.rides.length = Math.min(this.rides.length, KEPT)
  }

  /** undefined when it was never looked at, null when nothing comes of it there. */
  point(corner: DrivenCorner, terrain: Course): SweptPoint | null | undefined {
    return this.points.get(corner.of)?.get(keyOf(corner, terrain))
  }

  findings(corner: DrivenCorner, terrain: Course, units: UnitSystem): readonly RideFinding[] | null {
    return this.said.get(corner.of)?.get(findingsKey(corner, terrain, units)) ?? null
  }

  keepFindings(corner: DrivenCorner, terrain: Course, units: UnitSystem, findings: readonly RideFinding[]): void {
    const known = this.said.get(corner.of) ?? new Map<string, readonly RideFinding[]>()
    this.said.set(corner.of, known.set(findingsKey(corner, terrain, units), findings))
  }

  keepPoint(corner: DrivenCorner, terrain: Course, point: SweptPoint | null): void {
    const known = this.points.get(corner.of) ?? new Map<string, SweptPoint | null>()
    this.points.set(corner.of, known.set(keyOf(corner, terrain), point))
  }
}
