import { sprungWeight } from '../budget/budget.ts'
import type { CornerModel } from '../corner/corner-model.ts'
import { cornerInMotion } from '../ride/ride.ts'
import { drive, type Listener } from '../ride/simulate.ts'
import { beginning } from '../ride/start.ts'
import { flat } from '../ride/terrain.ts'
import { STATE, Vehicle } from '../ride/vehicle.ts'

/** Highest drop a corner takes without coming to full bump, and how that is known. */
export interface LandingHeight {
  /** m, 0 or more; `HIGHEST` when it takes all that was looked at. */
  readonly drop: number
  /** Driven as a quarter car, or bounded by energy: what springs, gas and stop hold between full droop and full bump, dampers and tire left out. */
  readonly by: 'simulation' | 'energy'
}

/** Drops beyond this are not looked at, m. */
export const HIGHEST = 10

/** A landing height is known this well, m. */
export const FINE = 1e-3

/** A landing is driven in pieces of this, s, until the corner has turned or come to full bump. */
const PIECE = 0.12
/** Longest look at one landing, s: a corner that has not turned by then does not come to full bump. */
const LONGEST = 3

const LEVEL = flat(PIECE)

/** What the energy says, m: m·g·(h + travel) = ∫F dw from droop to bump with fast gas; a bound from below where dampers only help. */
export function energyHeight(model: CornerModel): number {
  const { droop, bump } = model
  const held = model.energy(bump, 'fast') - model.energy(droop, 'fast')
  return Math.min(HIGHEST, Math.max(0, held / sprungWeight(model) - (bump - droop)))
}

/**
 * Lands a corner from drops and says how much too much each is, J: at full bump what the sprung mass still brings, below 0 what springs, gas
 * and stop could have taken from where it turned. Null when the ride does not get to its end.
 */
function lander(model: CornerModel): (drop: number) => number | null {
  const corner = cornerInMotion(model)
  const vehicle = new Vehicle({ corners: [corner], roads: [LEVEL], answers: [1 / corner.sprung] })
  const atBump = model.energy(model.bump, 'fast')
  let highest = -Infinity
  let arrives: number | null = null
  const listener: Listener = {
    moment: () => {
      highest = Math.max(highest, corner.wheel)
    },
    worked: () => {},
    touch: () => {},
    part: () => {},
    bottom: () => {
      arrives ??= Math.max(0, corner.speed)
    },
  }
  return drop => {
    highest = -Infinity
    arrives = null
    let state = beginning(vehicle, drop)
    for (let time = 0; time < LONGEST; time += PIECE) {
      const outcome = drive(vehicle, state, listener, { sample: LONGEST })
      if (!outcome.ok) return null
      if (arrives !== null) return (corner.sprung * arrives ** 2) / 2
      state = outcome.end
      const up = state[STATE.chassisSpeed]!
      if (up > 0 && state[STATE.wheelSpeed]! <= up) break
    }
    return model.energy(Math.min(model.bump, highest), 'fast') - atBump
  }
}

/**
 * The highest drop a corner takes before its wheel comes to full bump, by the ride simulation: landings are driven until one comes to full bump
 * and one a little lower does not. Where a landing cannot be driven to its end, or when only that is asked for, the energy bound.
 */
export function landingHeight(model: CornerModel, by: LandingHeight['by'] = 'simulation'): LandingHeight {
  const bound = energyHeight(model)
  if (by === 'energy') return { drop: bound, by }
  const weight = sprungWeight(model)
  const tooMuch = lander(model)
  let [low, high] = [0, Infinity]
  let [below, above] = [0, 0]
  let drop = bound
  for (let round = 0; round < 60; round += 1) {
    const over = tooMuch(drop)
    if (over === null) return { drop: bound, by: 'energy' }
    if (over >= 0) [high, above] = [drop, over]
    else [low, below] = [drop, over]
    if (high <= FINE) return { drop: 0, by: 'simulation' }
    if (low >= HIGHEST) return { drop: HIGHEST, by: 'simulation' }
    if (high - low <= FINE) break
    if (!Number.isFinite(high)) drop = Math.min(HIGHEST, low - (1.5 * below) / weight + 2 * FINE)
    else if (below === 0) drop = high / 2
    else {
      // Nearly straight in the drop: a step past where the line says, alternating sides, closes in from both.
      const guess = low + ((high - low) * -below) / (above - below)
      const side = above > -below ? -0.4 : 0.4
      drop = Math.min(high - FINE / 2, Math.max(low + FINE / 2, guess + side * FINE))
    }
  }
  return { drop: low, by: 'simulation' }
}
