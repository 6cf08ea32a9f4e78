import type { CornerModel } from '../corner/corner-model.ts'
import type { Axle } from '../plan/schema.ts'

/** Forces on one side of an axle at one place, N, as at the wheel, positive pushing the wheel down. */
export interface Carried {
  readonly springs: number
  readonly gas: number
  readonly stop: number
}

/** Where something of an axle stands across the car: what it carries, how far out, and what ends its movement. */
export interface Station {
  /** From the middle of the car, m. In roll it moves by roll angle × arm, up on one side and down on the other. */
  readonly arm: number
  /** Ends of its movement, as wheel travel from ride height, m; infinite where nothing here ends it. */
  readonly low: number
  readonly high: number
  /** @param wheel movement here, m, as wheel travel from ride height, within low..high */
  carried(wheel: number): Carried
}

const NOTHING: Carried = { springs: 0, gas: 0, stop: 0 }

/** On independent suspension all of a corner moves with its wheel. */
const independent = ({ track }: Axle, model: CornerModel): Station[] => [
  {
    arm: track / 2,
    low: model.droop,
    high: model.bump,
    carried: wheel => model.forces(wheel, 'slow'),
  },
]

/**
 * On a solid axle the chassis rolls over the axle as over a plank: shocks, stops and what ends the travel at the wheels each move by the
 * roll angle times their own arm.
 */
function solid({ track, shockSpacing, stopSpacing }: Axle, model: CornerModel): Station[] {
  const { bumpLimits: up, droopLimits: down } = model
  const lower = (...limits: (number | undefined)[]): number => Math.min(...limits.map(limit => limit ?? Infinity))
  const upper = (...limits: (number | undefined)[]): number => Math.max(...limits.map(limit => limit ?? -Infinity))
  return [
    {
      arm: (shockSpacing ?? track) / 2,
      low: upper(down['shock extended'], down['linkage end']),
      high: lower(up['shock closed'], up['coil bind'], up['linkage end']),
      carried: wheel => ({ ...model.forces(wheel, 'slow'), stop: 0 }),
    },
    {
      arm: (stopSpacing ?? track) / 2,
      low: -Infinity,
      high: lower(up['stop closed']),
      carried: wheel => ({ springs: 0, gas: 0, stop: model.forces(wheel, 'slow').stop }),
    },
    {
      arm: track / 2,
      low: upper(down['limit strap']),
      high: lower(up['chassis contact']),
      carried: () => NOTHING,
    },
  ]
}

/** The stations of an axle, from its corner. How far out shock and stop are: `armOf`. */
export const stationsOf = (axle: Axle, model: CornerModel): Station[] =>
  axle.suspension === 'solid' ? solid(axle, model) : independent(axle, model)

/** From the middle of the car to shock or stop as roll moves them, m. */
export const armOf = (axle: Axle, part: 'shock' | 'stop'): number =>
  (axle.suspension === 'solid'
    ? ((part === 'shock' ? axle.shockSpacing : axle.stopSpacing) ?? axle.track)
    : axle.track) / 2
