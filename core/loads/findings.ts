import type { Finding } from '../budget/results.ts'
import type { AxleId, Plan } from '../plan/schema.ts'
import { INCH } from '../units/constants.ts'
import { listed, type Say, sayIn } from '../units/saying.ts'
import type { AxleLedger, SetupLoads } from './ledger.ts'
import type { AxleUnderLoad } from './solve.ts'

/** A finding about loads: of one axle, or of the car as a whole. */
export interface LoadFinding extends Finding {
  readonly axle: AxleId | null
  /** The load it is about; null for all chosen ones together. */
  readonly load: string | null
}

/** With less than this left before the stop it is as good as on it, m: common practice. */
export const LITTLE_LEFT = INCH

const THE_CAR = { axle: null, field: 'antiRollRate', at: 0, where: 'drawing' } as const

function rollsOver(loads: string, load: string | null): LoadFinding {
  return {
    ...THE_CAR,
    id: load === null ? 'rolls-over' : `rolls-over-${load}`,
    severity: 'danger',
    load,
    message: `With ${loads}, it finds no balance below 20° of roll: it rolls over.`,
    remedy: 'A gentler corner, a lower center of gravity, a stiffer anti-roll bar or a wider track.',
    values: {},
  }
}

function needsTwoAxles(label: string, load: string): LoadFinding {
  return {
    ...THE_CAR,
    field: 'suspension',
    id: `braking-needs-two-axles-${load}`,
    severity: 'note',
    load,
    message: `“${label}”: braking moves weight from one axle to the other, and this setup has only one.`,
    remedy: 'Add the other axle.',
    values: {},
  }
}

/** More loads than this are counted, not named: a line must be read at a glance. */
const NAMED = 2

/** `“Crew”`, `“Crew” and “Hard corner” together`, `all 4 loads together`, `the 3 loads counted, together`. */
const inWords = (labels: readonly string[], ofAll: number): string =>
  labels.length > NAMED
    ? labels.length === ofAll
      ? `all ${ofAll} loads together`
      : `the ${labels.length} loads counted, together`
    : `${listed(labels.map(label => `“${label}”`))}${labels.length > 1 ? ' together' : ''}`

/** What the chosen loads together leave of one axle. */
function together(axle: AxleLedger, under: AxleUnderLoad, loads: string, say: Say): LoadFinding[] {
  const { balance, zone, bump } = axle
  const { beforeStop, beforeBump } = balance
  const base = { axle: axle.id, load: null, field: 'corner.stop.gap', where: 'budget' } as const
  const of = axle.id
  const { end } = under.state.outer
  if (beforeBump !== null && beforeBump <= 0)
    return [
      {
        ...base,
        id: 'loads-reach-full-bump',
        severity: 'danger',
        message: `With ${loads}, the outer ${of} wheel is at full bump${end > 0 ? `, with ${say(end, 'force')} on whatever ends it` : ''}.`,
        remedy: 'More preload, rate or charge, or less of them at once.',
        values: { force: end },
        at: bump,
      },
    ]
  if (beforeStop === null || zone <= 0 || axle.engagement === null) return []
  const at = axle.engagement
  if (beforeStop <= 0)
    return [
      {
        ...base,
        id: 'loads-reach-stop',
        severity: 'caution',
        message: `With ${loads}, the ${of} uses ${say(zone - beforeStop, 'length')}; its stop is met after ${say(zone, 'length')}.`,
        remedy: 'A longer gap, stiffer springs or less load.',
        values: { zone, beforeStop },
        at,
      },
    ]
  if (beforeStop < LITTLE_LEFT && axle.together.takes! > 0)
    return [
      {
        ...base,
        id: 'loads-leave-little',
        severity: 'caution',
        message: `With ${loads}, ${say(beforeStop, 'length')} is left before the ${of} stop.`,
        remedy: 'A longer gap, stiffer springs or less load.',
        values: { zone, beforeStop },
        at,
      },
    ]
  return []
}

function lifts(under: AxleUnderLoad, loads: string): LoadFinding[] {
  if (!under.state.lifted) return []
  return [
    {
      id: 'wheel-lifts',
      severity: 'note',
      axle: under.id,
      load: null,
      message: `With ${loads}, the inner ${under.id} wheel leaves the ground.`,
      remedy: 'Less roll rate on this axle or more on the other.',
      values: {},
      field: 'antiRollRate',
      at: under.state.inner.wheel,
      where: 'drawing',
    },
  ]
}

/**
 * What is worth saying of the loads on one setup: those that have no place, then what the chosen ones together leave of each axle.
 * @param say writes the values, if not in the plan's units
 */
export function loadFindings(
  plan: Plan,
  { loads, together: solved, ledger }: SetupLoads,
  say: Say = sayIn(plan.units),
): LoadFinding[] {
  const label = (id: string): string => ledger[0]!.rows.find(row => row.id === id)!.label
  const alone = loads.flatMap(({ id, solved: { outcome } }) =>
    outcome === 'rolls over'
      ? [rollsOver(inWords([label(id)], loads.length), id)]
      : outcome === 'needs two axles'
        ? [needsTwoAxles(label(id), id)]
        : [],
  )
  const { chosen } = ledger[0]!.together
  if (chosen.length === 0) return alone
  const all = inWords(chosen.map(label), loads.length)
  if (solved.outcome !== 'settles') return chosen.length === 1 ? alone : [...alone, rollsOver(all, null)]
  return [
    ...alone,
    ...solved.axles.flatMap((under, i) => [...together(ledger[i]!, under, all, say), ...lifts(under, all)]),
  ]
}
