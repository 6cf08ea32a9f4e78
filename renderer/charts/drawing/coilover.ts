import type { CornerModel } from '../../../core/corner/corner-model.ts'
import { springPack } from '../../../core/forces/spring-pack.ts'
import type { Corner } from '../../../core/plan/schema.ts'
import { clamp } from './flat.ts'

/** From one place to another along an axis, m. */
export interface Stretch {
  readonly from: number
  readonly to: number
}

/**
 * Sizes of a coilover, m, halves across the axis. What a plan does not hold (eyes, seats, coil diameter) follows from the shaft's
 * diameter in the proportions of common parts, so that it is drawn alike at any size.
 */
export interface CoiloverBuild {
  readonly shaft: number
  readonly body: number
  /** Half the mean coil diameter. */
  readonly coil: number
  readonly seat: number
  readonly eye: number
  readonly divider: number
  readonly ring: number
  /** Upper face of the lower seat, from the lower eye: where the shaft ends when the shock is closed. */
  readonly lowerSeat: number
  /** Face of the upper seat from the lower eye at full extension. */
  readonly upperSeat: number
  /** Face of the stop ring below the upper seat; null without one that the springs can reach. */
  readonly ringBelowSeat: number | null
  /** Eye to eye at full extension that the parts ask for: what a corner without points is drawn with. */
  readonly freeLength: number
  /** Wire and turns of each spring: at its solid length they lie turn on turn. */
  readonly wires: readonly { readonly turns: number; readonly thickness: number }[]
}

/** Wire of a common coil for the shaft it goes round, in shaft diameters. */
const WIRE = 0.76

function wire(solidLength: number, unit: number): CoiloverBuild['wires'][number] {
  const turns = clamp(Math.round(solidLength / (WIRE * unit)), 5, 16)
  return { turns, thickness: solidLength / (turns + 0.5) }
}

export function coiloverBuild({ shock, springs: { springs, preload, crossover } }: Corner): CoiloverBuild {
  const unit = clamp(shock.shaftDiameter, shock.stroke / 40, shock.stroke / 6)
  const divider = 0.5 * unit
  const lowerSeat = 1.95 * unit
  const dividers = (springs.length - 1) * divider
  const free = springs.reduce((sum, spring) => sum + spring.freeLength, 0)
  const upperSeat = lowerSeat + dividers + free - preload
  const extended = springPack({ springs, preload, crossover }).each(Math.max(0, preload))
  const above = springs
    .slice(0, -1)
    .reduce((sum, spring, i) => sum + spring.freeLength - extended[i]!, Math.max(0, dividers - divider))
  const ring = crossover === null || springs.length === 1 || crossover.gap >= above ? null : above - crossover.gap
  return {
    shaft: unit / 2,
    body: 1.48 * unit,
    coil: 2.5 * unit,
    seat: 3.25 * unit,
    eye: 1.35 * unit,
    divider,
    ring: 1.9 * unit,
    lowerSeat,
    upperSeat,
    ringBelowSeat: ring,
    freeLength: Math.max(lowerSeat + 2 * shock.stroke + 4 * unit, upperSeat + 3.5 * unit),
    wires: springs.map(spring => wire(spring.solidLength, unit)),
  }
}

/** Where the parts of a coilover stand at one wheel position: m along its axis from the lower eye. */
export interface CoiloverStations {
  /** Eye to eye. */
  readonly length: number
  /** Shaft between the lower seat and the body: its length is the shock's travel left. */
  readonly shaft: Stretch
  readonly body: Stretch
  readonly lowerSeat: number
  readonly upperSeat: number
  /** Listed as in the plan, from the chassis end; each as long as its free length less its compression. */
  readonly springs: readonly Stretch[]
  /** Between neighbours, listed from the chassis end. */
  readonly dividers: readonly Stretch[]
  readonly ring: Stretch | null
}

/**
 * @param rideLength eye to eye at ride height, m
 */
export function coiloverStations(
  build: CoiloverBuild,
  model: CornerModel,
  rideLength: number,
  wheel: number,
): CoiloverStations {
  const { springs } = model.corner.springs
  const parts = model.parts(wheel)
  const length = rideLength - model.linkage.at(wheel).shock
  const closes = build.lowerSeat + parts.shockLeft
  const stretches: Stretch[] = []
  const dividers: Stretch[] = []
  let at = build.lowerSeat
  for (let i = springs.length - 1; i >= 0; i -= 1) {
    const to = at + springs[i]!.freeLength - parts.springs[i]!.compression
    stretches.unshift({ from: at, to })
    at = to
    if (i === 0) continue
    dividers.unshift({ from: at, to: at + build.divider })
    at += build.divider
  }
  const upperSeat = build.upperSeat - parts.shockCompression
  const ring = build.ringBelowSeat === null ? null : upperSeat - build.ringBelowSeat
  return {
    length,
    shaft: { from: build.lowerSeat, to: closes },
    body: { from: closes, to: Math.max(length - 0.85 * build.eye, closes + 2 * build.body) },
    lowerSeat: build.lowerSeat,
    upperSeat,
    springs: stretches,
    dividers,
    ring: ring === null ? null : { from: ring, to: ring + build.divider },
  }
}
