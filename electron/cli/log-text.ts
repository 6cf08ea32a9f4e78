import type { FigureDifference } from '../../core/runs/compare.ts'
import { NOT_TOLD } from '../../core/runs/demand.ts'
import type { Detected } from '../../core/runs/detect.ts'
import { engagementWords } from '../../core/runs/engagement-words.ts'
import { STROKE_SHARES } from '../../core/runs/strokes.ts'
import type { TableFaults } from '../../core/runs/table-import.ts'
import { formatMeasure } from '../../core/units/format.ts'
import type { System } from '../../core/units/quantity.ts'
import { sayIn } from '../../core/units/saying.ts'
import { findingText } from './finding-text.ts'
import type { LaidChannel, Log } from './log-command.ts'
import type { LogFile } from './log-source.ts'
import { AXLE_NAMES, planTitle } from './names.ts'
import { paragraph, underlined } from './paragraph.ts'
import { table } from './table.ts'
import { length } from './tape.ts'

const percent = (share: number): string => `${(100 * share).toFixed(1)} %`

const DELIMITERS = { ',': 'commas', ';': 'semicolons', '\t': 'tabs', '|': 'upright bars', ' ': 'spaces' } as const

/** Where a table's times come from. */
function timesText({ reading, columns }: Detected): string {
  const { time } = reading
  if (time.kind === 'rate') return `no times, ${time.rowsPerSecond} rows a second`
  const called = `“${columns[time.column]!.name}”`
  return time.kind === 'clock' ? `the time of day is ${called}` : `the time is ${called}`
}

/** What a table is like, and what was wrong with it. */
function tableText({ detected, table: { rows, faults, firstLines } }: Extract<LogFile, { kind: 'table' }>): string {
  const { reading, doubts } = detected
  const counted: readonly (readonly [keyof TableFaults, string])[] = [
    ['unreadable', 'unreadable'],
    ['repeated', 'at the time of the row before'],
    ['backward', 'backward in time'],
    ['missing', 'values missing'],
  ]
  const wrong = counted.flatMap(([kind, what]) =>
    faults[kind] === 0 ? [] : [`${faults[kind]} ${what} (first in line ${firstLines[kind]})`],
  )
  const head = `${reading.headerRows} head ${reading.headerRows === 1 ? 'line' : 'lines'}`
  return [
    `Cells between ${DELIMITERS[reading.delimiter]}, decimal ${reading.decimalComma ? 'comma' : 'point'}, ${reading.encoding}, ${head}, ${timesText(detected)}.`,
    ...doubts.map(({ says }) => says),
    `${rows} rows. ${wrong.length === 0 ? 'None left out.' : `Left out: ${wrong.join(', ')}.`}`,
  ].join(' ')
}

/** What the file is like, and how its rows follow each other. */
function fileText({ file, channels, changed }: Log): string {
  const { step, gaps, lost } = channels[0]!.laid.run
  const like = file.kind === 'table' ? tableText(file) : 'A kept run, its checksum right.'
  const other = changed ? ' It has changed since it was kept: it is not the one the plan means.' : ''
  const gapText = gaps === 0 ? '' : ` ${gaps} ${gaps === 1 ? 'gap' : 'gaps'}, ${lost.toFixed(1)} s in all, not counted.`
  return paragraph(`${like}${other} One row each ${(step * 1e3).toPrecision(3)} ms.${gapText}`)
}

