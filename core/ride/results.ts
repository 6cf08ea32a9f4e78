/** What rides are told by. SI units; wheel positions in m from ride height; forces in N, at the wheel unless said otherwise. */

/** Bars of the histogram of wheel position, from full droop to full bump. */
export const HISTOGRAM_BARS = 48

/** One meeting of pad and stop, until they part. */
export interface Hit {
  readonly time: number
  /** When they parted; the end of the ride where they did not, s. */
  readonly until: number
  /** Along the stop, m/s. */
  readonly speed: number
  /** How far in the stop still was when it was met, m: more than 0 when it had not come all the way out. */
  readonly stillIn: number
  /** How far in it went, m. */
  readonly deepest: number
  /** What the stop took on the way in, and of that gave back on the way out, J. */
  readonly taken: number
  readonly returned: number
  readonly bottomed: boolean
}

/** What one corner did on one course. */
export interface RideFigures {
  readonly duration: number
  readonly share: {
    readonly droop: number
    readonly coilover: number
    readonly engagement: number
    readonly onStop: number
    readonly air: number
  }
  readonly hits: number
  readonly bottoms: number
  readonly wheelMax: number
  readonly wheelMin: number
  readonly suspensionForceMax: number
  /** Along the stop. */
  readonly stopForceMax: number
  /** Fastest meeting of pad and stop, along the stop, m/s. */
  readonly stopSpeedMax: number
  readonly chassisAccelMax: number
  readonly chassisAccelRms: number
}

/** Figures that can hang on how stiff steel is where it meets steel. */
export type ContactFigure =
  | 'wheelMax'
  | 'wheelMin'
  | 'suspensionForceMax'
  | 'stopForceMax'
  | 'chassisAccelMax'
  | 'chassisAccelRms'

/** What is kept at even times, in SI. `chassis` is its height over the wheel, 0 where the wheel at ride height just touches level road. */
export const TRACES = [
  'time',
  'wheel',
  'road',
  'chassis',
  'suspensionForce',
  'stopForce',
  'tireForce',
  'chassisAcceleration',
] as const

/** The ride at even times. */
export type RideTrace = Readonly<Record<(typeof TRACES)[number], Float64Array>>

/** Work over the run, J: taken by dampers, springs and gas, the stop, the tire, and steel at the ends; done by the road. */
export interface Works {
  readonly damper: number
  readonly springs: number
  readonly stop: number
  readonly tire: number
  readonly ends: number
  readonly road: number
}

/** All that is kept of one corner's ride. */
export interface CornerRide extends RideFigures {
  readonly trace: RideTrace
  /** Share of the time in each bar, from full droop up; what lies past the ends is in the end bars. */
  readonly histogram: readonly number[]
  readonly events: readonly Hit[]
  readonly work: Works
  /** Figures taken while steel met steel; empty when it never did. */
  readonly contactDependent: readonly ContactFigure[]
  readonly dampingAssumed: boolean
}

/** What a run as a whole came to. */
interface Ran {
  readonly ok: true
  /** Kinetic energy and that of height, of chassis and wheels: at the start less at the end, J. Dampers and the rest took it besides the road's work. */
  readonly broughtAlong: number
  readonly steps: number
  readonly evaluations: number
}

export interface Ride extends CornerRide, Ran {}

/** The whole car's ride: its axles in the setup's order. */
export interface CarRide extends Ran {
  readonly axles: readonly CornerRide[]
  /** At the even times of the traces: how far the body has turned from how it began, nose down positive (ISO 8855), rad. */
  readonly pitch: Float64Array
}

/** A run that did not get to its end, and the time it got to, s. */
export interface NoRide {
  readonly ok: false
  readonly reason: 'too many steps' | 'step too short'
  readonly time: number
}

export type RideOutcome = Ride | NoRide
export type CarOutcome = CarRide | NoRide | { readonly ok: false; readonly reason: 'needs two axles'; readonly time: 0 }
