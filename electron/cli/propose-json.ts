import type { CandidateFigures, Worked } from '../../core/changes/evaluate.ts'
import type { Proposals } from '../../core/changes/propose.ts'
import type { Axle, Setup } from '../../core/plan/schema.ts'

const figuresJson = (figures: CandidateFigures) => ({
  coiloverShare: figures.share,
  coiloverTravel: figures.coiloverTravel,
  landingDrop: figures.landing.drop,
  landingBy: figures.landing.by,
  shockLeft: figures.shockLeft,
  stopPressure: figures.stopPressure,
  bump: figures.bump,
  energy: figures.energy,
  stopForce: figures.stopForce,
})

const candidateJson = ({ changes, feasible, settles, figures, targets, dangers }: Worked) => ({
  feasible,
  changes,
  settles,
  figures: figuresJson(figures),
  targets: targets.map(({ id, wanted, got, met, inHand }) => ({ id, wanted, got, met, inHand })),
  dangers,
})

/**
 * Proposals for programs: SI units. The setup as it stands, then every candidate in the order it is worth looking at, then what cannot be built
 * and why; `changes` are made one after the other.
 */
export const proposeJson = (setup: Setup, axle: Axle, found: Proposals) => ({
  setup: setup.id,
  axle: axle.id,
  usualTargets: found.usualTargets,
  present: candidateJson(found.present),
  feasible: found.feasible,
  misses: found.misses,
  leftOut: found.leftOut,
  candidates: found.order.map(candidateJson),
  refused: found.refused.map(({ changes, reason }) => ({ changes, reason })),
})
