import { resolve } from 'node:path'
import type { Command } from 'commander'
import { type AxleLedger, setupLoads } from '../../core/loads/ledger.ts'
import { sayIn } from '../../core/loads/saying.ts'
import type { AxleModel } from '../../core/loads/setup-model.ts'
import type { AxleId, Plan } from '../../core/plan/schema.ts'
import type { Calibration } from '../../core/runs/calibration.ts'
import { twoPoint } from '../../core/runs/calibration.ts'
import { axleColumns, columnNamed, lengthUnit, measuredBy, timeColumn, timeUnit } from '../../core/runs/choose.ts'
import { type LaidRun, layRun, type NotLaid } from '../../core/runs/lay.ts'
import type { Column, TableShape } from '../../core/runs/shape.ts'
import { MOST_ROWS, type Table, type TableChoice } from '../../core/runs/table-import.ts'
import { parseMeasure } from '../../core/units/parse.ts'
import { reason } from '../services/reason.ts'
import type { Io } from './io.ts'
import type { Printed } from './loads-command.ts'
import { logJson } from './log-json.ts'
import { logText } from './log-text.ts'

export interface LogOptions {
  readonly plan: string
  readonly axle: string
  readonly setup?: string
  readonly time?: string
  readonly channel?: string
  readonly measures?: string
  readonly unit?: string
  readonly calibrate?: string
  readonly reversed?: true
  readonly rideHeightAt?: string
  readonly fullDroopAt?: string
  readonly lowPass?: string
  readonly json?: true
}

/** One recorded channel as it was laid over the plan. */
export interface LaidChannel {
  readonly name: string
  readonly measures: 'shaft' | 'wheel'
  readonly laid: LaidRun
}

/** All there is to say about a run. */
export interface Log {
  readonly plan: Plan
  readonly setup: string
  readonly axle: AxleModel
  readonly table: Table
  readonly encoding: string
  readonly lowPass: number | null
  readonly zeroPicked: boolean
  readonly channels: readonly LaidChannel[]
}

/** A sentence that ends the command. */
class Refusal extends Error {}
const refuse = (sentence: string): never => {
  throw new Refusal(`${sentence}\n`)
}

const listedNames = ({ columns }: TableShape): string => columns.map(({ name }) => `“${name}”`).join(', ')

