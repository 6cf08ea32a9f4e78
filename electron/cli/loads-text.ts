import { changesHead, changeWords, type Diagnosis, diagnose, TAPE_AGAIN } from '../../core/loads/diagnosis.ts'
import { loadFindings } from '../../core/loads/findings.ts'
import { type AxleLedger, type LoadSpan, planLoads, type SetupLoads } from '../../core/loads/ledger.ts'
import type { Solved } from '../../core/loads/solve.ts'
import type { Plan } from '../../core/plan/schema.ts'
import { formatMeasure } from '../../core/units/format.ts'
import type { System } from '../../core/units/quantity.ts'
import { sayIn } from '../../core/units/saying.ts'
import { findingText } from './finding-text.ts'
import { AXLE_NAMES, planTitle, setupName } from './names.ts'
import { paragraph, underlined } from './paragraph.ts'
import { table } from './table.ts'
import { length, onTape } from './tape.ts'

const OUTCOMES: Readonly<Record<Exclude<Solved['outcome'], 'settles'>, string>> = {
  'rolls over': 'rolls over',
  'needs two axles': 'needs two axles',
}

const signed = (value: number, system: System): string =>
  formatMeasure(value, 'length', system, { unit: true, sign: true })

/** A span by its rounded ends, so that what is shown adds up. */
function cells(span: LoadSpan, roll: string, system: System): string[] {
  if (span.to === null) return [span.outcome === 'settles' ? '' : OUTCOMES[span.outcome], '', '']
  const [from, to] = [onTape(span.from, system), onTape(span.to, system)]
  return [signed(to - from, system), signed(to, system), roll]
}

const rollText = (solved: Solved, system: System): string =>
  solved.outcome === 'settles' && solved.roll !== 0
    ? formatMeasure(Math.abs(solved.roll), 'angle', system, { unit: true })
    : ''

function whereItStands({ from, engagement, bump }: AxleLedger, system: System): string {
  const [rest, end] = [onTape(from, system), onTape(engagement ?? bump, system)]
  const met = engagement === null ? 'No stop is met: full bump' : 'The stop engages'
  const spend =
    end > rest ? `${length(end - rest, system)} to spend` : `${length(rest - end, system)} into it already at rest`
  return paragraph(`At rest the wheel is at ${signed(rest, system)}. ${met} at ${signed(end, system)}: ${spend}.`, '  ')
}

function balanceText({ balance, engagement, bump, together }: AxleLedger, system: System): string {
  if (together.to === null || balance.beforeBump === null) return ''
  const to = onTape(together.to, system)
  const toStop = engagement === null ? null : onTape(engagement, system) - to
  const toBump = balance.beforeBump === 0 ? 0 : onTape(bump, system) - onTape(bump - balance.beforeBump, system)
  const stop =
    toStop === null
      ? ''
      : toStop < 0
        ? `on the stop by ${length(-toStop, system)}; `
        : `${length(toStop, system)} left before the stop, `
  return paragraph(`Balance: ${stop}${length(toBump, system)} left before full bump.`, '  ')
}

function axleText(axle: AxleLedger, { loads, together }: SetupLoads, system: System): string {
  const { rows } = axle
  const lines = rows.map((row, i) => [
    `${row.label}${row.assumed ? ' (assumed)' : ''}`,
    ...cells(row, rollText(loads[i]!.solved, system), system),
  ])
  const { chosen } = axle.together
  const all = chosen.length === 0 ? [] : [['Together', ...cells(axle.together, rollText(together, system), system)]]
  const part =
    chosen.length === 0 || chosen.length === rows.length
      ? ''
      : paragraph(
          `Taken together: ${rows
            .filter(({ id }) => chosen.includes(id))
            .map(({ label }) => label)
            .join(', ')}.`,
          '  ',
        )
  return [
    `${AXLE_NAMES[axle.id]}, outer wheel\n`,
    whereItStands(axle, system),
    '\n',
    table([['Load', 'takes', 'up to', 'roll'], ...lines, ...all]),
    part,
    balanceText(axle, system),
  ].join('')
}

/** What put it there, the largest first, what one change of each kind would do, and what the driver feels. */
function diagnosisText(diagnosis: Diagnosis, plan: Plan): string {
  const { axle, causes, changes, feel, now } = diagnosis
  const say = sayIn(plan.units)
  const where = now.engagement !== null && now.rest >= now.engagement ? 'rests on' : 'comes to'
  return [
    `\n  Why the ${axle} ${where} its stop, largest first\n`,
    ...causes.map(({ message }) => paragraph(`- ${message}`, '  ', '    ')),
    ...(changes.length === 0
      ? []
      : [
          paragraph(`${changesHead(diagnosis, say)}:`, '  '),
          ...changes.map(change => paragraph(`- ${change.name} ${changeWords(change, now.rest, say)}`, '  ', '    ')),
          paragraph(TAPE_AGAIN, '  '),
        ]),
    ...feel.map(sentence => paragraph(sentence, '  ')),
  ].join('')
}

/**
 * The loads of a plan for people, in its own units: what each takes out of the travel before the stop, what they take together, what is left.
 * @param chosen ids of the loads taken together; all when not given
 */
export function loadsText(plan: Plan, chosen?: readonly string[]): string {
  const head =
    paragraph(planTitle(plan)) +
    paragraph(
      plan.loads.length === 0
        ? 'This plan has no loads.'
        : 'Positions are wheel travel from ride height; each load counts from where the wheel is at rest, slow gas.',
    )
  if (plan.loads.length === 0) return head
  const setups = planLoads(plan, chosen).map((setup, i) => {
    const findings = loadFindings(plan, setup)
    return [
      underlined(setupName(plan.setups[i]!), '═'),
      setup.ledger.map(axle => axleText(axle, setup, plan.units)).join('\n'),
      findings.length === 0 ? '' : `\n  Findings\n${findings.map(findingText).join('')}`,
      ...setup.ledger.map(({ id }) => {
        const diagnosis = diagnose(plan, setup, id)
        return diagnosis === null ? '' : diagnosisText(diagnosis, plan)
      }),
    ].join('')
  })
  return [head, ...setups].join('\n')
}
