import type { Axle, Plan } from '../../core/plan/schema.ts'
import { FIGURES } from '../../core/tolerance/figures.ts'
import { type LedgerSureness, ledgerSureness } from '../../core/tolerance/ledger-sureness.ts'
import { measurementName, planMeasurementName } from '../../core/tolerance/measurement-names.ts'
import type { RankedMeasurement } from '../../core/tolerance/ranking.ts'
import { chanceText, doubtText, NO_END, noEndText, reasons, TOLD } from '../../core/tolerance/saying.ts'
import { type AxleSureness, planUnusedTolerances, setupSureness } from '../../core/tolerance/steps.ts'
import type { FigureBand } from '../../core/tolerance/sureness.ts'
import { formatMeasure } from '../../core/units/format.ts'
import type { Quantity, System } from '../../core/units/quantity.ts'
import { AXLE_NAMES, planTitle, setupName } from './names.ts'
import { paragraph, underlined } from './paragraph.ts'
import { tellTrials } from './sure-progress.ts'
import { table } from './table.ts'
import { force } from './tape.ts'

/** Rankings are told as far as this many measurements. */
const RANKED = 3

const shown = (value: number, quantity: Quantity, system: System): string =>
  value === Infinity
    ? NO_END
    : quantity === 'force'
      ? force(value, system)
      : formatMeasure(value, quantity, system, { unit: true })

/** Trials without such a figure are told of from this share on. */
const MISSING = 0.005

function bandRow({ name, quantity, value, low, high, present, why }: FigureBand, system: System): string[] {
  return [
    `${name}${why === null ? '' : ' *'}${present > 1 - MISSING ? '' : ' †'}`,
    shown(value, quantity, system),
    shown(low, quantity, system),
    shown(high, quantity, system),
  ]
}

const whyText = (figures: readonly FigureBand[]): string =>
  reasons(figures)
    .map(reason => paragraph(`* ${reason}`, '  ', '    '))
    .join('')

function missingText(figures: readonly FigureBand[]): string {
  const shares = new Map<string, string[]>()
  for (const { name, present } of figures) {
    if (present > 1 - MISSING) continue
    const share = chanceText(present)
    shares.set(share, [...(shares.get(share) ?? []), name])
  }
  return [...shares]
    .map(([share, names]) => paragraph(`† ${names.join('; ')}: ${share} of the trials have one.`, '  ', '    '))
    .join('')
}

function chancesText({ findings, regimes }: AxleSureness): string {
  const mixed = regimes.filter(({ chances }) => chances.length > 1)
  const lines = [
    ...findings.map(({ id, chance }) => `${id.replaceAll('-', ' ')}: ${chanceText(chance)}`),
    ...mixed.map(
      ({ id, chances }) => `${id}: ${chances.map(({ name, chance }) => `${name} ${chanceText(chance)}`).join(', ')}`,
    ),
  ]
  return lines.length === 0 ? '' : `  Chances\n${lines.map(line => paragraph(line, '  ', '    ')).join('')}`
}

/** What the loads take and leave, and how likely they reach what stops the wheel. */
function ledgerText({ trials, bands, reachStop, reachBump, ranking }: LedgerSureness, plan: Plan): string {
  const system = plan.units
  if (bands.length === 0) return ''
  const told = bands.filter(({ id }) => id !== 'place')
  const reached =
    reachStop === null ? '' : `reach the stop in ${chanceText(reachStop)} of them${reachBump === null ? '' : ' and '}`
  const ended = reachBump === null ? '' : `${reachStop === null ? 'reach ' : ''}full bump in ${chanceText(reachBump)}`
  const among = Math.min(...told.map(({ present }) => present))
  return (
    table([
      ['  Loads', 'as it stands', '5 of 100', '95 of 100'],
      ...told.map(({ name, value, low, high }) => [
        name,
        ...[value, low, high].map(each => shown(each, 'length', system)),
      ]),
    ]) +
    paragraph(
      `From ${trials.toLocaleString('en-US')} trials of the whole car, what the loads ask for off by chance too. Together they ${reached}${ended}${among > 1 - MISSING ? '' : `, where there is a place for the wheels: in ${chanceText(among)}`}.`,
      '  ',
      '  ',
    ) +
    (ranking.length === 0
      ? ''
      : paragraph(
          `Measure first, for what they leave, ${doubtText(ranking[0]!.width, 'length', system)} now`,
          '  ',
          '    ',
        )) +
    ranking
      .slice(0, RANKED)
      .map(each => {
        const name = planMeasurementName(each.measured.path, plan)
        return paragraph(rankedText(each, 'length', name, system), '    ', '      ')
      })
      .join('')
  )
}

