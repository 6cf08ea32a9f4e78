import type { UnitSystem } from '../plan/schema.ts'
import type { Say } from '../units/saying.ts'
import { nearestCharge, STEPS } from '../units/steps.ts'
import type { BeforeAfter, Restored, SpacerEffect } from './spacer-effect.ts'

const pair = ({ before, after }: BeforeAfter, say: (value: number) => string): string =>
  `${say(before)} becomes ${say(after)}`

/** Less or more, as a share of what it was. */
function by({ before, after }: BeforeAfter, say: Say): string {
  if (before === 0) return ''
  const share = after / before - 1
  return ` (${say(Math.abs(share), 'share')} ${share < 0 ? 'less' : 'more'})`
}

function restored(what: string, how: Restored, words: (value: number) => string, say: Say): string {
  if (!how.found) return `For the same ${what}: ${how.reason}`
  const rating = how.overRated === true ? ', above what the body is rated for' : ''
  return `For the same ${what}: ${words(how.value)}, closed in a hit then at ${say(how.pressure, 'pressure')}${rating}.`
}

const oilWords =
  (say: Say) =>
  (value: number): string =>
    value >= 0 ? `leave out ${say(value, 'volume')} of oil` : `put in ${say(-value, 'volume')} of oil`

/** What a spacer does, in sentences: what stays, what moves, what it costs at the same charge, and what brings that back. */
export function spacerWords(effect: SpacerEffect, units: UnitSystem, say: Say): string[] {
  const length = (value: number): string => say(value, 'length')
  const { engagement, charge, oil } = effect
  const met = ({ before, after }: BeforeAfter<number | null>): string =>
    before === null || after === null
      ? 'the stop is not met before something else ends the travel'
      : `engagement ${say(before, 'length', { sign: true })} becomes ${say(after, 'length', { sign: true })}`
  const charged = (value: number): string => {
    const exact = say(value, 'pressure')
    const [set, by] = [nearestCharge(value, units), STEPS[units].charge].map(each =>
      say(each, 'pressure', units === 'inch' ? {} : { digits: 1 }),
    )
    return exact === set ? `charge to ${exact}` : `charge to ${exact} (${set} to the nearest ${by})`
  }
  return [
    `What stays: the closed position, ${length(effect.closesAt)} along the stop from ride height.`,
    `What moves: ${met(engagement)}; the coilover’s share ${pair(effect.share, value => say(value, 'share'))}; stroke ${pair(effect.stroke, length)}; gap ${pair(effect.gap, length)}; gas ${pair(effect.gasVolume, value => say(value, 'volume'))}.`,
    `What it costs at the same charge: closed in a hit its force ${pair(effect.force, value => say(value, 'force'))}${by(effect.force, say)}, the energy it has taken ${pair(effect.energy, value => say(value, 'energy'))}${by(effect.energy, say)}.`,
    restored('force at closing', charge.sameForce, charged, say),
    restored('energy', charge.sameEnergy, charged, say),
    restored('force with the same charge', oil.sameForce, oilWords(say), say),
    restored('energy with the same charge', oil.sameEnergy, oilWords(say), say),
  ]
}
