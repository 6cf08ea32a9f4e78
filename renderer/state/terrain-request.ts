import type { Axle, UnitSystem } from '../../core/plan/schema.ts'
import type { RideFinding } from '../../core/ride/findings/rule.ts'
import type { Course } from '../../core/ride/terrain.ts'
import type { Answer, Ask, Ridden } from '../workers/messages.ts'
import type { CallOff, Hearer } from '../workers/pool.ts'
import { terrainKey } from './terrain.ts'
import type { SweptPoint } from './terrain-cache.ts'
import { type DrivenCorner, sameDriven } from './terrain-driven.ts'
import type { Sweep } from './terrain-sweep.ts'

/** Works rides out, somewhere that is not the page. */
export interface Rider {
  warm(count: number): void
  run(ask: Ask, rank: number, hear: Hearer<Answer>): CallOff
}

export interface RideRequest {
  /** What it is about: the rides of another subject are not shown while these are worked out. */
  readonly subject: string
  readonly terrain: Course
  /** The axle shown: what is worth saying is said of it. */
  readonly axle: Axle
  readonly units: UnitSystem
  /** Its corner, and that of the setup it is compared with. */
  readonly corners: readonly DrivenCorner[]
  readonly sweep: Sweep | null
}

export interface RunsView {
  /** One for each corner asked for; null until there is one. */
  readonly rides: readonly (Ridden | null)[]
  /** The rides are those of what was asked last, and not of the moment before. */
  readonly settled: boolean
  /** One row for each corner, rising. */
  readonly swept: readonly (readonly SweptPoint[])[]
  /** What is worth saying of the axle shown, worst first; null until that is known. */
  readonly findings: readonly RideFinding[] | null
  /** Rides done and asked for, once it takes longer than people wait for; null when nothing is under way. */
  readonly work: { readonly done: number; readonly total: number } | null
  /** Stopped by hand, with rides left to do. */
  readonly stopped: boolean
  /** Why it cannot be worked out here at all. */
  readonly fault: string | null
}

/** Whether two questions are one. */
export const sameRequest = (a: RideRequest, b: RideRequest): boolean =>
  a.subject === b.subject &&
  a.axle === b.axle &&
  a.units === b.units &&
  a.terrain.name === b.terrain.name &&
  terrainKey(a.terrain) === terrainKey(b.terrain) &&
  a.corners.length === b.corners.length &&
  a.corners.every((corner, i) => sameDriven(corner, b.corners[i]!))
