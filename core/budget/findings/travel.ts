import { INCH } from '../../units/constants.ts'
import type { Finding } from '../results.ts'
import type { Rule } from './rule.ts'

/** Less bump travel than this is none, m. */
const NO_TRAVEL = INCH / 16

export const noBumpTravel: Rule = ({ model, figures, say }): Finding | null => {
  if (figures.travel.bump >= NO_TRAVEL) return null
  return {
    id: 'no-bump-travel',
    severity: 'danger',
    message: `At ride height the wheel has ${figures.travel.bump === 0 ? 'no bump travel' : `${say(figures.travel.bump, 'length', { decimal: true, digits: 2 })} of bump travel`}: ${figures.travel.bumpLimitedBy} ends it.`,
    remedy: 'Tape gap and shaft showing again; if they are right, it must sit higher.',
    values: { bump: figures.travel.bump },
    field: 'corner.shock.showing',
    at: model.bump,
    where: 'drawing',
  }
}

/** A pad or shaft that moves the wrong way as the wheel rises: a sign slipped, or a part is drawn on the wrong side. */
export const worksBackwards: Rule = ({ model }): Finding | null => {
  const { shockRatio, stopRatio } = model.linkage.at(0)
  const stop = model.corner.stop !== null && stopRatio <= 0
  if (shockRatio > 0 && !stop) return null
  const part = shockRatio > 0 ? 'The pad moves away from the stop' : 'The shock opens'
  return {
    id: 'works-backwards',
    severity: 'danger',
    message: `${part} as the wheel rises: the budget cannot be right.`,
    remedy:
      shockRatio > 0
        ? 'Check the stop axis: it points the way the pad moves in bump.'
        : 'Check the mounts of the shock.',
    values: { shockRatio, stopRatio },
    field: 'corner.linkage',
    at: 0,
    where: 'drawing',
  }
}
