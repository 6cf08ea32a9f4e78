import type { AxleRide } from '../../core/ride/plan-ride.ts'
import type { ContactFigure, CornerRide } from '../../core/ride/results.ts'
import { formatMeasure } from '../../core/units/format.ts'
import type { Quantity, System } from '../../core/units/quantity.ts'
import { force, onTape } from './tape.ts'

/** Behind a figure that hangs on how stiff steel is. */
export const STEEL = '*'

interface Row {
  readonly name: string
  readonly show: (ride: CornerRide, system: System) => string
  /** The figure shown, where steel can have a say in it. */
  readonly figure?: ContactFigure
}

const measure =
  (quantity: Quantity, of: (ride: CornerRide) => number, digits?: number) =>
  (ride: CornerRide, system: System): string =>
    formatMeasure(of(ride), quantity, system, { unit: true, ...(digits === undefined ? {} : { digits }) })
const position =
  (of: (ride: CornerRide) => number) =>
  (ride: CornerRide, system: System): string =>
    formatMeasure(onTape(of(ride), system), 'length', system, { unit: true, sign: true })
const push =
  (of: (ride: CornerRide) => number) =>
  (ride: CornerRide, system: System): string =>
    force(of(ride), system)

const ROWS: readonly Row[] = [
  { name: 'time in droop', show: measure('share', ride => ride.share.droop, 1) },
  { name: 'time on the coilover alone', show: measure('share', ride => ride.share.coilover, 1) },
  { name: 'time past engagement', show: measure('share', ride => ride.share.engagement, 1) },
  { name: 'time on the stop', show: measure('share', ride => ride.share.onStop, 1) },
  { name: 'time off the ground', show: measure('share', ride => ride.share.air, 1) },
  { name: 'hits on the stop', show: measure('count', ride => ride.hits) },
  { name: 'hits a minute', show: measure('count', ride => (ride.hits / ride.duration) * 60) },
  { name: 'bottoms', show: measure('count', ride => ride.bottoms) },
  { name: 'highest wheel', show: position(ride => ride.wheelMax), figure: 'wheelMax' },
  { name: 'lowest wheel', show: position(ride => ride.wheelMin), figure: 'wheelMin' },
  { name: 'most force at the wheel', show: push(ride => ride.suspensionForceMax), figure: 'suspensionForceMax' },
  { name: 'most force along the stop', show: push(ride => ride.stopForceMax), figure: 'stopForceMax' },
  { name: 'fastest into the stop', show: measure('shaftSpeed', ride => ride.stopSpeedMax) },
  {
    name: 'most felt in the chassis',
    show: measure('acceleration', ride => ride.chassisAccelMax),
    figure: 'chassisAccelMax',
  },
  {
    name: 'felt on average (RMS)',
    show: measure('acceleration', ride => ride.chassisAccelRms),
    figure: 'chassisAccelRms',
  },
]

function cell({ show, figure }: Row, { outcome }: AxleRide, system: System): string {
  if (!outcome.ok) return '–'
  const steel = figure !== undefined && outcome.contactDependent.includes(figure)
  return `${show(outcome, system)}${steel ? STEEL : ''}`
}

/** The figures of some rides side by side, a row for each, its name first; a dash where a ride did not get to its end. */
export const rideRows = (rides: readonly AxleRide[], system: System): string[][] =>
  ROWS.map(row => [row.name, ...rides.map(ride => cell(row, ride, system))])