function seconds(option: string, typed: string | undefined): number | null {
  if (typed === undefined) return null
  const value = Number(typed)
  return typed.trim() !== '' && Number.isFinite(value)
    ? value
    : refuse(`${option} ${typed}: it should be a number, such as 12.5.`)
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

function calibrationOf(column: Column, options: LogOptions, units: Plan['units']): Calibration {
  const sign = options.reversed ? -1 : 1
  if (options.calibrate !== undefined) {
    const { scale, offset } = calibrated(options.calibrate, units)
    return { scale: sign * scale, offset: sign * offset }
  }
  const unit = options.unit ?? column.unit
  const size = lengthUnit(unit)
  if (size !== null) return { scale: sign * size, offset: 0 }
  return refuse(
    unit === null
      ? `The unit of “${column.name}” is not in the file. Give a --unit (mm, cm, m, in), or two points with --calibrate.`
      : `“${column.name}” is in ${unit}. Say what that means with --calibrate, such as “0.5=0 mm,4.5=200 mm”.`,
  )
}

function axleIn(plan: Plan, options: LogOptions): { setup: string; axle: AxleModel; ledger: AxleLedger } {
  const setup = options.setup === undefined ? plan.setups[0]! : plan.setups.find(({ id }) => id === options.setup)
  if (setup === undefined)
    return refuse(
      `There is no setup “${options.setup}” in this plan. It has ${plan.setups.map(({ id }) => id).join(', ')}.`,
    )
  const loads = setupLoads(plan, setup)
  const axle = loads.model.axles.find(each => each.axle.id === options.axle)
  const ledger = loads.ledger.find(each => each.id === options.axle)
  return axle === undefined || ledger === undefined
    ? refuse(`There is no axle “${options.axle}” in this setup. It has ${setup.axles.map(({ id }) => id).join(', ')}.`)
    : { setup: setup.id, axle, ledger }
}

function chosenColumns(shape: TableShape, options: LogOptions, axle: AxleId): TableChoice {
  const time = options.time === undefined ? timeColumn(shape) : columnNamed(shape, options.time)
  if (time === null)
    return refuse(
      `${options.time === undefined ? 'Which column is the time? Name it with --time' : `There is no column “${options.time}”`}. The file has ${listedNames(shape)}.`,
    )
  const unit = shape.columns[time]!.unit
  const picked = options.channel === undefined ? null : columnNamed(shape, options.channel)
  const values = options.channel === undefined ? axleColumns(shape, axle, time) : picked === null ? [] : [picked]
  if (values.length === 0)
    return refuse(
      `${options.channel === undefined ? `Which column is the ${axle} axle? Name it with --channel` : `There is no column “${options.channel}”`}. The file has ${listedNames(shape)}.`,
    )
  const size = unit === null ? 1 : timeUnit(unit)
  return size === null
    ? refuse(`“${shape.columns[time]!.name}” is in ${unit}; it should be a time, in s, ms or min.`)
    : { time, timeUnit: size, values }
}

const WHY: Readonly<Record<Exclude<NotLaid['why'], 'cutoff too high'>, string>> = {
  'no rows': 'it has no two values that follow each other',
  'shaft turns back':
    'by the plan’s linkage the shaft turns back within the travel, so it does not tell where the wheel is',
  'nothing at ride height': 'nothing was recorded at the moment given with --ride-height-at',
  'nothing at full droop': 'nothing was recorded at the moment given with --full-droop-at',
}

const notLaid = (problem: NotLaid): string =>
  problem.why === 'cutoff too high'
    ? `the cutoff should be no more than ${problem.highest.toPrecision(3)} Hz for so many rows a second`
    : WHY[problem.why]

async function logOf(plan: Plan, file: string, options: LogOptions, io: Io): Promise<Log> {
  const { setup, axle, ledger } = axleIn(plan, options)
  const lowPass = seconds('--low-pass', options.lowPass)
  if (lowPass !== null && lowPass <= 0) refuse(`--low-pass ${options.lowPass}: it should be more than 0 Hz.`)
  if (options.measures !== undefined && options.measures !== 'shaft' && options.measures !== 'wheel')
    refuse(`--measures ${options.measures}: it should be shaft or wheel.`)
  const moments = {
    rideHeightAt: seconds('--ride-height-at', options.rideHeightAt),
    fullDroopAt: seconds('--full-droop-at', options.fullDroopAt),
  }
  if (moments.fullDroopAt !== null && moments.rideHeightAt === null)
    refuse('Full droop tells the sign beside ride height: give --ride-height-at as well.')
  const { readRun } = await import('../services/run-file.ts')
  let chosen: TableChoice | null = null
  let told = -1
  const read = await readRun(
    resolve(io.folder, file),
    shape => {
      chosen = chosenColumns(shape, options, axle.axle.id)
      return chosen
    },
    share => {
      const percent = Math.floor(share * 100)
      if (percent !== told) io.progress?.(`Reading ${file}: ${percent} %`)
      told = percent
    },
  )
  io.progress?.('')
  if (!read.ok)
    return refuse(
      `${file} cannot be used: ${read.why === 'too long' ? `it has more than ${MOST_ROWS} rows` : 'it is no table of numbers, a line a row, in two columns or more'}.`,
    )
  const { table, encoding } = read
  const channels = chosen!.values.map((place, i): LaidChannel => {
    const column = table.shape.columns[place]!
    const measures = (options.measures as 'shaft' | 'wheel' | undefined) ?? measuredBy(column)
    const channel = { ...moments, measures, lowPass, calibration: calibrationOf(column, options, plan.units) }
    const laid = layRun(axle, ledger, table.time, table.values[i]!, channel, sayIn(plan.units))
    return laid.ok
      ? { name: column.name, measures, laid }
      : refuse(`“${column.name}” in ${file} cannot be used: ${notLaid(laid)}.`)
  })
  return { plan, setup, axle, table, encoding, lowPass, zeroPicked: moments.rideHeightAt !== null, channels }
}

async function printed(plan: Plan, file: string, options: LogOptions, io: Io): Promise<Printed> {
  try {
    const log = await logOf(plan, file, options, io)
    return { text: options.json ? `${JSON.stringify(logJson(log), null, 2)}\n` : logText(log) }
  } catch (error) {
    if (error instanceof Refusal) return { problem: error.message }
    if (error instanceof Error && 'code' in error) return { problem: `${file} could not be read: ${reason(error)}.\n` }
    throw error
  }
}

/** Adds `log FILE --plan PLAN --axle ID` to the command line. @param print opens the plan and prints what the function makes of it */
export function addLogCommand(
  stopgap: Command,
  print: (file: string, make: (plan: Plan) => Promise<Printed>) => Promise<void>,
  io: Io,
): void {
  stopgap
    .command('log')
    .description('Lay a recorded run over an axle of the plan: where the wheel really was, and how often on the stop.')
    .argument('<file>', 'A table as text: a time and one or more travels, a line a row.')
    .requiredOption('--plan <plan>', 'The plan it is laid over.')
    .requiredOption('--axle <id>', 'front or rear.')
    .option('--setup <id>', 'The setup that was driven; the first if not given.')
    .option('--channel <name>', 'The column, by its name or place; else those named for the axle.')
    .option('--time <name>', 'The column that holds the time, if its head does not say.')
    .option('--measures <what>', 'shaft or wheel; else by the column’s head, shaft if it does not say.')
    .option('--unit <unit>', 'mm, cm, m or in, if the file does not say.')
    .option('--calibrate <points>', 'Two readings and their travel, such as “0.5=0 mm,4.5=200 mm”.')
    .option('--reversed', 'A reading that rises in droop.')
    .option('--ride-height-at <seconds>', 'A moment at which the car stood at ride height: the zero.')
    .option('--full-droop-at <seconds>', 'A moment at which it hung at full droop: the sign.')
    .option('--low-pass <hertz>', 'Take away what is faster; nothing is shifted in time.')
    .option('--json', 'For programs: SI units, every digit.')
    .action((file: string, options: LogOptions) => print(options.plan, plan => printed(plan, file, options, io)))
}
