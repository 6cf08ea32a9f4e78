import type { Plan } from '../../core/plan/schema.ts'
import { type Calibration, twoPoint } from '../../core/runs/calibration.ts'
import type { Channel } from '../../core/runs/channel.ts'
import { lengthUnit } from '../../core/runs/column-units.ts'
import type { Column } from '../../core/runs/reading.ts'
import { parseMeasure } from '../../core/units/parse.ts'
import { refuse } from './refusal.ts'

export interface LogOptions {
  readonly plan: string
  readonly axle: string
  readonly setup?: string
  readonly time?: string
  readonly rate?: string
  readonly channel?: string
  readonly measures?: string
  readonly unit?: string
  readonly calibrate?: string
  readonly reversed?: true
  readonly rideHeightAt?: string
  readonly fullDroopAt?: string
  readonly lowPass?: string
  readonly before?: string
  readonly keep?: string
  readonly json?: true
}

/** What options say of a channel; undefined where they say nothing. */
export interface Said {
  readonly measures: Channel['measures'] | undefined
  readonly rideHeightAt: number | undefined
  readonly fullDroopAt: number | undefined
  readonly lowPass: number | undefined
}

/** A number somebody typed behind an option; undefined where nobody did. */
export function typedNumber(option: string, typed: string | undefined): number | undefined {
  if (typed === undefined) return undefined
  const value = Number(typed)
  return typed.trim() !== '' && Number.isFinite(value)
    ? value
    : refuse(`${option} ${typed}: it should be a number, such as 12.5.`)
}

/** Looks at the options that hold for any channel. */
export function saidOf(options: LogOptions): Said {
  const lowPass = typedNumber('--low-pass', options.lowPass)
  if (lowPass !== undefined && lowPass <= 0) refuse(`--low-pass ${options.lowPass}: it should be more than 0 Hz.`)
  const { measures } = options
  if (measures !== undefined && measures !== 'shaft' && measures !== 'wheel')
    refuse(`--measures ${measures}: it should be shaft or wheel.`)
  const rideHeightAt = typedNumber('--ride-height-at', options.rideHeightAt)
  const fullDroopAt = typedNumber('--full-droop-at', options.fullDroopAt)
  if (fullDroopAt !== undefined && rideHeightAt === undefined)
    refuse('Full droop tells the sign beside ride height: give --ride-height-at as well.')
  return { measures: measures as Channel['measures'] | undefined, rideHeightAt, fullDroopAt, lowPass }
}

/** `0.5=0 mm,4.5=200 mm` → what a reading means. */
function calibrated(typed: string, units: Plan['units']): Calibration {
  const points = typed.split(',').map(point => {
    const [reading, travel = ''] = point.split('=')
    const length = parseMeasure(travel, 'length', units)
    const value = Number(reading)
    return reading!.trim() !== '' && Number.isFinite(value) && length.ok
      ? { reading: value, travel: length.value }
      : null
  })
  const [a, b] = points
  const line = points.length === 2 && a && b ? twoPoint(a, b) : null
  return (
    line ??
    refuse(`--calibrate ${typed}: it should be two readings, each with its travel, such as “0.5=0 mm,4.5=200 mm”.`)
  )
}

const turned = ({ scale, offset }: Calibration, reversed: true | undefined): Calibration =>
  reversed ? { scale: -scale, offset: -offset } : { scale, offset }

/** What a column's readings mean: as the options say, else by its unit. Null where neither tells. */
export function calibrationOf(column: Column, options: LogOptions, units: Plan['units']): Calibration | null {
  if (options.calibrate !== undefined) return turned(calibrated(options.calibrate, units), options.reversed)
  const size = lengthUnit(options.unit ?? column.unit)
  return size === null ? null : turned({ scale: size, offset: 0 }, options.reversed)
}

/** Why a column's readings mean nothing yet, and what would tell. */
export const notCalibrated = ({ name, unit }: Column, options: LogOptions): string =>
  (options.unit ?? unit) === null
    ? `The unit of “${name}” is not in the file. Give a --unit (mm, cm, m, in), or two points with --calibrate.`
    : `“${name}” is in ${options.unit ?? unit}. Say what that means with --calibrate, such as “0.5=0 mm,4.5=200 mm”.`
