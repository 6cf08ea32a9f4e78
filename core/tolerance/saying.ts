import { formatMeasure } from '../units/format.ts'
import type { Quantity, System } from '../units/quantity.ts'
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
