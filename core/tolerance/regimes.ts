import type { AxleBudget } from '../budget/results.ts'

/** What a trial's axle does differently in kind, not by degree: where figures have a kink between one and the other. */
export interface Regime {
  readonly id: 'full bump' | 'full droop' | 'at rest' | 'engagement' | 'crossover' | 'gas'
  /** Why a figure that hangs on this does not follow its slopes. */
  readonly why: string
  readonly of: (axle: AxleBudget, solid: boolean) => string
}

/** Positions closer than this are one place, m: the touch is known to 1e-12. */
const NEAR = 1e-9

/** How a trial is called that rests on the step of its stop, and one that has pushed it in. */
export const PARKED = 'parked on the step of its stop'
export const ON_STOP = 'on its stop'

function touchAtRest({ engagement, static: { position } }: AxleBudget): string {
  if (engagement === null) return 'no stop is met'
  if (Math.abs(position - engagement.wheel) < NEAR) return PARKED
  return position > engagement.wheel ? ON_STOP : 'clear of its stop'
}

function crossoverAmong({ crossover, engagement, static: { position }, travel }: AxleBudget): string {
  if (crossover === null) return 'no crossover in the travel'
  if (crossover <= -travel.droop) return 'crossed over from full droop'
  if (crossover <= Math.min(0, position)) return 'crossed over at rest'
  if (crossover <= Math.max(0, position)) return 'crosses over between rest and ride height'
  return engagement === null || crossover <= engagement.wheel
    ? 'crossover before engagement'
    : 'crossover after engagement'
}

const engagementAmong = ({ engagement }: AxleBudget): string => {
  if (engagement === null) return 'no stop is met'
  return engagement.wheel > 0 ? 'met above ride height' : 'met at ride height already'
}

/** Figures at the end of the stroke: where the gas runs out by then they have no end. */
export const ON_GAS = /^(bump\.|zones\.engagement\.energy)/

/** What a trial is called where a stop or shock is as good as solid by full bump. */
export const OUT_OF_GAS = 'runs out before full bump'

export const REGIMES: readonly Regime[] = [
  {
    id: 'full bump',
    why: 'what ends bump is not always the same',
    of: ({ travel }) => travel.bumpLimitedBy,
  },
  {
    id: 'full droop',
    why: 'what ends droop is not always the same',
    of: ({ travel }) => travel.droopLimitedBy,
  },
  {
    id: 'at rest',
    why: 'it sometimes rests on its stop and sometimes clear of it',
    of: touchAtRest,
  },
  {
    id: 'engagement',
    why: 'the stop is sometimes met at ride height already and sometimes above it',
    of: engagementAmong,
  },
  {
    id: 'crossover',
    why: 'crossover falls on either side of where this is taken',
    of: crossoverAmong,
  },
  {
    id: 'gas',
    why: 'in some trials the gas runs out before full bump, and it has no end',
    of: (_, solid) => (solid ? OUT_OF_GAS : 'enough to close on'),
  },
]
