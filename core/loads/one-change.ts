import { sprungWeight } from '../budget/budget.ts'
import { cornerModel } from '../corner/corner.ts'
import { restingPosition } from '../corner/static-position.ts'
import { circleArea } from '../forces/gas.ts'
import { springTravel } from '../forces/spring-pack.ts'
import { findRoot } from '../numerics/roots.ts'
import type { Corner } from '../plan/schema.ts'
import type { Quantity } from '../units/quantity.ts'

/** How a corner stands with one value changed: m of wheel travel. */
export interface Standing {
  /** Where it rests. */
  readonly rest: number
  readonly engagement: number | null
  readonly bump: number
  /** Of the bump travel left from where it rests, the part on the coilover alone; negative while it rests on the stop. */
  readonly share: number
}

/**
 * From where the car really rests, so that a change that lifts it counts as well as one that moves the stop.
 * @param travel bump travel there was, m: what a change takes off it is lost to the coilover, not won
 */
export function standing(corner: Corner, travel = 0): Standing {
  const model = cornerModel(corner)
  const rest = restingPosition(model, sprungWeight(model))
  const { engagement, bump } = model
  const room = Math.max(bump, travel) - rest
  const share = room <= 0 ? 0 : ((engagement ?? bump) - rest) / room
  return { rest, engagement, bump, share }
}

export type ChangeKind = 'gap' | 'preload' | 'rate' | 'charge' | 'stroke'

/** One value that could be changed, and how far. */
interface Lever {
  readonly kind: ChangeKind
  readonly name: string
  /** Path inside the axle. */
  readonly field: string
  readonly quantity: Quantity
  readonly now: number
  readonly furthest: number
  readonly set: (value: number) => Corner
}

/** Largest charge taken as a remedy, Pa: about 400 psi, beyond which seals and bodies are in doubt; common practice. */
const MOST_CHARGE = 2.8e6

/** Most the main spring's rate is raised by: beyond that it is another car. */
const MOST_RATE = 4

/** What can be changed on this corner to put more of its travel on the coilover, each up to where it makes sense. */
function levers(corner: Corner): Lever[] {
  const { stop, springs, shock } = corner
  const main = springs.springs.at(-1)!
  const pack = (changed: Partial<Corner['springs']>): Corner => ({ ...corner, springs: { ...springs, ...changed } })
  const found: Lever[] = [
    {
      kind: 'preload',
      name: 'preload',
      field: 'corner.springs.preload',
      quantity: 'length',
      now: springs.preload,
      furthest: Math.max(
        springs.preload,
        Math.min(
          springs.preload + shock.stroke,
          springs.springs.reduce((sum, spring) => sum + springTravel(spring), 0),
        ),
      ),
      set: preload => pack({ preload }),
    },
    {
      kind: 'rate',
      name: 'main spring',
      field: `corner.springs.springs.${springs.springs.length - 1}.rate`,
      quantity: 'rate',
      now: main.rate,
      furthest: MOST_RATE * main.rate,
      set: rate => pack({ springs: [...springs.springs.slice(0, -1), { ...main, rate }] }),
    },
  ]
  const { gas } = shock
  if (gas !== null)
    found.push({
      kind: 'charge',
      name: 'shock charge',
      field: 'corner.shock.gas.charge',
      quantity: 'pressure',
      now: gas.charge,
      furthest: Math.max(gas.charge, MOST_CHARGE),
      set: charge => ({ ...corner, shock: { ...shock, gas: { ...gas, charge } } }),
    })
  if (stop === null) return found
  const model = cornerModel(corner)
  found.unshift({
    kind: 'gap',
    name: 'gap',
    field: 'corner.stop.gap',
    quantity: 'length',
    now: stop.gap,
    furthest: Math.max(stop.gap, model.linkage.at(Math.min(1, model.linkage.highest)).stop),
    set: gap => ({ ...corner, stop: { ...stop, gap } }),
  })
  if (stop.kind === 'hydraulic')
    found.push({
      kind: 'stroke',
      name: 'stop stroke',
      field: 'corner.stop.stroke',
      quantity: 'length',
      now: stop.stroke,
      furthest: stop.stroke * 0.02,
      set: stroke => {
        const shorter = stop.stroke - stroke
        const gasVolume = stop.gasVolume - circleArea(stop.shaftDiameter) * shorter
        return { ...corner, stop: { ...stop, stroke, gap: stop.gap + shorter, gasVolume } }
      },
    })
  return found
}

/** One change that would do, or that none of its kind would. */
export interface OneChange {
  readonly kind: ChangeKind
  readonly name: string
  readonly field: string
  readonly quantity: Quantity
  readonly now: number
  /** The value that gives the share asked for; null when none within reason does. */
  readonly to: number | null
  /** How the corner stands with it: as asked for, or the most this kind can do. */
  readonly after: Standing
}

/** How many looks are taken on the way to a lever's end, so that the least change that does is found where more of it undoes itself. */
const LOOKS = 32

/** Share of the way to a lever's end within which its value is found: finer than anything is set to. */
const FINE = 1e-9

/**
 * For each kind of change, how much of it alone gives a share of the travel to the coilover, found on the corner evaluated anew.
 * A shorter stop is one with a spacer inside: stroke less, gap more by as much, closed at the same place.
 * @param share of bump travel from where the car rests, 0 to 1
 * @returns empty when it has that share already
 */
export function oneChangeEach(corner: Corner, share: number): OneChange[] {
  const { share: already, bump } = standing(corner)
  if (already >= share) return []
  return levers(corner).map(({ set, furthest, now, ...lever }): OneChange => {
    const at = (part: number): Standing => standing(set(now + (furthest - now) * part), bump)
    let best = { part: 0, standing: at(0) }
    for (let i = 1; i <= LOOKS && best.standing.share < share; i += 1) {
      const next = { part: i / LOOKS, standing: at(i / LOOKS) }
      if (next.standing.share >= share) {
        const root = findRoot(part => at(part).share - share, (i - 1) / LOOKS, next.part, FINE)
        const near = root.found ? [root.at, root.at + root.width] : []
        const part = near.find(each => at(each).share >= share) ?? next.part
        return { ...lever, now, to: now + (furthest - now) * part, after: at(part) }
      }
      if (next.standing.share > best.standing.share) best = next
    }
    return { ...lever, now, to: null, after: best.standing }
  })
}
