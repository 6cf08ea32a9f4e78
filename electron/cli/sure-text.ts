import type { Axle, Plan } from '../../core/plan/schema.ts'
import { FIGURES } from '../../core/tolerance/figures.ts'
import { type LedgerSureness, ledgerSureness } from '../../core/tolerance/ledger-sureness.ts'
import { measurementName, planMeasurementName } from '../../core/tolerance/measurement-names.ts'
import type { RankedMeasurement } from '../../core/tolerance/ranking.ts'
import {
  ALL_BUT,
  chanceLines,
  chanceText,
  doubtText,
  MOST_RANKED,
  NO_END,
  noEndText,
  reachText,
  reasons,
  repeatText,
  TOLD,
} from '../../core/tolerance/saying.ts'
import { type AxleSureness, planUnusedTolerances, setupSureness } from '../../core/tolerance/steps.ts'
import type { FigureBand } from '../../core/tolerance/sureness.ts'
import { formatMeasure } from '../../core/units/format.ts'
import type { Quantity, System } from '../../core/units/quantity.ts'
import { AXLE_NAMES, planTitle, setupName } from './names.ts'
import { paragraph, underlined } from './paragraph.ts'
import { tellTrials } from './sure-progress.ts'
import { table } from './table.ts'
import { force } from './tape.ts'

const shown = (value: number, quantity: Quantity, system: System): string =>
  value === Infinity
    ? NO_END
    : quantity === 'force'
      ? force(value, system)
      : formatMeasure(value, quantity, system, { unit: true })

function bandRow({ name, quantity, value, low, high, present, why }: FigureBand, system: System): string[] {
  return [
    `${name}${why === null ? '' : ' *'}${present > ALL_BUT ? '' : ' †'}`,
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
    if (present > ALL_BUT) continue
    const share = chanceText(present)
    shares.set(share, [...(shares.get(share) ?? []), name])
  }
  return [...shares]
    .map(([share, names]) => paragraph(`† ${names.join('; ')}: ${share} of the trials have one.`, '  ', '    '))
    .join('')
}

function chancesText(sure: AxleSureness, ledger: LedgerSureness): string {
  const lines = chanceLines(sure, ledger)
  return lines.length === 0 ? '' : `  Chances\n${lines.map(line => paragraph(line, '  ', '    ')).join('')}`
}

/** What the loads take and leave, and how likely they reach what stops the wheel. */
function ledgerText(ledger: LedgerSureness, plan: Plan): string {
  const { trials, bands, ranking } = ledger
  const system = plan.units
  if (bands.length === 0) return ''
  const told = bands.filter(({ id }) => id !== 'place')
  return (
    table([
      ['  Loads', 'as it stands', '5 of 100', '95 of 100'],
      ...told.map(({ name, value, low, high }) => [
        name,
        ...[value, low, high].map(each => shown(each, 'length', system)),
      ]),
    ]) +
    paragraph(
      `From ${trials.toLocaleString('en-US')} trials of the whole car, what the loads ask for off by chance too. ${reachText(ledger)}`,
      '  ',
      '  ',
    ) +
    (ranking[0] === undefined
      ? ''
      : paragraph(
          `Measure first, for what they leave, ${doubtText(ranking[0].width, 'length', system)} now`,
          '  ',
          '    ',
        )) +
    rankedLines(ranking, 'length', system, path => planMeasurementName(path, plan))
  )
}

const rankedLines = (
  ranking: readonly RankedMeasurement[],
  quantity: Quantity,
  system: System,
  name: (path: string) => string,
): string =>
  ranking
    .slice(0, MOST_RANKED)
    .map(each => paragraph(`- ${name(each.measured.path)}${repeatText(each, quantity, system)}`, '    ', '      '))
    .join('')

/** Which measurements to repeat first, and what that buys. */
function rankingText({ rankings, figures }: AxleSureness, axle: Axle, system: System): string {
  const springs = axle.corner.springs.springs.map(({ name }) => name)
  const lines = rankings.flatMap(({ figure, ranking }) => {
    const of = FIGURES.find(({ id }) => id === figure)
    if (of === undefined || ranking.length === 0 || !figures.some(({ id }) => id === figure)) return []
    return [
      paragraph(`${of.name}, ${doubtText(ranking[0]!.width, of.quantity, system)} now`, '  ', '    '),
      rankedLines(ranking, of.quantity, system, path => measurementName(path, springs)),
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
    chancesText(sure, ledger),
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
