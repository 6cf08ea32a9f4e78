import type { Corner, Terrain } from '../../core/plan/schema.ts'
import type { Ridden } from '../workers/messages.ts'
import { terrainKey } from './terrain.ts'

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

/** What was ridden before. Corners are never changed in place, so one that is the same object rides the same. */
export class RideCache {
  private readonly rides: { corner: Corner; key: string; ridden: Ridden }[] = []
  private readonly points = new WeakMap<Corner, Map<string, SweptPoint | null>>()

  ride(corner: Corner, terrain: Terrain): Ridden | null {
    const key = terrainKey(terrain)
    const at = this.rides.findIndex(each => each.corner === corner && each.key === key)
    if (at < 0) return null
    const [found] = this.rides.splice(at, 1)
    this.rides.unshift(found!)
    return found!.ridden
  }

  keepRide(corner: Corner, terrain: Terrain, ridden: Ridden): void {
    this.rides.unshift({ corner, key: terrainKey(terrain), ridden })
    this.rides.length = Math.min(this.rides.length, KEPT)
  }

  /** undefined when it was never looked at, null when nothing comes of it there. */
  point(corner: Corner, terrain: Terrain): SweptPoint | null | undefined {
    return this.points.get(corner)?.get(terrainKey(terrain))
  }

  keepPoint(corner: Corner, terrain: Terrain, point: SweptPoint | null): void {
    const known = this.points.get(corner) ?? new Map<string, SweptPoint | null>()
    this.points.set(corner, known.set(terrainKey(terrain), point))
  }
}
