import { readFile } from 'node:fs/promises'
import { basename, resolve } from 'node:path'
import { decodeRun, isKeptRun } from '../../core/plan/kept-run-file.ts'
import type { AxleId, Plan } from '../../core/plan/schema.ts'
import type { ChannelChoice } from '../../core/runs/channel.ts'
import { columnNamed, guessChannels, UNKNOWN_SCALE } from '../../core/runs/choose.ts'
import { timeUnit } from '../../core/runs/column-units.ts'
import { type Detected, detectReading } from '../../core/runs/detect.ts'
import type { Encoding } from '../../core/runs/encoding.ts'
import { type KeptRun, keptRun } from '../../core/runs/kept-run.ts'
import type { Column, TimeSource } from '../../core/runs/reading.ts'
import { readingProblems } from '../../core/runs/reading-problems.ts'
import { MOST_ROWS, type Table } from '../../core/runs/table-import.ts'
import { beginningOf, type ReadAs, readRun, tokenize } from '../services/run-file.ts'
import { sha256 } from '../services/sha256.ts'
import type { Io } from './io.ts'
import { calibrationOf, type LogOptions, type Said, saidOf, typedNumber } from './log-options.ts'
import { refuse } from './refusal.ts'

/** What a recorded file is like. */
export type LogFile =
  | { readonly kind: 'table'; readonly detected: Detected; readonly table: Table }
  | { readonly kind: 'kept'; readonly digest: string }

export interface LogSource {
  readonly run: KeptRun
  readonly file: LogFile
}

const listedNames = (columns: readonly Column[]): string => columns.map(({ name }) => `“${name}”`).join(', ')

/** Where the time comes from, as the options say or as was told from the file. */
function timeFor({ columns, reading }: Detected, options: LogOptions): TimeSource {
  const rate = typedNumber('--rate', options.rate)
  if (rate !== undefined && options.time !== undefined) refuse('Give --time or --rate, not both.')
  if (rate !== undefined) return { kind: 'rate', rowsPerSecond: rate }
  if (options.time === undefined)
    return reading.time.kind === 'rate'
      ? refuse(
          `Which column is the time? Name it with --time, or give the rows a second with --rate. The file has ${listedNames(columns)}.`,
        )
      : reading.time
  const column = columnNamed(columns, options.time)
  if (column === null) return refuse(`There is no column “${options.time}”. The file has ${listedNames(columns)}.`)
  if (reading.time.kind !== 'rate' && reading.time.column === column) return reading.time
  const { name, unit } = columns[column]!
  const size = unit === null ? 1 : timeUnit(unit)
  return size === null
    ? refuse(`“${name}” is in ${unit}; it should be a time, in s, ms or min.`)
    : { kind: 'numbers', column, unit: size }
}

function choicesFor(
  columns: readonly Column[],
  time: TimeSource,
  axle: AxleId,
  axles: readonly AxleId[],
  options: LogOptions,
): readonly ChannelChoice[] {
  const guessed = guessChannels(columns, time, [axle, ...axles.filter(id => id !== axle)])
  if (options.channel === undefined) {
    const mine = guessed.filter(choice => choice.axle === axle)
    if (mine.length === 0)
      refuse(`Which column is the ${axle} axle? Name it with --channel. The file has ${listedNames(columns)}.`)
    return options.keep === undefined ? mine : guessed
  }
  const column = columnNamed(columns, options.channel)
  if (column === null) return refuse(`There is no column “${options.channel}”. The file has ${listedNames(columns)}.`)
  const [choice] = guessChannels([columns[column]!], { kind: 'rate', rowsPerSecond: 1 }, [axle])
  const unknown = {
    axle,
    side: 'both',
    measures: 'shaft',
    calibration: { scale: UNKNOWN_SCALE, offset: 0 },
    rideHeightAt: null,
    fullDroopAt: null,
    lowPass: null,
  } as const
  return [{ ...unknown, ...choice, column }]
}