function rowsOf({ plan, axle }: Log, channels: readonly LaidChannel[]): string[][] {
  const system = plan.units
  const row = (name: string, of: (channel: LaidChannel) => string): string[] => [name, ...channels.map(of)]
  const { engagement } = axle.model
  return [
    ['', ...channels.map(({ channel }) => channel.name)],
    row('recorded', ({ laid }) => formatMeasure(laid.figures.duration, 'time', system, { unit: true })),
    row('in droop', ({ laid }) => percent(laid.figures.share.droop)),
    row('in the coilover zone', ({ laid }) => percent(laid.figures.share.coilover)),
    row('in the engagement zone', ({ laid }) => percent(laid.figures.share.engagement)),
    ...(engagement === null
      ? []
      : [
          row('on the stop', ({ laid }) => percent(laid.figures.share.onStop)),
          row('hits on the stop', ({ laid }) => String(laid.figures.hits)),
          row('fastest into the stop', ({ laid }) =>
            formatMeasure(laid.figures.stopSpeedMax, 'shaftSpeed', system, { unit: true }),
          ),
        ]),
    row('bottoms', ({ laid }) => String(laid.figures.bottoms)),
    row('highest wheel', ({ laid }) => length(laid.figures.wheelMax, system)),
    row('lowest wheel', ({ laid }) => length(laid.figures.wheelMin, system)),
    row('mean wheel', ({ laid }) => length(laid.figures.wheelMean, system)),
    row('standing still at', ({ laid }) =>
      laid.figures.still === null ? 'never still' : length(laid.figures.still, system),
    ),
    row('asked for above static', ({ asked }) =>
      asked === null ? 'nothing' : `${length(asked.amplitude, system)}${asked.atLeast ? ' or more' : ''}`,
    ),
    ...STROKE_SHARES.map((share, i) =>
      row(`strokes over ${100 * share} % of the travel`, ({ strokes }) => `${strokes[i]!.toFixed(1)} a minute`),
    ),
    ...channels[0]!.laid.figures.beyond.map((place, i) =>
      row(`beyond ${place.label}`, ({ laid }) => percent(laid.figures.beyond[i]!.share)),
    ),
  ]
}

/** A figure of a run as it is compared; a count has no unit. */
function figureText(value: number | null, { quantity }: FigureDifference, system: System, sign = false): string {
  if (value === null) return '–'
  if (quantity !== null && quantity !== 'share') return formatMeasure(value, quantity, system, { unit: true, sign })
  const text = quantity === null ? value.toFixed(1) : percent(value)
  return sign && value > 0 ? `+${text}` : text
}

/** What changed since the run before the work. */
const sinceText = ({ since, plan: { units } }: Log): string[] =>
  since.flatMap(({ name, figures }) => [
    '\n',
    underlined(`${name}, before the work and now`, '─'),
    table([
      ['', 'before', 'now', 'change'],
      ...figures.map(figure => [
        figure.name.charAt(0).toLowerCase() + figure.name.slice(1),
        figureText(figure.before, figure, units),
        figureText(figure.after, figure, units),
        figureText(figure.change, figure, units, true),
      ]),
    ]),
  ])

/** How a channel's readings were taken. */
function channelText({ channel }: LaidChannel): string {
  const { name, measures, rideHeightAt, lowPass } = channel
  const zero =
    rideHeightAt === null
      ? 'zero is the recorded zero, taken as ride height: nobody picked a moment at ride height'
      : `zero is where it stood at ${rideHeightAt} s`
  const filter = lowPass === null ? 'nothing is filtered' : `what is faster than ${lowPass} Hz is taken away`
  return `“${name}” is ${measures} travel; ${zero}; ${filter}.`
}

/** A recorded run for people, in the plan's own units. */
export function logText(log: Log): string {
  const { plan, axle, channels, kept } = log
  const found = channels.flatMap(({ channel: { name }, findings }) =>
    findings.length === 0 ? [] : [`\n${paragraph(`Findings, ${name}`, '  ')}${findings.map(findingText).join('')}`],
  )
  const say = sayIn(plan.units)
  const seen = channels.map(({ channel: { name }, seen }) =>
    paragraph(`${channels.length > 1 ? `“${name}”: ` : ''}${engagementWords(seen, axle.model.engagement, say)}`),
  )
  return [
    paragraph(planTitle(plan)),
    fileText(log),
    paragraph(`${channels.map(channelText).join(' ')} Positions are wheel travel from ride height.`),
    ...(kept === null ? [] : [paragraph(`Kept beside the plan in “${kept}”, and named in the plan.`)]),
    '\n',
    underlined(`${AXLE_NAMES[axle.axle.id]}, recorded`, '═'),
    table(rowsOf(log, channels)),
    ...sinceText(log),
    '\n',
    ...seen,
    ...found,
    '\n',
    paragraph(`What a travel sensor does not tell. ${NOT_TOLD.join(' ')}`),
  ].join('')
}
