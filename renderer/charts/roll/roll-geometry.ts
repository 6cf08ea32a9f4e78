import type { SideState } from '../../../core/loads/axle-state.ts'
import type { SetupLoads } from '../../../core/loads/ledger.ts'
import { armOf } from '../../../core/loads/station.ts'
import type { AxleId } from '../../../core/plan/schema.ts'

/** Across the car from its middle, positive to the outer side, and up from the ground, m. */
export interface Spot {
  readonly x: number
  readonly y: number
}

/** One stop between chassis and axle. */
export interface StopInRoll {
  /** On the chassis. */
  readonly root: Spot
  /** Its free end, where it would be with nothing against it. */
  readonly foot: Spot
  /** What meets it, on the axle or the arm. */
  readonly pad: Spot
  /** Wheel travel before they meet, m; negative when it is pushed in. */
  readonly left: number
}

export interface SideInRoll {
  readonly wheel: Spot
  /** Wheel travel from ride height, m. */
  readonly travel: number
  /** Null without a stop in the travel. */
  readonly stop: StopInRoll | null
  readonly forces: Pick<SideState, 'springs' | 'gas' | 'stop' | 'end'>
  /** What springs, gas, stop, end of the travel and anti-roll bar hold up at the wheel, N; less than nothing where they hold the wheel off the ground. */
  readonly carries: number
}

/** An axle seen from behind, its outer side to the right, at true proportions. */
export interface RollGeometry {
  readonly axle: AxleId
  readonly solid: boolean
  /** There is an anti-roll bar. */
  readonly barred: boolean
  /** How far the chassis leans, rad, 0 or more. */
  readonly roll: number
  readonly outer: SideInRoll
  readonly inner: SideInRoll
  /** The wheel the chassis leans away from is off the ground by so much, m; 0 while it stands on it. */
  readonly off: number
  readonly tire: { readonly radius: number; readonly width: number }
  /** Underside of the chassis. */
  readonly chassis: readonly [Spot, Spot]
  readonly axis: Spot
  /** Corners of everything drawn. */
  readonly low: Spot
  readonly high: Spot
}

/** How wide a tire is drawn, parts of its radius: the plan has no width. */
const TIRE_WIDTH = 0.6
/** How long a stop is drawn beyond what it can be pushed in, and how far inboard of the tire, m. */
const STOP_SOLID = 0.05
const INBOARD = 0.1

/** Null where the loads have no place, or the plan no such axle. */
export function rollGeometry({ model, together }: SetupLoads, id: AxleId): RollGeometry | null {
  const ready = model.axles.find(({ axle }) => axle.id === id)
  if (together.outcome !== 'settles' || ready === undefined) return null
  const under = together.axles.find(axle => axle.id === id)
  if (under === undefined) return null
  const { axle, model: corner } = ready
  const { outer, inner, lift, moment, lifted } = under.state
  const half = axle.track / 2
  const { radius } = axle.corner.tire
  const width = TIRE_WIDTH * radius
  const roll = Math.abs(together.roll)
  // With the roll axis above the center of gravity the chassis leans into the turn: the outer side goes down.
  const lean: 1 | -1 = model.vehicle.cgHeight < model.vehicle.rollAxisHeight ? -1 : 1
  // A chassis that leans further than its wheels' travel says has lifted the inner one.
  const off = lifted ? Math.max(0, axle.track * roll - (outer.wheel - inner.wheel)) : 0
  const middle = radius + off / 2 - (outer.wheel + inner.wheel) / 2
  /** Height of what lies `above` the line through both wheels at ride height. */
  const at = (x: number, above: number): Spot => ({ x, y: middle - lean * roll * x + above })
  const solid = axle.suspension === 'solid'
  const arm = solid ? armOf(axle, 'stop') : Math.max(0.2 * half, half - width / 2 - INBOARD)
  const { engagement, bump } = corner
  const deck = Math.max(bump, engagement ?? bump, outer.wheel) + STOP_SOLID
  const side = (state: SideState, sign: 1 | -1): SideInRoll => ({
    wheel: { x: sign * half, y: radius + (sign === lean ? 0 : off) },
    travel: state.wheel,
    stop:
      engagement === null
        ? null
        : {
            root: at(sign * arm, deck),
            foot: at(sign * arm, engagement),
            pad: at(sign * arm, state.atStop),
            left: engagement - state.atStop,
          },
    forces: state,
    carries: lift / 2 + (lean * sign * moment) / axle.track,
  })
  const chassis = [at(-(arm + 0.06), deck), at(arm + 0.06, deck)] as const
  const axis = { x: 0, y: model.vehicle.rollAxisHeight }
  const reach = Math.max(half + width / 2, arm + 0.06)
  return {
    axle: id,
    solid,
    barred: axle.antiRollRate > 0,
    roll,
    outer: side(lean === 1 ? outer : inner, 1),
    inner: side(lean === 1 ? inner : outer, -1),
    off,
    tire: { radius, width },
    chassis,
    axis,
    low: { x: -reach, y: Math.min(0, axis.y) },
    high: { x: reach, y: Math.max(2 * radius + off, chassis[0].y, chassis[1].y, axis.y) + 0.03 },
  }
}
