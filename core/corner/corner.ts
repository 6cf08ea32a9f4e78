import { circleArea, type GasChamber, type GasLaw, gasEnergy, gasForce } from '../forces/gas.ts'
import { type SpringPack, springPack, springTravel } from '../forces/spring-pack.ts'
import { type StopModel, stopModel } from '../forces/stop.ts'
import { linkageModel } from '../linkage/linkage.ts'
import type { LinkageModel } from '../linkage/linkage-model.ts'
import { type Movement, movementOf, REACH } from '../linkage/movement.ts'
import { crossings, firstReaching } from '../numerics/looks.ts'
import type { Corner } from '../plan/schema.ts'
import type { CornerModel, PartPositions, WheelForces } from './corner-model.ts'
import { bumpLimits, droopLimits, nearest } from './limits.ts'

/** Where pad and stop meet, searched outward from ride height; a stop pushed in further than the search reaches is taken to touch at its end. */
function touch(corner: Corner, { stop, low, high }: Movement): number | null {
  if (corner.stop === null) return null
  const { gap } = corner.stop
  return gap >= 0 ? firstReaching(stop, gap, 0, high) : (firstReaching(stop, gap, 0, low, true) ?? low)
}

/** Wheel positions closer than this are one place, m: far above what a search is good to, far below any feature. */
const NEAR = 1e-9

class Assembled implements CornerModel {
  readonly linkage: LinkageModel
  readonly bump: CornerModel['bump']
  readonly bumpLimitedBy: CornerModel['bumpLimitedBy']
  readonly bumpLimits: CornerModel['bumpLimits']
  readonly droop: CornerModel['droop']
  readonly droopLimitedBy: CornerModel['droopLimitedBy']
  readonly droopLimits: CornerModel['droopLimits']
  readonly engagement: number | null
  readonly crossover: number | null
  readonly kinks: readonly number[]
  private readonly pack: SpringPack
  private readonly stop: StopModel | null
  private readonly gas: GasChamber | null
  /** Shaft in from full extension at ride height, m. */
  private readonly shaftIn: number

  constructor(readonly corner: Corner) {
    const { shock, springs, stop } = corner
    this.linkage = linkageModel(corner.linkage)
    this.pack = springPack(springs)
    this.stop = stop === null ? null : stopModel(stop)
    this.gas = shock.gas === null ? null : { area: circleArea(shock.shaftDiameter), ...shock.gas }
    this.shaftIn = shock.stroke - shock.showing
    const movement = movementOf(this.linkage)
    this.bumpLimits = bumpLimits(corner, movement, this.pack, this.stop)
    this.droopLimits = droopLimits(corner, movement)
    const up = nearest(this.bumpLimits) ?? { by: 'linkage end' as const, wheel: REACH }
    const down = nearest(this.droopLimits) ?? { by: 'linkage end' as const, wheel: -REACH }
    this.bump = up.wheel
    this.bumpLimitedBy = up.by
    this.droop = down.wheel === 0 ? 0 : down.wheel
    this.droopLimitedBy = down.by
    const meets = touch(corner, movement)
    this.engagement = meets === null || meets > this.bump ? null : meets
    this.crossover = this.findCrossover(movement)
    this.kinks = this.findKinks(movement)
  }

  private findCrossover(movement: Movement): number | null {
    const { crossover } = this.pack
    if (crossover === null) return null
    const shaft = crossover - this.corner.springs.preload - this.shaftIn
    const met = firstReaching(movement.shock, shaft, this.droop, this.bump)
    // The springs above the main may be the last to bind: then full bump is where they lock, whatever its last digit.
    return met === null && this.linkage.at(this.bump).shock > shaft - NEAR ? this.bump : met
  }

  private findKinks(movement: Movement): number[] {
    const { springs, stop } = this.corner
    const { droop, bump, engagement } = this
    const between = (part: 'shock' | 'stop', travel: number) => crossings(movement[part], travel, droop, bump)
    const all = [
      ...this.pack.corners.flatMap(compression => between('shock', compression - springs.preload - this.shaftIn)),
      ...(stop === null ? [] : [0, ...this.stop!.corners].flatMap(travel => between('stop', stop.gap + travel))),
      ...(engagement === null ? [] : [engagement]),
      ...this.linkage.knots,
    ]
    // One place found twice, once up and once down, is one place, not two a rounding apart; and none is the end of the travel itself.
    const settled = all.map(wheel => (engagement !== null && Math.abs(wheel - engagement) < NEAR ? engagement : wheel))
    const inside = settled.filter(wheel => wheel > droop + NEAR && wheel < bump - NEAR).sort((a, b) => a - b)
    return inside.filter((wheel, i) => i === 0 || wheel - inside[i - 1]! >= NEAR)
  }

