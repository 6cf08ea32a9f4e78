import { dirname, resolve } from 'node:path'
import type { Command } from 'commander'
import { type AxleLedger, setupLoads } from '../../core/loads/ledger.ts'
import type { AxleModel } from '../../core/loads/setup-model.ts'
import type { AxleId, Plan } from '../../core/plan/schema.ts'
import { compareFigures, type FigureDifference } from '../../core/runs/compare.ts'
import { demandOfRun, type RunDemand } from '../../core/runs/demand.ts'
import { engagementFinding } from '../../core/runs/engagement-words.ts'
import type { RunFinding } from '../../core/runs/findings.ts'
import type { KeptChannel, KeptRun } from '../../core/runs/kept-run.ts'
import { type LaidRun, layRun, type NotLaid } from '../../core/runs/lay.ts'
import { type SeenEngagement, seeEngagement } from '../../core/runs/seen-engagement.ts'
import { strokesAMinute } from '../../core/runs/strokes.ts'
import { sayIn } from '../../core/units/saying.ts'
import { reason } from '../services/reason.ts'
import type { Io } from './io.ts'
import type { Printed } from './loads-command.ts'
import { logJson } from './log-json.ts'
import { type LogOptions, notCalibrated } from './log-options.ts'
import type { LogFile } from './log-source.ts'
import { logText } from './log-text.ts'
import { Refusal, refuse } from './refusal.ts'

/** One recorded channel as it was laid over the plan. */
export interface LaidChannel {
  readonly channel: KeptChannel
  readonly laid: LaidRun
  /** Where the run itself shows that pad and stop meet. */
  readonly seen: SeenEngagement
  readonly findings: readonly RunFinding[]
  /** As STROKE_SHARES has them. */
  readonly strokes: readonly number[]
  readonly asked: RunDemand | null
}

/** All there is to say about a run. */
export interface Log {
  readonly plan: Plan
  readonly setup: string
  readonly axle: AxleModel
  readonly file: LogFile
  readonly channels: readonly LaidChannel[]
  /** What changed since the run before the work, channel by channel; empty where none was named. */
  readonly since: readonly { readonly name: string; readonly figures: readonly FigureDifference[] }[]
  /** The file beside the plan it was put into, or that a kept one is no longer what the plan means. */
  readonly kept: string | null
  readonly changed: boolean
}

interface AxleOfPlan {
  readonly setup: string
  readonly axle: AxleModel
  readonly ledger: AxleLedger
  readonly axles: readonly AxleId[]
}

function axleIn(plan: Plan, options: LogOptions): AxleOfPlan {
  const setup = options.setup === undefined ? plan.setups[0]! : plan.setups.find(({ id }) => id === options.setup)
  if (setup === undefined)
    return refuse(
      `There is no setup “${options.setup}” in this plan. It has ${plan.setups.map(({ id }) => id).join(', ')}.`,
    )
  const loads = setupLoads(plan, setup)
  const axle = loads.model.axles.find(each => each.axle.id === options.axle)
  const ledger = loads.ledger.find(each => each.id === options.axle)
  const axles = setup.axles.map(({ id }) => id)
  return axle === undefined || ledger === undefined
    ? refuse(`There is no axle “${options.axle}” in this setup. It has ${axles.join(', ')}.`)
    : { setup: setup.id, axle, ledger, axles }
}

const WHY: Readonly<Record<Exclude<NotLaid['why'], 'cutoff too high' | 'not calibrated'>, string>> = {
  'no rows': 'it has no two values that follow each other',
  'shaft turns back':
    'by the plan’s linkage the shaft turns back within the travel, so it does not tell where the wheel is',
  'nothing at ride height': 'nothing was recorded at the moment given with --ride-height-at',
  'nothing at full droop': 'nothing was recorded at the moment given with --full-droop-at',
}

function notLaid(problem: NotLaid, channel: KeptChannel, file: string, options: LogOptions): string {
  if (problem.why === 'not calibrated') return notCalibrated(channel, options)
  const why =
    problem.why === 'cutoff too high'
      ? `the cutoff should be no more than ${problem.highest.toPrecision(3)} Hz for so many rows a second`
      : WHY[problem.why]
  return `“${channel.name}” in ${file} cannot be used: ${why}.`
}

interface LaidFile {
  readonly run: KeptRun
  readonly file: LogFile
  readonly channels: readonly LaidChannel[]
}

