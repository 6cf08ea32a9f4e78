import { nitrogenFacts, nitrogenWords } from '../../core/changes/nitrogen-facts.ts'
import { type Shelf, tubesFor } from '../../core/changes/shelf.ts'
import { isHydraulic } from '../../core/changes/stop-in-corner.ts'
import type { Corner, Plan } from '../../core/plan/schema.ts'
import { cutList } from '../../core/spacer/cut-list.ts'
import { makingWords, strengthWords } from '../../core/spacer/making.ts'
import { type Caution, LOCAL_RULES, SHOP_CAUTIONS } from './cautions.ts'
import { axleName, titled } from './customer-facts.ts'
import { othersChanged, rows, same } from './differences.ts'
import { type Side, sayer } from './figures.ts'

export interface ShopRow {
  readonly name: string
  readonly before: string
  readonly after: string
  readonly changed: boolean
  /** Either way; empty where nothing is to be held. */
  readonly tolerance: string
}

/** Everything the shop sheet says, in words. */
export interface ShopFacts {
  readonly title: string
  readonly rules: string
  readonly rows: readonly ShopRow[]
  /** Cut list, tube, bore, mass, oil, strength; empty when there is no spacer to make. */
  readonly cut: readonly string[]
  readonly charge: readonly string[]
  readonly order: readonly string[]
  readonly results: readonly string[]
  readonly cautions: readonly Caution[]
}

const NO_CUT = 'No tube to cut: this change has no spacer, or it is in already.'

/** Tubes nearer in diameter than this are one size, m. */
const SAME_TUBE = 2.5e-4

/** The steel most tube of this kind is drawn from; its yield is the middle one of the three. */
const STEEL = '1020'

function cut(plan: Plan, before: Corner, after: Corner, shelf: Shelf): string[] {
  const say = sayer(plan)
  if (!isHydraulic(after) || after.stop.spacer === undefined) return [NO_CUT]
  const spacer = after.stop.spacer
  const was = before.stop?.kind === 'hydraulic' ? before.stop.spacer : undefined
  if (same(was, spacer)) return [NO_CUT]
  const { hot } = nitrogenFacts(after.stop)
  const stock = tubesFor(after.stop, shelf)
  const hottest = hot.real ?? hot.ideal
  const alike = stock.filter(({ outerDiameter }) => Math.abs(outerDiameter - spacer.outerDiameter) < SAME_TUBE)
  const asked = cutList(after, spacer.length, alike, STEEL, hottest)
  const made = asked.ok ? asked : cutList(after, spacer.length, stock, STEEL, hottest)
  if (!made.ok) return ['No stock tube runs on this shaft and in this body: measure both again before anything is cut.']
  const { list } = made
  const errors = list.errors.flatMap(({ off, moves }) =>
    moves === null
      ? []
      : [
          `${say(Math.abs(off), 'length', { decimal: true, digits: 3 })} ${off < 0 ? 'short' : 'long'} moves engagement ${say(moves, 'length', { decimal: true, digits: 3, sign: true })}`,
        ],
  )
  const strength = strengthWords(list, say)
  const { enough } = list.strength
  return [
    // Before anything is cut.
    ...(enough ? [] : [strength]),
    ...(asked.ok ? [] : ['No stock tube of the outside in the plan runs here; this size does.']),
    ...makingWords(list, say),
    ...(errors.length === 0 ? [] : [`A cut ${errors.join('; ')}.`]),
    ...(enough ? [strength] : []),
  ]
}

function charge(plan: Plan, after: Corner): string[] {
  if (!isHydraulic(after)) return [after.stop === null ? 'There is no stop to charge.' : 'No gas in this stop.']
  const say = sayer(plan)
  return [
    `Charge cold: ${say(after.stop.charge, 'pressure')} of dry nitrogen with the stop at full length.`,
    ...nitrogenWords(nitrogenFacts(after.stop), plan.units, say),
  ]
}

function order(before: Corner, after: Corner): string[] {
  const stop = !same(before.stop, after.stop)
  const springs = !same(before.springs, after.springs)
  const [wasGas, isGas] = [before.stop?.kind === 'hydraulic', after.stop?.kind === 'hydraulic']
  const opened =
    before.stop?.kind === 'hydraulic' &&
    after.stop?.kind === 'hydraulic' &&
    (!same(before.stop.spacer, after.stop.spacer) || before.stop.gasVolume !== after.stop.gasVolume)
  return [
    'Measure and write down everything in the table first; photograph both sides.',
    'Chock the wheels, lift, set it on rated stands, wheels hanging.',
    ...(springs ? ['Back the preload off until the springs are loose before a bolt is turned.'] : []),
    ...(stop && wasGas ? ['Let all gas out of the stop and see that it stays out.'] : []),
    ...(opened ? ['Open the stop, fit the spacer or set the oil, new seals, close it.'] : []),
    ...(stop && !opened ? ['Change or move the stop as in the table, both sides alike.'] : []),
    ...(springs ? ['Change the springs, preload and divider as in the table.'] : []),
    ...(stop && isGas ? ['Charge with the stop at full length, count in what the gauge takes out.'] : []),
    'Torque and thread-locker from the maker’s data only.',
    'Cycle it from droop to bump without springs: nothing may touch.',
    'Down on its wheels, roll it, measure the table again, write it in, sign. Then a gentle road test.',
  ]
}

/** What the shop works from. */
export function shopFacts(plan: Plan, before: Side, after: Side, shelf: Shelf): ShopFacts {
  const say = sayer(plan)
  const shown = (value: number | null, quantity: Parameters<typeof say>[1]): string =>
    value === null ? 'none' : say(value, quantity)
  const { budget } = after
  return {
    title: `${titled(plan)}: ${axleName(after)} suspension, shop sheet`,
    rules: LOCAL_RULES,
    rows: [
      ...rows(before.axle, after.axle).map(row => ({
        name: row.name,
        before: shown(row.before, row.quantity),
        after: shown(row.after, row.quantity),
        changed: row.changed,
        tolerance: row.tolerance === 0 || row.after === null ? '' : `± ${say(row.tolerance, row.quantity)}`,
      })),
      ...othersChanged(before.axle, after.axle).map(name => ({
        name,
        before: 'as found',
        after: 'see the plan',
        changed: true,
        tolerance: '',
      })),
    ],
    cut: cut(plan, before.axle.corner, after.axle.corner, shelf),
    charge: charge(plan, after.axle.corner),
    order: order(before.axle.corner, after.axle.corner),
    results: [
      budget.engagement === null
        ? 'The stop is not met in this travel.'
        : `Engagement ${say(budget.engagement.wheel, 'length', { sign: true })} of wheel travel, ${say(budget.engagement.share, 'share')} of bump on the coilover alone.`,
      `Full bump ${say(budget.travel.bump, 'length')} (${budget.travel.bumpLimitedBy}), full droop ${say(budget.travel.droop, 'length')} (${budget.travel.droopLimitedBy}).`,
      `Shock shaft left at full bump ${say(budget.shockLeftAtBump, 'length')}.`,
    ],
    cautions: SHOP_CAUTIONS,
  }
}
