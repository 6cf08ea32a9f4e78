import { formatMeasure } from '../units/format.ts'
import type { Quantity, System } from '../units/quantity.ts'
import type { LedgerSureness } from './ledger-sureness.ts'
import type { RankedMeasurement } from './ranking.ts'
import { OUT_OF_GAS } from './regimes.ts'
import type { FigureBand, Sureness } from './sureness.ts'

/** A chance as people say it: certain and impossible only where no trial says otherwise. */
export function chanceText(chance: number): string {
  if (chance === 1) return '100 %'
  if (chance >= 0.995) return 'over 99 %'
  return chance < 0.005 ? 'under 1 %' : `${Math.round(chance * 100)} %`
}

/** Half a width: a doubt is not read off a tape, so in inches it is a decimal. */
export function doubtText(width: number, quantity: Quantity, system: System): string {
  if (width === Infinity) return NO_END
  const digits = quantity === 'length' ? { digits: system === 'inch' ? 2 : 1 } : {}
  return `±${formatMeasure(width / 2, quantity, system, { unit: true, ...digits })}`
}

/** Rankings are told as far as this many measurements. */
export const MOST_RANKED = 3

/** What repeating a measurement buys, after its name: `, assumed: 96 % of the doubt; measuring it leaves ±0.5 in.` */
export function repeatText({ measured, share, narrowed }: RankedMeasurement, quantity: Quantity, system: System) {
  const assumed = measured.source === 'assumed'
  return `${assumed ? ', assumed' : ''}: ${chanceText(share)} of the doubt; ${assumed ? 'measuring it' : 'once more with care'} leaves ${doubtText(narrowed, quantity, system)}.`
}

/** How likely the counted loads take it to its stop and to full bump; empty where no trial has a place for the wheels. */
export function reachText({ reachStop, reachBump, bands }: LedgerSureness): string {
  const reached = [
    ...(reachStop === null ? [] : [`the stop in ${chanceText(reachStop)}`]),
    ...(reachBump === null ? [] : [`full bump in ${chanceText(reachBump)}`]),
  ]
  if (reached.length === 0) return ''
  const among = Math.min(...bands.map(({ present }) => present))
  return `Together they reach ${reached.join(' and ')} of the trials${among > ALL_BUT ? '' : `, where there is a place for the wheels: in ${chanceText(among)}`}.`
}

/** Every finding with its chance, those of the loads too, and what ends the travel, how it rests and where crossover falls where that is not always the same. */
export const chanceLines = (
  { findings, regimes }: Pick<Sureness, 'findings' | 'regimes'>,
  ledger: Pick<LedgerSureness, 'findings'> | null,
): string[] => [
  ...[...findings, ...(ledger?.findings ?? [])].map(
    ({ id, chance }) => `${id.replaceAll('-', ' ')}: ${chanceText(chance)}`,
  ),
  ...regimes.flatMap(({ id, chances }) =>
    chances.length > 1
      ? [`${id}: ${chances.map(({ name, chance }) => `${name} ${chanceText(chance)}`).join(', ')}`]
      : [],
  ),
]

/** Trials without such a figure are told of where fewer than this have one. */
export const ALL_BUT = 0.995

/** What a band without an upper end is called in the place of it. */
export const NO_END = 'no end'

/** Why some bands have no end, where any has none. */
export function noEndText({ figures, regimes }: Pick<Sureness, 'figures' | 'regimes'>): string | null {
  if (figures.every(({ high }) => high !== Infinity)) return null
  const chance = regimes.find(({ id }) => id === 'gas')?.chances.find(({ name }) => name === OUT_OF_GAS)?.chance ?? 0
  return `${NO_END.replace(/^./, letter => letter.toUpperCase())}: in ${chanceText(chance)} of the trials a stop or shock has less than a tenth of its gas left by full bump and is as good as solid. Measure its gas volume.`
}

/** The figures told first, in the order they are read. */
export const TOLD: readonly string[] = [
  'engagement.wheel',
  'engagement.share',
  'travel.bump',
  'travel.droop',
  'static.position',
  'beforeStop',
  'static.stopForce',
  'mainSpring.leftAtEngagement',
  'mainSpring.leftAtBump',
  'shockLeftAtBump',
  'ride.motionRatio',
  'ride.wheelRate',
  'ride.frequency',
  'bump.forceSlow',
  'bump.forceFast',
  'bump.stopForceFast',
]

/** Why slopes alone say something else, once for each reason. */
export function reasons(figures: readonly FigureBand[]): string[] {
  const byReason = new Map<string, string[]>()
  for (const { name, why } of figures) if (why !== null) byReason.set(why, [...(byReason.get(why) ?? []), name])
  return [...byReason].map(([why, names]) => `${names.join('; ')}: slopes alone give another band, because ${why}.`)
}
