import { circleArea } from '../forces/gas.ts'
import type { Corner, HydraulicStop } from '../plan/schema.ts'
import { fits, usable } from '../spacer/fit.ts'
import type { TubeSize } from '../spacer/tube.ts'
import { INCH, POUND_FORCE, PSI } from '../units/constants.ts'
import type { Spring } from './change.ts'
import { isHydraulic } from './stop-in-corner.ts'
import type { LooseStop } from './stop-rules.ts'

/** Something kept on the shelf. `generic`: a size as the trade has it, not a part anybody bought; measure what is bought. */
export interface Kept<Part> {
  readonly id: string
  readonly name: string
  readonly generic: boolean
  readonly part: Part
}

/** What a shop has to hand, across plans. */
export interface Shelf {
  readonly stops: readonly Kept<LooseStop>[]
  readonly springs: readonly Kept<Spring>[]
  readonly tubes: readonly Kept<TubeSize>[]
}

const inches = (value: number): string => `${value} in`

/** Gas at full length over what the shaft pushes aside: with oil at the usual level; measure it. Common practice. */
const GAS = 1.5

/** Hydraulic stops: stroke and shaft in inches. */
const STOPS = [
  [2, 1.25],
  [2.5, 1.25],
  [3, 1.25],
  [3.5, 1.25],
  [4, 1.25],
  [2, 1.5],
  [2.5, 1.5],
  [3, 1.5],
  [4, 1.5],
] as const

/** Main springs: free length in inches, rates in lb/in; solid at a little over a third of their length. Common practice. */
const SPRINGS = { lengths: [12, 14, 16], rates: [200, 250, 300, 350, 400, 450, 500], solid: 0.36 } as const

/** Drawn-over-mandrel tube, outer diameter and wall in inches: common sizes, from memory. */
const TUBES = {
  diameters: [1.25, 1.375, 1.5, 1.625, 1.75, 1.875, 2, 2.25, 2.5],
  walls: [0.083, 0.095, 0.12, 0.134, 0.188, 0.25],
} as const

const stop = ([stroke, shaft]: (typeof STOPS)[number]): Kept<LooseStop> => ({
  id: `stop-${stroke}-${shaft}`.replaceAll('.', '_'),
  name: `${inches(stroke)} hydraulic stop, ${inches(shaft)} shaft`,
  generic: true,
  part: {
    kind: 'hydraulic',
    stroke: stroke * INCH,
    shaftDiameter: shaft * INCH,
    charge: 200 * PSI,
    gasVolume: GAS * circleArea(shaft * INCH) * stroke * INCH,
  },
})

const spring = (length: number, rate: number): Kept<Spring> => ({
  id: `spring-${length}-${rate}`,
  name: `${inches(length)} spring, ${rate} lb/in`,
  generic: true,
  part: {
    name: 'main',
    rate: (rate * POUND_FORCE) / INCH,
    freeLength: length * INCH,
    solidLength: length * INCH * SPRINGS.solid,
  },
})

const tube = (diameter: number, wall: number): Kept<TubeSize> => ({
  id: `tube-${diameter}-${wall}`.replaceAll('.', '_'),
  name: `${inches(diameter)} by ${wall} wall`,
  generic: true,
  part: { outerDiameter: diameter * INCH, wall: wall * INCH },
})

/** What every shelf starts with: generic sizes, no maker’s parts. */
export const GENERIC_SHELF: Shelf = {
  stops: STOPS.map(stop),
  springs: SPRINGS.lengths.flatMap(length => SPRINGS.rates.map(rate => spring(length, rate))),
  tubes: TUBES.diameters.flatMap(diameter => TUBES.walls.map(wall => tube(diameter, wall))),
}

/** The sizes of tube on a shelf. */
const tubesOf = ({ tubes }: Shelf): TubeSize[] => tubes.map(({ part }) => part)

/** Of one kind, what somebody put there themselves; the generic ones only while there is nothing else. */
const ownFirst = <Part>(kept: readonly Kept<Part>[]): readonly Kept<Part>[] => {
  const own = kept.filter(({ generic }) => !generic)
  return own.length === 0 ? kept : own
}

/** What changes are taken from: the user’s own stops, springs and tubes, the generic ones in place of a kind there are none of. */
export const toHand = ({ stops, springs, tubes }: Shelf): Shelf => ({
  stops: ownFirst(stops),
  springs: ownFirst(springs),
  tubes: ownFirst(tubes),
})

/** Sizes a spacer of this stop is cut from: the user’s own where one of them can be used, every size on the shelf where none can. */
export function tubesFor({ shaftDiameter, body }: HydraulicStop, shelf: Shelf): TubeSize[] {
  const own = tubesOf(toHand(shelf))
  return fits(own, shaftDiameter, body?.bore ?? null).some(usable) ? own : tubesOf(shelf)
}

/** The finished tube a spacer of this corner is cut from: the one inside already, else the best that fits; null where there is none. */
export function tubeOf(corner: Corner, shelf: Shelf): TubeSize | null {
  if (!isHydraulic(corner)) return null
  const { shaftDiameter, body, spacer } = corner.stop
  if (spacer !== undefined) return { outerDiameter: spacer.outerDiameter, wall: spacer.wall }
  return fits(tubesFor(corner.stop, shelf), shaftDiameter, body?.bore ?? null).find(usable)?.finished ?? null
}
