import { formatMeasure } from '../../core/units/format.ts'
import { findingText } from './finding-text.ts'
import type { LaidChannel, Log } from './log-command.ts'
import { AXLE_NAMES, planTitle } from './names.ts'
import { paragraph, underlined } from './paragraph.ts'
import { table } from './table.ts'
import { length } from './tape.ts'

const percent = (share: number): string => `${(100 * share).toFixed(1)} %`

const DELIMITERS = { ',': 'commas', ';': 'semicolons', '\t': 'tabs', '|': 'upright bars', ' ': 'spaces' } as const

/** What the file is like, and what was wrong with it. */
function fileText({ table: { shape, rows, faults }, encoding, channels }: Log): string {
  const counted: readonly (readonly [number, string])[] = [
    [faults.unreadable, 'unreadable'],
    [faults.repeated, 'at the time of the row before'],
    [faults.backward, 'backward in time'],
    [faults.missing, 'values missing'],
  ]
  const wrong = counted.flatMap(([count, what]) => (count === 0 ? [] : [`${count} ${what}`]))
  const { step, gaps, lost } = channels[0]!.laid.run
  const gapText = gaps === 0 ? '' : ` ${gaps} ${gaps === 1 ? 'gap' : 'gaps'}, ${lost.toFixed(1)} s in all, not counted.`
  return paragraph(
    `Cells between ${DELIMITERS[shape.delimiter]}, decimal ${shape.decimalComma ? 'comma' : 'point'}, ${encoding}, ${shape.headerRows} head ${shape.headerRows === 1 ? 'line' : 'lines'}. ${rows} rows, one each ${(step * 1e3).toPrecision(3)} ms. ${wrong.length === 0 ? 'None left out.' : `Left out: ${wrong.join(', ')}.`}${gapText}`,
  )
}

function rowsOf({ plan, axle }: Log, channels: readonly LaidChannel[]): string[][] {
  const system = plan.units
  const row = (name: string, of: (channel: LaidChannel) => string): string[] => [name, ...channels.map(of)]
  const { engagement } = axle.model
  return [
    ['', ...channels.map(({ name }) => name)],
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
    ...channels[0]!.laid.figures.beyond.map((place, i) =>
      row(`beyond ${place.label}`, ({ laid }) => percent(laid.figures.beyond[i]!.share)),
    ),
  ]
}

/** A recorded run for people, in the plan's own units. */
export function logText(log: Log): string {
  const { plan, axle, channels, lowPass, zeroPicked } = log
  const measured = channels.map(({ name, measures }) => `“${name}” is ${measures} travel`).join(', ')
  const zero = zeroPicked
    ? 'Zero is where it stood at ride height.'
    : 'Zero is the recorded zero, taken as ride height: nobody picked a moment at ride height.'
  const filter = lowPass === null ? 'Nothing is filtered.' : `What is faster than ${lowPass} Hz is taken away.`
  const found = channels.flatMap(({ name, laid }) =>
    laid.findings.length === 0
      ? []
      : [`\n${paragraph(`Findings, ${name}`, '  ')}${laid.findings.map(findingText).join('')}`],
  )
  return [
    paragraph(planTitle(plan)),
    fileText(log),
    paragraph(`${measured}. ${zero} ${filter} Positions are wheel travel from ride height.`),
    '\n',
    underlined(`${AXLE_NAMES[axle.axle.id]}, recorded`, '═'),
    table(rowsOf(log, channels)),
    ...found,
    '\n',
    paragraph(
      'A travel sensor tells where the wheel was against the chassis, not the forces, the road, or whether a slow stop had come all the way out; one shaft of a solid axle is taken as both.',
    ),
  ].join('')
}
