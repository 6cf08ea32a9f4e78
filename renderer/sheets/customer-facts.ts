import type { Plan } from '../../core/plan/schema.ts'
import { INCH } from '../../core/units/constants.ts'
import { LOCAL_RULES } from './cautions.ts'
import { othersChanged, type Row, rows } from './differences.ts'
import { coilover, roundDrop, type Side, sayer, taped } from './figures.ts'

/** One of the three numbers: as it was and as it will be. */
export interface Compared {
  readonly what: string
  readonly before: string
  readonly after: string
}

/** Everything the customer sheet says, in words. */
export interface CustomerFacts {
  readonly title: string
  readonly lead: string
  readonly numbers: readonly Compared[]
  readonly done: readonly string[]
  readonly feel: readonly string[]
  readonly notFixed: readonly string[]
  readonly check: readonly string[]
  readonly cautions: readonly { readonly severity: 'danger' | 'caution' | 'note'; readonly text: string }[]
}

/** Less than a tape shows does not count as a change, m. */
const SEEN = INCH / 32

export const axleName = ({ axle }: Side): string => (axle.id === 'front' ? 'front' : 'rear')

function lead(before: Side, after: Side): string {
  const how = 'As the wheel rises it rides on its springs, until a stop catches it for the rest of the way.'
  if (after.budget.engagement === null)
    return 'The wheel rides on its springs all the way: nothing catches it before the end.'
  const moved = coilover(after) - coilover(before)
  if (Math.abs(moved) < SEEN) return `${how} Where the stop catches it stays as it was.`
  return moved > 0
    ? `${how} Today the stop catches it early. After the work the wheel has more room first.`
    : `${how} After the work the stop catches it earlier, and has longer to slow it down.`
}

function numbers(plan: Plan, before: Side, after: Side): Compared[] {
  const left = ({ ledger }: Side): string =>
    ledger.balance.beforeStop === null
      ? 'no figure'
      : ledger.balance.beforeStop <= 0
        ? 'nothing'
        : taped(ledger.balance.beforeStop, plan)
  const drop = ({ landing }: Side): string => {
    const height = roundDrop(landing.drop, plan.units)
    return landing.more ? `over ${height}` : landing.sure ? height : `at least ${height}`
  }
  const { chosen } = after.ledger.together
  const labels = after.ledger.rows.filter(({ id }) => chosen.includes(id)).map(({ label }) => label)
  const loaded = labels.length === 0 ? 'standing still' : `with all of this at once: ${labels.join('; ')}`
  return [
    {
      what: 'How far the wheel rises on its springs alone',
      before: taped(coilover(before), plan),
      after: taped(coilover(after), plan),
    },
    { what: `What is left of that, ${loaded}`, before: left(before), after: left(after) },
    { what: 'Drop it can land from before metal meets metal', before: drop(before), after: drop(after) },
  ]
}

/** What a spacer brings with it, and is not said again beside it. */
const BY_SPACER = ['corner.stop.gap', 'corner.stop.stroke', 'corner.stop.gasVolume', 'corner.stop.spacer.length']

/** The work in sentences: a spacer with all it moves is one thing done. */
function done(plan: Plan, after: Side, changed: readonly Row[], others: readonly string[]): string[] {
  if (changed.length + others.length === 0) return ['Nothing is changed: this is the car as it is.']
  const spacer = changed.find(
    ({ path, before, after }) => path === 'corner.stop.spacer.length' && before === null && after !== null,
  )
  const said = spacer === undefined ? changed : changed.filter(({ path }) => !BY_SPACER.includes(path))
  return [
    ...(spacer === undefined
      ? []
      : [
          `A ${sayer(plan)(spacer.after!, 'length')} spacer goes inside each ${axleName(after)} stop, which is filled and charged again.`,
        ]),
    ...said.map(row => sentence(row, plan)),
    ...others.map(name => `Also changed: ${name}.`),
    'The same on both sides.',
  ]
}

