import type { Finding } from '../budget/results.ts'
import { cornerModel } from '../corner/corner.ts'
import { restingPosition } from '../corner/static-position.ts'
import { INCH } from '../units/constants.ts'
import type { Say } from '../units/saying.ts'
import type { AxleLedger, LedgerRow, LoadResult } from './ledger.ts'
import type { ChangeKind } from './levers.ts'
import type { OneChange } from './one-change.ts'
import type { AxleModel } from './setup-model.ts'

/** Less wheel travel than this is no cause of anything, m: a tape's sixteenth. */
const LEAST_CAUSE = INCH / 16

/** One of the things that put it there. */
export interface CauseFinding extends Finding {
  /** In a word or two: `gap`, `sag`, a load's name. */
  readonly label: string
  /** Wheel travel it costs, m. */
  readonly size: number
}

interface Cause {
  readonly id: string
  readonly label: string
  /** Wheel travel it costs, m. */
  readonly size: number
  readonly message: string
  readonly field: string
  readonly at: number
  readonly where: Finding['where']
  /** The change that undoes it, and the words when none does. */
  readonly mend: ChangeKind
  readonly otherwise: string
}

/** The stop meets the pad before the share asked for is used. */
function gap({ model }: AxleModel, share: number, say: Say): Cause[] {
  const { engagement, bump, corner } = model
  if (engagement === null || corner.stop === null) return []
  const wanted = share * bump
  const { stopRatio } = model.linkage.at(Math.max(0, engagement))
  const met =
    corner.stop.gap < 0
      ? `At ride height the stop is already pushed in ${say(-corner.stop.gap, 'length')}:`
      : `The gap of ${say(corner.stop.gap, 'length')} is ${say(engagement, 'length')} of wheel travel at a motion ratio of ${say(stopRatio, 'ratio')}:`
  return [
    {
      id: 'why-gap',
      label: 'gap',
      size: wanted - engagement,
      message: `${met} ${say(share, 'share')} of bump would be ${say(wanted, 'length')}.`,
      field: 'corner.stop.gap',
      at: engagement,
      where: 'stop',
      mend: 'gap',
      otherwise: 'Move the stop away from the pad.',
    },
  ]
}

/** It rests lower than the tape said, or would. */
function sag({ model, rest, weight }: AxleModel, say: Say): Cause[] {
  const lacks = weight - model.forces(0, 'slow').total
  return [
    {
      id: 'why-sag',
      label: 'sag',
      size: rest,
      message: `It sags ${say(rest, 'length')} below the taped ride height, where the springs hold ${say(lacks, 'force')} too little.`,
      field: 'corner.springs.preload',
      at: rest,
      where: 'forces',
      mend: 'preload',
      otherwise: 'More preload or rate, or weigh it and tape it again.',
    },
  ]
}

/** Springs that would sink past the stop if it were not there. */
function weakSprings({ model, rest, weight }: AxleModel, say: Say): Cause[] {
  const { engagement, corner } = model
  if (engagement === null || rest < engagement) return []
  const free = cornerModel({ ...corner, stop: null })
  const alone = restingPosition(free, weight)
  const holds = alone < free.bump
  const short = weight - model.forces(Math.max(engagement, model.droop), 'slow', 'below').total
  return [
    {
      id: 'why-springs',
      label: 'springs too soft',
      size: alone - engagement,
      message: `Preload or rate is too low: at the touch the springs carry ${say(short, 'force')} too little${holds ? ` and without the stop it would sit ${say(alone - engagement, 'length')} lower` : ', and nothing but the stop holds it up'}.`,
      field: 'corner.springs.preload',
      at: engagement,
      where: 'main',
      mend: 'rate',
      otherwise: 'Stiffer springs with more preload.',
    },
  ]
}

/** Shock gas that carries weight only while it is warm and has not leaked. */
function gas({ model, rest, weight }: AxleModel, say: Say): Cause[] {
  const { corner } = model
  const carried = model.forces(rest, 'slow').gas
  if (corner.shock.gas === null || carried <= 0) return []
  const without = cornerModel({ ...corner, shock: { ...corner.shock, gas: null } })
  const drop = restingPosition(without, weight, rest) - rest
  return [
    {
      id: 'why-gas',
      label: 'shock gas',
      size: drop,
      message: `Shock gas carries ${say(carried, 'force')}, ${say(carried / weight, 'share')} of the weight: cold or leaked down it sits up to ${say(drop, 'length')} lower.`,
      field: 'corner.shock.gas.charge',
      at: rest,
      where: 'shock',
      mend: 'charge',
      otherwise: 'Let springs carry it: more preload, and charge only against fade.',
    },
  ]
}

const LOAD_CAUSES = {
  payload: { does: 'lower', field: 'corner.springs.springs.0.rate', mend: 'rate' },
  cornering: { does: 'up on the outer wheel', field: 'antiRollRate', mend: 'gap' },
  braking: { does: 'of dive', field: 'corner.springs.springs.0.rate', mend: 'rate' },
  terrain: { does: 'asked for', field: 'corner.stop.gap', mend: 'gap' },
} as const

/** What a chosen load takes on its own. */
function ofLoad({ id, kind, label, takes, to }: LedgerRow, loads: readonly LoadResult[], say: Say): Cause[] {
  if (takes === null || to === null) return []
  const { does, field, mend } = LOAD_CAUSES[kind]
  const solved = loads.find(load => load.id === id)?.solved
  const roll =
    solved?.outcome === 'settles' && solved.roll !== 0 ? ` at ${say(Math.abs(solved.roll), 'angle')} of roll` : ''
  return [
    {
      id: `why-${kind}-${id}`,
      label: `“${label}”`,
      size: takes,
      message: `${label}: ${say(takes, 'length')} ${does}${roll}.`,
      field,
      at: to,
      where: 'budget',
      mend,
      otherwise: kind === 'cornering' ? 'More anti-roll rate.' : `Stiffer springs, or less of “${label}”.`,
    },
  ]
}

function remedy({ mend, otherwise }: Cause, changes: readonly OneChange[], say: Say): string {
  const change = changes.find(({ kind, to }) => kind === mend && to !== null)
  if (change === undefined || change.to === null) return otherwise
  return `${change.name.charAt(0).toUpperCase()}${change.name.slice(1)} ${say(change.now, change.quantity)} to ${say(change.to, change.quantity)} alone would do.`
}

/** What put an axle on or near its stop, as findings, the largest first; `values.size` is wheel travel in m. */
export function causesOf(
  axle: AxleModel,
  { rows, together }: AxleLedger,
  loads: readonly LoadResult[],
  share: number,
  changes: readonly OneChange[],
  say: Say,
): CauseFinding[] {
  const causes = [
    ...gap(axle, share, say),
    ...sag(axle, say),
    ...weakSprings(axle, say),
    ...gas(axle, say),
    ...rows.filter(({ id }) => together.chosen.includes(id)).flatMap(row => ofLoad(row, loads, say)),
  ]
  return causes
    .filter(({ size }) => size >= LEAST_CAUSE)
    .sort((a, b) => b.size - a.size)
    .map(cause => ({
      id: cause.id,
      label: cause.label,
      size: cause.size,
      severity: 'note',
      message: cause.message,
      values: { size: cause.size },
      remedy: remedy(cause, changes, say),
      field: cause.field,
      at: Math.min(axle.model.bump, Math.max(axle.model.droop, cause.at)),
      where: cause.where,
    }))
}