  /** Shaft in from full extension, m, kept to the stroke against rounding at the ends. */
  private shaft(moved: number): number {
    return Math.min(this.corner.shock.stroke, Math.max(0, this.shaftIn + moved))
  }

  private pushedIn(moved: number, wheel: number, side: 'below' | 'above'): number | null {
    if (this.stop === null) return null
    const travel = moved - this.corner.stop!.gap
    const touching = wheel === this.engagement ? side === 'above' : travel > 0
    return touching ? Math.min(this.stop.stroke, Math.max(0, travel)) : null
  }

  forces(wheel: number, law: GasLaw, side: 'below' | 'above' = 'above'): WheelForces {
    const { shock, stop, shockRatio, stopRatio } = this.linkage.at(wheel)
    const shaft = this.shaft(shock)
    const springs = this.pack.force(this.corner.springs.preload + shaft) * shockRatio
    const gas = this.gas === null ? 0 : gasForce(this.gas, shaft, law).value * shockRatio
    const pushed = this.pushedIn(stop, wheel, side)
    const stopForce = pushed === null ? 0 : this.stop!.force(pushed, law).value * stopRatio
    return { springs, gas, stop: stopForce, total: springs + gas + stopForce }
  }

  stopForce(wheel: number, law: GasLaw): number {
    const pushed = this.pushedIn(this.linkage.at(wheel).stop, wheel, 'above')
    return pushed === null ? 0 : this.stop!.force(pushed, law).value
  }

  energy(wheel: number, law: GasLaw): number {
    const { shock, stop } = this.linkage.at(wheel)
    const shaft = this.shaft(shock)
    const springs = this.pack.energy(this.corner.springs.preload + shaft)
    const gas = this.gas === null ? 0 : gasEnergy(this.gas, shaft, law)
    const pushed = this.pushedIn(stop, wheel, 'above')
    return springs + gas + (pushed === null ? 0 : this.stop!.energy(pushed, law))
  }

  wheelRate(wheel: number, law: GasLaw, side?: 'below' | 'above'): number {
    if (side === undefined) {
      if (wheel <= this.droop) return this.wheelRate(wheel, law, 'above')
      if (wheel >= this.bump) return this.wheelRate(wheel, law, 'below')
      const place = this.kinks.find(each => Math.abs(each - wheel) < NEAR) ?? wheel
      return (this.wheelRate(place, law, 'below') + this.wheelRate(place, law, 'above')) / 2
    }
    const { shock, stop, shockRatio, stopRatio } = this.linkage.at(wheel)
    const slopes = this.linkage.ratioSlopes(wheel, side)
    const shaft = this.shaft(shock)
    const compression = this.corner.springs.preload + shaft
    // A place where a spring stops is known to a rounding only: its sides are read beside it.
    const [closing, beside] =
      (side === 'above') === shockRatio >= 0 ? (['above', NEAR] as const) : (['below', -NEAR] as const)
    const gas = this.gas === null ? { value: 0, slope: 0 } : gasForce(this.gas, shaft, law)
    const onShock = this.pack.force(compression) + gas.value
    const shockPart =
      (this.pack.rate(compression + beside, closing) + gas.slope) * shockRatio ** 2 + onShock * slopes.shock
    const pushed = this.pushedIn(stop, wheel, side)
    if (pushed === null) return shockPart
    const pad = this.stop!.force(pushed, law)
    return shockPart + pad.slope * stopRatio ** 2 + pad.value * slopes.stop
  }

  parts(wheel: number): PartPositions {
    const { shock, stop } = this.linkage.at(wheel)
    const shaft = this.shaft(shock)
    const compressions = this.pack.each(this.corner.springs.preload + shaft)
    const gap = this.corner.stop === null ? null : this.corner.stop.gap - stop
    const pushed = gap === null ? null : Math.min(this.stop!.stroke, Math.max(0, -gap))
    return {
      shockCompression: shaft,
      shockLeft: this.corner.shock.stroke - shaft,
      springs: compressions.map((compression, i) => ({
        compression,
        left: Math.max(0, springTravel(this.corner.springs.springs[i]!) - compression),
      })),
      stopCompression: pushed,
      stopLeft: pushed === null ? null : this.stop!.stroke - pushed,
      stopGap: gap,
    }
  }
}

/**
 * One corner put together from a plan's values: F(w) = (F_springs + F_gas)·MR_shock + F_stop·MR_stop, with its limits, the touch of the
 * stop and every kink between. The corner must be one that parsePlan accepts. Wheel positions in m from ride height, forces in N.
 */
export const cornerModel = (corner: Corner): CornerModel => new Assembled(corner)