/** Every channel of the axle that a file has, laid over the plan. */
async function laidFile(plan: Plan, place: AxleOfPlan, file: string, options: LogOptions, io: Io): Promise<LaidFile> {
  const { axle, ledger, axles } = place
  const { logSource } = await import('./log-source.ts')
  const { run, file: like } = await logSource(plan, axle.axle.id, axles, file, options, io).catch((error: unknown) => {
    if (error instanceof Error && 'code' in error) return refuse(`${file} could not be read: ${reason(error)}.`)
    throw error
  })
  const mine = run.channels.filter(channel => channel.axle === axle.axle.id)
  if (mine.length === 0) {
    const has = run.channels.map(({ name, axle }) => `“${name}”, ${axle}`).join('; ')
    refuse(`${file} has no such channel of the ${axle.axle.id} axle. It has ${has === '' ? 'none' : has}.`)
  }
  const say = sayIn(plan.units)
  const channels = mine.map((channel): LaidChannel => {
    const recorded = { time: run.time, readings: channel.readings, longestPause: run.longestPause }
    const laid = layRun(axle, ledger, recorded, channel, say)
    if (!laid.ok) return refuse(notLaid(laid, channel, file, options))
    const seen = seeEngagement(axle.model, laid.asRecorded)
    const elsewhere = engagementFinding(seen, axle.model.engagement, say)
    return {
      channel,
      laid,
      seen,
      strokes: strokesAMinute(axle.model, laid.run),
      asked: demandOfRun(axle.model, axle.rest, laid.run),
      findings: [...laid.findings, ...(elsewhere === null ? [] : [elsewhere])],
    }
  })
  return { run, file: like, channels }
}

/** What changed from an earlier run, for each channel both have, in their order. */
async function since(
  plan: Plan,
  place: AxleOfPlan,
  options: LogOptions,
  io: Io,
  now: readonly LaidChannel[],
): Promise<Log['since']> {
  if (options.before === undefined) return []
  const { channels } = await laidFile(plan, place, options.before, { ...options, keep: undefined }, io)
  return now.slice(0, channels.length).map(({ channel, laid }, i) => ({
    name: channel.name,
    figures: compareFigures(channels[i]!.laid.figures, laid.figures),
  }))
}

async function logOf(plan: Plan, file: string, options: LogOptions, io: Io): Promise<Log> {
  const place = axleIn(plan, options)
  const { setup, axle } = place
  const { run, file: like, channels } = await laidFile(plan, place, file, options, io)
  const keep = async (name: string | undefined) =>
    name === undefined ? null : (await import('./log-keep.ts')).keepBesidePlan(planFile, setup, run)
  const planFile = resolve(io.folder, options.plan)
  const known = plan.runs?.find(each => resolve(dirname(planFile), each.file) === resolve(io.folder, file))
  return {
    plan,
    setup,
    axle,
    file: like,
    channels,
    since: await since(plan, place, options, io, channels),
    kept: await keep(options.keep),
    changed: known !== undefined && like.kind === 'kept' && known.digest !== like.digest,
  }
}

async function printed(plan: Plan, file: string, options: LogOptions, io: Io): Promise<Printed> {
  try {
    const log = await logOf(plan, file, options, io)
    return { text: options.json ? `${JSON.stringify(logJson(log), null, 2)}\n` : logText(log) }
  } catch (error) {
    if (error instanceof Refusal) return { problem: error.message }
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
    .argument('<file>', 'A table as text, a line a row: a time and one or more travels. Or a run kept beside a plan.')
    .requiredOption('--plan <plan>', 'The plan it is laid over.')
    .requiredOption('--axle <id>', 'front or rear.')
    .option('--setup <id>', 'The setup that was driven; the first if not given.')
    .option('--channel <name>', 'The column, by its name or place; else those named for the axle.')
    .option('--time <name>', 'The column that holds the time, if its head does not say.')
    .option('--rate <hertz>', 'Rows a second, for a file that has no times.')
    .option('--measures <what>', 'shaft or wheel; else by the column’s head, shaft if it does not say.')
    .option('--unit <unit>', 'mm, cm, m or in, if the file does not say.')
    .option('--calibrate <points>', 'Two readings and their travel, such as “0.5=0 mm,4.5=200 mm”.')
    .option('--reversed', 'A reading that rises in droop.')
    .option('--ride-height-at <seconds>', 'A moment at which the car stood at ride height: the zero.')
    .option('--full-droop-at <seconds>', 'A moment at which it hung at full droop: the sign.')
    .option('--low-pass <hertz>', 'Take away what is faster; nothing is shifted in time.')
    .option('--before <file>', 'A run from before the work, read alike, to tell what changed.')
    .option('--keep <name>', 'Keep the run in a file beside the plan, and name it in the plan.')
    .option('--json', 'For programs: SI units, every digit.')
    .action((file: string, options: LogOptions) => print(options.plan, plan => printed(plan, file, options, io)))
}