const asSaid = <Choice extends Omit<ChannelChoice, 'column'>>(choice: Choice, said: Said): Choice => ({
  ...choice,
  measures: said.measures ?? choice.measures,
  rideHeightAt: said.rideHeightAt ?? choice.rideHeightAt,
  fullDroopAt: said.fullDroopAt ?? choice.fullDroopAt,
  lowPass: said.lowPass ?? choice.lowPass,
})

async function fromTable(
  plan: Plan,
  axle: AxleId,
  axles: readonly AxleId[],
  file: string,
  options: LogOptions,
  io: Io,
): Promise<LogSource> {
  const said = saidOf(options)
  const chosen: { detected?: Detected; choices: readonly ChannelChoice[] } = { choices: [] }
  let told = -1
  const choose = (sample: string, encoding: Encoding): ReadAs => {
    const detected = detectReading(sample, encoding, tokenize)
    if (!detected.readable) refuse(`${file} cannot be used: it is no table of numbers, a line a row.`)
    const { columns } = detected
    const reading = { ...detected.reading, time: timeFor(detected, options) }
    const [problem] = readingProblems(reading, columns.length)
    if (problem !== undefined) refuse(`--rate ${problem.found}: it should be ${problem.wanted}.`)
    chosen.detected = { ...detected, reading }
    chosen.choices = choicesFor(columns, reading.time, axle, axles, options)
    return { reading, columns, taken: chosen.choices.map(({ column }) => column) }
  }
  const read = await readRun(resolve(io.folder, file), choose, share => {
    const percent = Math.floor(share * 100)
    if (percent !== told) io.progress?.(`Reading ${file}: ${percent} %`)
    told = percent
  })
  io.progress?.('')
  const { detected, choices } = chosen
  if (!read.ok || detected === undefined)
    return refuse(
      `${file} cannot be used: ${!read.ok && read.why === 'too long' ? `it has more than ${MOST_ROWS} rows` : 'no row in it can be read'}.`,
    )
  const { columns, reading } = detected
  const channels = choices.map(choice => {
    const calibration = calibrationOf(columns[choice.column]!, options, plan.units)
    return asSaid({ ...choice, calibration: calibration ?? choice.calibration }, said)
  })
  const source = { name: basename(file), digest: read.digest }
  return {
    run: keptRun(options.keep ?? '', source, reading, columns, read.table, channels),
    file: { kind: 'table', detected, table: read.table },
  }
}

async function fromKept(plan: Plan, path: string, file: string, options: LogOptions): Promise<LogSource> {
  const said = saidOf(options)
  if (options.keep !== undefined) refuse(`${file} is kept already: --keep is for tables.`)
  if (options.time !== undefined || options.rate !== undefined)
    refuse(`${file} is a kept run and has its times: --time and --rate are for tables.`)
  const read = await decodeRun(new Uint8Array(await readFile(path)), sha256)
  if (!read.ok) return refuse(`${file} cannot be used: ${read.why}.`)
  const wanted = options.channel?.trim().toLowerCase()
  const channels = read.run.channels
    .filter(({ name }) => wanted === undefined || name.toLowerCase() === wanted)
    .map(channel => {
      const anew = options.calibrate !== undefined || options.unit !== undefined
      const calibration = anew ? calibrationOf(channel, options, plan.units) : null
      return asSaid({ ...channel, calibration: calibration ?? channel.calibration }, said)
    })
  return { run: { ...read.run, channels }, file: { kind: 'kept', digest: read.digest } }
}

/** The run in a file, be it a table or a kept run, as the options say it is read. @param axles of the setup it is laid over */
export async function logSource(
  plan: Plan,
  axle: AxleId,
  axles: readonly AxleId[],
  file: string,
  options: LogOptions,
  io: Io,
): Promise<LogSource> {
  const path = resolve(io.folder, file)
  return isKeptRun(await beginningOf(path))
    ? fromKept(plan, path, file, options)
    : fromTable(plan, axle, axles, file, options, io)
}
