import { type DamperCurve, damperCurve } from '../forces/damper.ts'
import { type GasChamber, gasForce, gasPressure } from '../forces/gas.ts'
import { chamberOf } from '../forces/stop.ts'
import { type CubicPieces, cubicPieces } from '../numerics/cubic-pieces.ts'
import { type EvenTable, evenTable } from '../numerics/even-table.ts'
import type { Stop } from '../plan/schema.ts'
import { ATMOSPHERE } from '../units/constants.ts'

/** Faster than any pad: a stop that nothing holds back comes out at this, m/s. */
const AT_ONCE = 100

const gasPush = (chamber: GasChamber, travel: number): number =>
  chamber.area * (gasPressure(chamber, travel, 'fast') - ATMOSPHERE)

/** A table of gas force is good enough when it is this near halfway between its places, in shares of the force there; no more places than so many. */
const NEAR = 1e-8
const MOST_PLACES = 2048

/** Force of gas over travel without a power for each look; null where it rises too steeply at the end for one. */
function gasTable(chamber: GasChamber, stroke: number): EvenTable | null {
  for (let count = 32; count <= MOST_PLACES; count *= 4) {
    const places = Array.from({ length: count + 1 }, (_, i) => (stroke * i) / count)
    const step = stroke / count
    const values = places.map(travel => gasPush(chamber, travel))
    const slopes = places.map(travel => gasForce(chamber, travel, 'fast').slope)
    const table = evenTable(0, step, values, slopes)
    const near = places
      .slice(1)
      .every(travel => Math.abs(table.value(travel - step / 2) / gasPush(chamber, travel - step / 2) - 1) < NEAR)
    if (near) return table
  }
  return null
}

/** A bump stop in motion: fast gas or foam, and dampers of its own. Forces along it, N; travels pushed in, m. */
export class StopInMotion {
  travel = 0
  speed = 0
  held = 0
  /** Force of the first touch, slow and undamped. */
  readonly step: number
  /** Whether it can stay behind a pad that leaves it. */
  readonly holdsBack: boolean
  private readonly compression: DamperCurve
  private readonly rebound: DamperCurve
  private readonly chamber: GasChamber | null
  private readonly stroke: number
  private readonly lastSlope: number
  private readonly foam: CubicPieces | null
  private readonly gas: EvenTable | null

  constructor(stop: Stop) {
    const hydraulic = stop.kind === 'hydraulic' ? stop : null
    this.compression = damperCurve(hydraulic?.compression ?? [])
    this.rebound = damperCurve(hydraulic?.rebound ?? [])
    this.holdsBack = (hydraulic?.rebound?.length ?? 0) > 1
    this.chamber = hydraulic && chamberOf(hydraulic)
    this.foam =
      stop.kind === 'elastomer'
        ? cubicPieces(
            stop.curve.map(row => row.deflection),
            stop.curve.map(row => row.force),
          )
        : null
    this.stroke = stop.kind === 'hydraulic' ? stop.stroke : stop.curve.at(-1)!.deflection
    this.gas = this.chamber === null ? null : gasTable(this.chamber, this.stroke)
    this.lastSlope = this.foam?.lastSlope ?? gasForce(this.chamber!, this.stroke, 'fast').slope
    this.step = this.push(0)
  }

  /** Force of gas or foam alone; past its end as at its end. */
  push(travel: number): number {
    const { chamber, foam, gas } = this
    if (foam !== null) return travel < 0 ? foam.firstSlope * travel : foam.value(travel)
    if (gas !== null && travel >= 0) return gas.value(travel)
    return gasPush(chamber!, Math.min(travel, this.stroke))
  }

  /** Leaves in `held` its force on a pad that moves with it, as far in as `travel` and as fast as `speed`, positive pushing it in; @param inward which of its dampers works; @param closed whether what lies past its
   * end is meant: else its slope goes on there */
  look(inward: boolean, closed: boolean): void {
    const { travel, speed, stroke, gas } = this
    let push: number
    if (gas !== null && travel >= 0) {
      gas.at = travel
      gas.look()
      push = gas.found
    } else push = this.push(travel)
    if (!closed && travel > stroke) push += (travel - stroke) * this.lastSlope
    const damper = inward ? this.compression : this.rebound
    damper.at = inward ? speed : -speed
    damper.look()
    this.held = push + (inward ? damper.held : -damper.held)
  }

  /** Speed at which it comes out with no pad on it, m/s: what its rebound lets its gas do. */
  extensionSpeed(travel: number): number {
    return Math.min(AT_ONCE, this.rebound.speed(Math.max(0, this.push(Math.max(0, travel)))))
  }
}