function rankedText(
  { measured, share, narrowed }: RankedMeasurement,
  quantity: Quantity,
  name: string,
  system: System,
): string {
  const how = measured.source === 'assumed' ? 'measuring it' : 'once more with care'
  const said = `${name}${measured.source === 'assumed' ? ', assumed' : ''}`
  return `- ${said}: ${chanceText(share)} of the doubt; ${how} leaves ${doubtText(narrowed, quantity, system)}`
}

/** Which measurements to repeat first, and what that buys. */
function rankingText({ rankings, figures }: AxleSureness, axle: Axle, system: System): string {
  const springs = axle.corner.springs.springs.map(({ name }) => name)
  const lines = rankings.flatMap(({ figure, ranking }) => {
    const of = FIGURES.find(({ id }) => id === figure)
    if (of === undefined || ranking.length === 0 || !figures.some(({ id }) => id === figure)) return []
    return [
      paragraph(`${of.name}, ${doubtText(ranking[0]!.width, of.quantity, system)} now`, '  ', '    '),
      ...ranking
        .slice(0, RANKED)
        .map(each =>
          paragraph(
            rankedText(each, of.quantity, measurementName(each.measured.path, springs), system),
            '    ',
            '      ',
          ),
        ),
    ]
  })
  return lines.length === 0 ? '' : `  Measure first, for the\n${lines.join('')}`
}

function axleText(sure: AxleSureness, ledger: LedgerSureness, axle: Axle, plan: Plan): string {
  const system = plan.units
  const told = TOLD.flatMap(id => sure.figures.filter(figure => figure.id === id))
  const figures = [...told, ...sure.figures.filter(({ id }) => !TOLD.includes(id))]
  const noEnd = noEndText(sure)
  const parts = [
    table([['', 'as it stands', '5 of 100', '95 of 100'], ...figures.map(figure => bandRow(figure, system))]) +
      whyText(figures) +
      (noEnd === null ? '' : paragraph(noEnd, '  ', '    ')) +
      missingText(figures),
    ledgerText(ledger, plan),
    chancesText(sure),
    rankingText(sure, axle, system),
  ]
  return `${AXLE_NAMES[sure.axle]}, one wheel\n\n${parts.filter(part => part !== '').join('\n')}`
}

/**
 * How sure the budget of a plan is, for people, in the plan's own units.
 * @param tell hears how far it has come
 */
export function sureText(plan: Plan, tell: (line: string) => void): string {
  const setups = plan.setups.map(setup => {
    const { axles } = setupSureness(plan, setup, {}, tellTrials(setup, tell))
    const ledgers = ledgerSureness(plan, setup, undefined, {}, tellTrials(setup, tell, 'trial of the loads'))
    const texts = axles.map((sure, i) => axleText(sure, ledgers[i]!, setup.axles[i]!, plan))
    return { trials: axles[0]!.trials, text: `${underlined(setupName(setup), '═')}\n${texts.join('\n')}` }
  })
  const unused = planUnusedTolerances(plan)
  return [
    paragraph(planTitle(plan)) +
      paragraph(
        `How sure the budget is: ${setups[0]!.trials.toLocaleString('en-US')} trials, each with every measurement off by chance, within its tolerance.`,
      ),
    ...setups.map(({ text }) => text),
    ...(unused.length === 0
      ? []
      : [paragraph(`Tolerances for measurements that are nowhere in the plan: ${unused.join(', ')}.`)]),
  ].join('\n')
}
