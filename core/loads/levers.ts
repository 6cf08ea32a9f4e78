import { cannotBe, preloaded } from '../changes/preload.ts'
import { cornerModel } from '../corner/corner.ts'
import { circleArea } from '../forces/gas.ts'
import { springTravel } from '../forces/spring-pack.ts'
import type { Corner } from '../plan/schema.ts'
import type { Quantity } from '../units/quantity.ts'

export type ChangeKind = 'gap' | 'preload' | 'rate' | 'charge' | 'stroke'

/** Values by their path inside the axle. */
export type Along = Readonly<Record<string, number>>

/** One value that could be changed, and how far. */
export interface Lever {
  readonly kind: ChangeKind
  readonly name: string
  /** Path inside the axle. */
  readonly field: string
  readonly quantity: Quantity
  readonly now: number
  readonly furthest: number
  /** The corner with it, and with all that moves along; null where it cannot be built so. */
  readonly set: (value: number) => Corner | null
  /** What moves along, by its path inside the axle. */
  readonly along: (corner: Corner) => Along
}

/** Largest charge taken as a remedy, Pa: about 400 psi, beyond which seals and bodies are in doubt; common practice. */
const MOST_CHARGE = 2.8e6

/** Most the main spring's rate is raised by: beyond that it is another car. */
const MOST_RATE = 4

/** Least of its stroke a stop keeps. */
const LEAST_STROKE = 0.02

const nothing = (): Along => ({})

/** Turned by its collar: the divider ring stays where it is, so the divider's gap to it grows. */
function ofPreload(corner: Corner): Lever {
  const { springs, shock } = corner
  const travel = springs.springs.reduce((sum, spring) => sum + springTravel(spring), 0)
  return {
    kind: 'preload',
    name: 'preload',
    field: 'corner.springs.preload',
    quantity: 'length',
    now: springs.preload,
    furthest: Math.max(springs.preload, Math.min(springs.preload + shock.stroke, travel)),
    set: preload => {
      const turned = preloaded(springs, preload)
      return cannotBe(turned, () => '') === null ? { ...corner, springs: turned } : null
    },
    along: ({ springs: { crossover } }): Along =>
      crossover === null ? {} : { 'corner.springs.crossover.gap': crossover.gap },
  }
}

function ofRate(corner: Corner): Lever {
  const { springs } = corner.springs
  const main = springs.at(-1)!
  return {
    kind: 'rate',
    name: 'main spring',
    field: `corner.springs.springs.${springs.length - 1}.rate`,
    quantity: 'rate',
    now: main.rate,
    furthest: MOST_RATE * main.rate,
    set: rate => ({
      ...corner,
      springs: { ...corner.springs, springs: [...springs.slice(0, -1), { ...main, rate }] },
    }),
    along: nothing,
  }
}

function ofCharge(corner: Corner): Lever[] {
  const { shock } = corner
  const { gas } = shock
  if (gas === null) return []
  return [
    {
      kind: 'charge',
      name: 'shock charge',
      field: 'corner.shock.gas.charge',
      quantity: 'pressure',
      now: gas.charge,
      furthest: Math.max(gas.charge, MOST_CHARGE),
      set: charge => ({ ...corner, shock: { ...shock, gas: { ...gas, charge } } }),
      along: nothing,
    },
  ]
}

function ofGap(corner: Corner): Lever[] {
  const { stop } = corner
  if (stop === null) return []
  const { linkage } = cornerModel(corner)
  return [
    {
      kind: 'gap',
      name: 'gap',
      field: 'corner.stop.gap',
      quantity: 'length',
      now: stop.gap,
      furthest: Math.max(stop.gap, linkage.at(Math.min(1, linkage.highest)).stop),
      set: gap => ({ ...corner, stop: { ...stop, gap } }),
      along: nothing,
    },
  ]
}

/** A shorter stop is one with a spacer inside, as much oil left out as its metal takes up: gap more by as much, closed at the same place. */
function ofStroke(corner: Corner): Lever[] {
  const { stop } = corner
  if (stop?.kind !== 'hydraulic') return []
  return [
    {
      kind: 'stroke',
      name: 'stop stroke',
      field: 'corner.stop.stroke',
      quantity: 'length',
      now: stop.stroke,
      furthest: stop.stroke * LEAST_STROKE,
      set: stroke => {
        const shorter = stop.stroke - stroke
        const gasVolume = stop.gasVolume - circleArea(stop.shaftDiameter) * shorter
        return { ...corner, stop: { ...stop, stroke, gap: stop.gap + shorter, gasVolume } }
      },
      along: (changed): Along =>
        changed.stop?.kind === 'hydraulic'
          ? { 'corner.stop.gap': changed.stop.gap, 'corner.stop.gasVolume': changed.stop.gasVolume }
          : {},
    },
  ]
}

/** What can be changed on a corner to put more of its travel on the coilover, each up to where it makes sense. */
export const leversOf = (corner: Corner): Lever[] => [
  ...ofGap(corner),
  ofPreload(corner),
  ofRate(corner),
  ...ofCharge(corner),
  ...ofStroke(corner),
]
