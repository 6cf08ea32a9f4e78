import type { AxleBudget } from '../budget/results.ts'
import type { Quantity } from '../units/quantity.ts'

/** One number of an axle's budget whose sureness is asked for. */
export interface Figure {
  /** As in the JSON of the budget, by its path there; `beforeStop` is engagement less static position. */
  readonly id: string
  /** As people name it. */
  readonly name: string
  readonly quantity: Quantity
}

const figure = (id: string, name: string, quantity: Quantity): Figure => ({ id, name, quantity })

/** In the order `readFigures` reads them. */
export const FIGURES: readonly Figure[] = [
  figure('travel.bump', 'bump travel', 'length'),
  figure('travel.droop', 'droop travel', 'length'),
  figure('travel.total', 'whole travel', 'length'),
  figure('engagement.wheel', 'engagement', 'length'),
  figure('engagement.shock', 'shaft in at engagement', 'length'),
  figure('engagement.share', 'share on the coilover', 'share'),
  figure('engagement.force', 'force before engagement', 'force'),
  figure('zones.coilover.length', 'coilover zone', 'length'),
  figure('zones.engagement.length', 'engagement zone', 'length'),
  figure('zones.droop.energy', 'energy of the droop zone', 'energy'),
  figure('zones.coilover.energy', 'energy of the coilover zone', 'energy'),
  figure('zones.engagement.energy', 'energy of the engagement zone', 'energy'),
  figure('crossover', 'crossover', 'length'),
  figure('beforeStop', 'left before the stop at rest', 'length'),
  figure('static.position', 'static position', 'length'),
  figure('static.springForce', 'springs at rest', 'force'),
  figure('static.sprungWeight', 'sprung weight', 'force'),
  figure('static.stopForce', 'stop at rest', 'force'),
  figure('static.rideForce', 'held at ride height', 'force'),
  figure('mainSpring.leftAtRide', 'main spring left at ride height', 'length'),
  figure('mainSpring.leftAtBump', 'main spring left at full bump', 'length'),
  figure('mainSpring.leftAtEngagement', 'main spring left at engagement', 'length'),
  figure('shockLeftAtBump', 'shock left at full bump', 'length'),
  figure('ride.motionRatio', 'motion ratio', 'ratio'),
  figure('ride.wheelRate', 'wheel rate', 'rate'),
  figure('ride.frequency', 'ride frequency', 'frequency'),
  figure('ride.frequencyOnTire', 'ride frequency with the tire', 'frequency'),
  figure('ride.frequencyPastEngagement', 'ride frequency past engagement', 'frequency'),
  figure('limits.stop closed', 'stop closed at', 'length'),
  figure('limits.shock closed', 'shock closed at', 'length'),
  figure('limits.coil bind', 'coil bind at', 'length'),
  figure('limits.chassis contact', 'chassis contact at', 'length'),
  figure('limits.linkage end', 'linkage end at', 'length'),
  figure('bump.forceSlow', 'force at full bump, slow gas', 'force'),
  figure('bump.forceFast', 'force at full bump, fast gas', 'force'),
  figure('bump.stopForceFast', 'stop at full bump, fast gas', 'force'),
]

/** Where an axle has no such number, such as an engagement without a stop. */
const NONE = Number.NaN

/**
 * Reads FIGURES off a budget, one after the other: trials do so ten thousand times, so it is written out.
 * @param into gets them from place `at` on, each `step` places after the one before; NaN where the axle has none
 */
export function readFigures(axle: AxleBudget, into: Float64Array, at = 0, step = 1): void {
  const { travel, engagement, static: rest, mainSpring, ride, limits, bump } = axle
  // From full droop up.
  const droop = axle.zones[0]
  const coilover = axle.zones[1]
  const past = axle.zones[2]
  into[at] = travel.bump
  into[at + step] = travel.droop
  into[at + 2 * step] = travel.total
  into[at + 3 * step] = engagement === null ? NONE : engagement.wheel
  into[at + 4 * step] = engagement === null ? NONE : engagement.shock
  into[at + 5 * step] = engagement === null ? NONE : engagement.share
  into[at + 6 * step] = engagement === null ? NONE : engagement.force
  into[at + 7 * step] = coilover!.length
  into[at + 8 * step] = past!.length
  into[at + 9 * step] = droop!.energy
  into[at + 10 * step] = coilover!.energy
  into[at + 11 * step] = past!.energy
  into[at + 12 * step] = axle.crossover ?? NONE
  into[at + 13 * step] = engagement === null ? NONE : engagement.wheel - rest.position
  into[at + 14 * step] = rest.position
  into[at + 15 * step] = rest.springForce
  into[at + 16 * step] = rest.sprungWeight
  into[at + 17 * step] = rest.stopForce
  into[at + 18 * step] = rest.rideForce
  into[at + 19 * step] = mainSpring.leftAtRide
  into[at + 20 * step] = mainSpring.leftAtBump
  into[at + 21 * step] = mainSpring.leftAtEngagement ?? NONE
  into[at + 22 * step] = axle.shockLeftAtBump
  into[at + 23 * step] = ride.motionRatio
  into[at + 24 * step] = ride.wheelRate
  into[at + 25 * step] = ride.frequency
  into[at + 26 * step] = ride.frequencyOnTire
  into[at + 27 * step] = ride.frequencyPastEngagement ?? NONE
  into[at + 28 * step] = limits['stop closed'] ?? NONE
  into[at + 29 * step] = limits['shock closed'] ?? NONE
  into[at + 30 * step] = limits['coil bind'] ?? NONE
  into[at + 31 * step] = limits['chassis contact'] ?? NONE
  into[at + 32 * step] = limits['linkage end'] ?? NONE
  into[at + 33 * step] = bump.forceSlow
  into[at + 34 * step] = bump.forceFast
  into[at + 35 * step] = bump.stopForceFast
}

/** The same as a list. */
export function figuresOf(axle: AxleBudget): Float64Array {
  const figures = new Float64Array(FIGURES.length)
  readFigures(axle, figures)
  return figures
}

/** The figures the ranking of measurements goes by when none is named. */
export const HEADLINES: readonly string[] = ['zones.coilover.length', 'static.position', 'bump.forceFast']
