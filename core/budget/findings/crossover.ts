import { INCH } from '../../units/constants.ts'
import type { Finding } from '../results.ts'
import { type Rule, SMALLEST } from './rule.ts'

/** Closer to the touch than this a change of spring rate falls together with it, m: common practice. */
const TOGETHER = INCH / 2

export const twoRateChanges: Rule = ({ model, figures, say, some }): Finding | null => {
  const { engagement, crossover } = figures
  const springs = model.corner.springs.springs
  if (engagement === null || springs.length < 2 || engagement.wheel >= model.bump) return null
  const touch = Math.max(engagement.wheel, model.droop)
  const name = springs[0]!.name === '' ? 'tender' : springs[0]!.name
  if (crossover === null)
    return {
      id: 'tender-working-at-engagement',
      severity: 'note',
      message: `The ${name} is still working when the stop is met, and never crosses over.`,
      remedy: 'Set the divider nearer its ring.',
      values: { engagement: engagement.wheel },
      field: 'corner.springs.crossover.gap',
      at: touch,
      where: 'forces',
    }
  if (crossover <= touch - TOGETHER) return null
  const apart = Math.abs(crossover - touch)
  const inside = crossover > touch
  return {
    id: 'crossover-at-engagement',
    severity: 'caution',
    message:
      apart < SMALLEST
        ? 'Crossover comes right at engagement: two rate changes together.'
        : inside
          ? `The ${name} still works at engagement: crossover comes ${say(crossover - touch, 'length')} later, two rate changes together.`
          : `Crossover comes ${say(touch - crossover, 'length')} before engagement: two rate changes together.`,
    remedy: `Set the divider ${some((crossover - touch + TOGETHER) * Math.abs(model.linkage.at(touch).shockRatio), 'length')} nearer its ring.`,
    values: { crossover, engagement: engagement.wheel },
    field: 'corner.springs.crossover.gap',
    at: crossover,
    where: 'forces',
  }
}