const sentence = ({ name, before, after, quantity }: Row, plan: Plan): string => {
  const say = sayer(plan)
  const named = `${name.charAt(0).toUpperCase()}${name.slice(1)}`
  if (before === null) return `${named}: ${say(after!, quantity)}, new.`
  if (after === null) return `${named}: taken out.`
  return `${named}: ${say(before, quantity)} becomes ${say(after, quantity)}.`
}

function feel(plan: Plan, before: Side, after: Side): string[] {
  const felt: string[] = []
  const moved = coilover(after) - coilover(before)
  if (moved >= SEEN)
    felt.push(`Bumps that used to reach the stop stay on the springs: ${taped(moved, plan)} more of wheel travel.`)
  if (moved <= -SEEN) felt.push(`Bumps reach the stop ${taped(-moved, plan)} of wheel travel sooner than before.`)
  const end = after.budget.bump.stopForceFast / Math.max(1, before.budget.bump.stopForceFast)
  if (end > 1.05) felt.push('At the very end of its travel a hard hit is caught more firmly.')
  if (end < 0.95) felt.push('At the very end of its travel a hard hit is caught more softly.')
  const ride = after.budget.ride.frequency / Math.max(1e-9, before.budget.ride.frequency)
  if (ride > 1.03) felt.push('On ordinary road it rides a little firmer.')
  else if (ride < 0.97) felt.push('On ordinary road it rides a little softer.')
  else felt.push('On smooth road it rides as before.')
  return felt
}

function notFixed(plan: Plan, before: Side, after: Side): string[] {
  const say = sayer(plan)
  const { travel } = after.budget
  const same = Math.abs(travel.bump - before.budget.travel.bump) < SEEN
  const lower = before.landing.drop - after.landing.drop
  const left = after.budget.findings.filter(({ severity }) => severity !== 'note')
  return [
    ...(lower > INCH / 2
      ? [`It lands from about ${say(lower, 'length', { digits: 0 })} less before metal meets metal.`]
      : []),
    same
      ? `The wheel has no more travel than before: ${say(travel.bump, 'length')} up, ${say(travel.droop, 'length')} down.`
      : `Its whole travel is now ${say(travel.bump, 'length')} up, ${say(travel.droop, 'length')} down.`,
    ...left.map(({ message }) => `Still so: ${message}`),
    'Worn bushings, tired shocks and bad alignment are another job.',
  ]
}

const CHECK = [
  'Stop after the first few miles: look for oil at the stops and shocks, and listen for a knock.',
  'See that it stands level and as high as it did when you drove off.',
  'Bring it back after the first rough drive: we measure again and look over every bolt.',
]

/** What the customer reads. */
export function customerFacts(plan: Plan, before: Side, after: Side): CustomerFacts {
  const changed = rows(before.axle, after.axle).filter(row => row.changed)
  const others = othersChanged(before.axle, after.axle)
  const danger = before.budget.findings.find(({ severity }) => severity === 'danger')
  const assumed = after.axle.assumed?.length ?? 0
  return {
    title: `${plan.title.trim() === '' ? 'Plan without a title' : plan.title}: ${axleName(after)} suspension, before and after`,
    lead: lead(before, after),
    numbers: numbers(plan, before, after),
    done: done(plan, after, changed, others),
    feel: feel(plan, before, after),
    notFixed: notFixed(plan, before, after),
    check: CHECK,
    cautions: [
      { severity: 'caution', text: LOCAL_RULES },
      ...(danger === undefined
        ? []
        : [{ severity: 'danger' as const, text: `Until the work is done, no jumps. ${danger.message}` }]),
      {
        severity: 'danger',
        text: 'Never open, drill or heat a stop or shock: the nitrogen inside can kill, even when parked.',
      },
      {
        severity: 'note',
        text: `${assumed === 0 ? 'From measurements on this car.' : `From measurements on this car and ${assumed} assumed ${assumed === 1 ? 'value' : 'values'}.`} Other tires or more load change the result.`,
      },
    ],
  }
}
