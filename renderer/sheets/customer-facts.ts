import type { Plan } from '../../core/plan/schema.ts'
import { INCH } from '../../core/units/constants.ts'
import { LOCAL_RULES } from './cautions.ts'
import { othersChanged, rows, same } from './differences.ts'
import { done } from './done.ts'
import { coilover, roundDrop, type Side, sayer, taped } from './figures.ts'
import { forOwner } from './owner-findings.ts'

/** One of the three numbers: as it was and as it will be. */
export interface Compared {
  readonly what: string
  readonly before: string
  readonly after: string
}

/** Lines under a heading, and where those are read that have no room. */
export interface Told {
  readonly head: string
  readonly lines: readonly string[]
  readonly where: string
}

/** Everything the customer sheet says, in words. */
export interface CustomerFacts {
  readonly title: string
  readonly lead: string
  readonly numbers: readonly Compared[]
  /** In pairs, side by side. */
  readonly lists: readonly (readonly [Told, Told])[]
  readonly cautions: readonly { readonly severity: 'danger' | 'caution' | 'note'; readonly text: string }[]
}

/** Less than a tape shows does not count as a change, m. */
const SEEN = INCH / 32

/** The same setup twice: there is nothing to compare yet. */
export const asItIs = (before: Side, after: Side): boolean => before.setup.id === after.setup.id

export const axleName = ({ axle }: Side): string => (axle.id === 'front' ? 'front' : 'rear')

function lead(before: Side, after: Side): string {
  const how = 'As the wheel rises it rides on its springs, until a stop catches it for the rest of the way.'
  if (after.budget.engagement === null)
    return 'The wheel rides on its springs all the way: nothing catches it before the end.'
  if (asItIs(before, after)) return `${how} This is where the stop catches it today.`
  const moved = coilover(after) - coilover(before)
  if (Math.abs(moved) < SEEN) return `${how} Where the stop catches it stays as it was.`
  return moved > 0
    ? `${how} Today the stop catches it early. After the work the wheel has more room first.`
    : `${how} After the work the stop catches it earlier, and has longer to slow it down.`
}

/** Letters there is room for beside a number, in one load's name, and in a title that is not all of the heading. */
const LETTERS = { all: 110, one: 45, title: 60 } as const

const shortened = (text: string, most: number): string => (text.length > most ? `${text.slice(0, most).trim()}…` : text)

/** The plan's title, as long as leaves room for what the sheet is. */
export const titled = ({ title }: Plan): string =>
  title.trim() === '' ? 'Plan without a title' : shortened(title.trim(), LETTERS.title)

/** Names one after another, as many as have room, and how many there are more. */
function named(labels: readonly string[]): string {
  const short = labels.map(label => shortened(label, LETTERS.one))
  let shown = short.length
  while (shown > 1 && short.slice(0, shown).join('; ').length > LETTERS.all) shown -= 1
  const left = short.length - shown
  return `${short.slice(0, shown).join('; ')}${left === 0 ? '' : `; and ${left} more`}`
}

function numbers(plan: Plan, before: Side, after: Side): Compared[] {
  const left = ({ ledger: { balance }, budget }: Side): string => {
    // With no stop in the way, what is left is left before the end.
    const rest = budget.engagement === null ? balance.beforeBump : balance.beforeStop
    return rest === null ? 'no figure' : rest <= 0 ? 'nothing' : taped(rest, plan)
  }
  const drop = ({ landing }: Side): string => {
    const height = roundDrop(landing.drop, plan.units)
    return landing.more ? `over ${height}` : landing.sure ? height : `at least ${height}`
  }
  const { chosen } = after.ledger.together
  const labels = after.ledger.rows.filter(({ id }) => chosen.includes(id)).map(({ label }) => label)
  const loaded = labels.length === 0 ? 'standing still' : `with all of this at once: ${named(labels)}`
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
    ...left.map(finding => `Still so: ${forOwner(finding)}`),
    'Worn bushings, tired shocks and bad alignment are another job.',
  ]
}

const CHECK = [
  'Stop after the first few miles: look for oil at the stops and shocks, and listen for a knock.',
  'See that it stands level and as high as it did when you drove off.',
  'Bring it back after the first rough drive: we measure again and look over every bolt.',
]

/** The car as it is: what was found, and what comes next. */
function found(plan: Plan, { budget: { travel, findings } }: Side): readonly [Told, Told] {
  const say = sayer(plan)
  return [
    {
      head: 'What we found',
      where: 'the plan',
      lines: [
        `Its whole travel is ${say(travel.bump, 'length')} up, ${say(travel.droop, 'length')} down.`,
        ...findings.filter(({ severity }) => severity !== 'note').map(forOwner),
      ],
    },
    {
      head: 'What comes next',
      where: 'the plan',
      lines: [
        'Nothing is changed yet: this is the car as it is.',
        'When there is something to propose, this page shows it beside what is there now.',
      ],
    },
  ]
}

const otherAxleChanged = (before: Side, after: Side): boolean => {
  const rest = ({ setup, axle }: Side) => setup.axles.filter(({ id }) => id !== axle.id)
  return !same(rest(before), rest(after))
}

/** What the customer reads. */
export function customerFacts(plan: Plan, before: Side, after: Side): CustomerFacts {
  const changed = rows(before.axle, after.axle).filter(row => row.changed)
  const others = othersChanged(before.axle, after.axle)
  const danger = before.budget.findings.find(({ severity }) => severity === 'danger')
  const assumed = after.axle.assumed?.length ?? 0
  const alone = asItIs(before, after)
  const where = 'the plan'
  return {
    title: `${titled(plan)}: ${axleName(after)} suspension, ${alone ? 'as it is' : 'before and after'}`,
    lead: lead(before, after),
    numbers: numbers(plan, before, after),
    lists: alone
      ? [found(plan, after)]
      : [
          [
            {
              head: 'What we do',
              lines: done(plan, before.axle, after.axle, changed, others, otherAxleChanged(before, after)),
              where: 'the shop sheet',
            },
            { head: 'What you will feel', lines: feel(plan, before, after), where },
          ],
          [
            { head: 'What it does not fix', lines: notFixed(plan, before, after), where },
            { head: 'After the first drive', lines: CHECK, where },
          ],
        ],
    cautions: [
      { severity: 'caution', text: LOCAL_RULES },
      ...(danger === undefined
        ? []
        : [
            {
              severity: 'danger' as const,
              text: `${alone ? 'No jumps as it is.' : 'Until the work is done, no jumps.'} ${forOwner(danger)}`,
            },
          ]),
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
