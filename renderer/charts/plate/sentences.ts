import { formatMeasure } from '../../../core/units/format.ts'
import { onTape, spokenLength, spokenPosition } from '../text/length-spans.ts'
import type { DemandSpan } from './demands.ts'
import { forceNumber } from './force-text.ts'
import type { Scene } from './scene.ts'

/** What each column says, in sentences, for someone who hears the plate instead of seeing it. */

const unitWord = (scene: Scene): string => (scene.view.system === 'inch' ? 'pounds' : 'newtons')

export function budgetSentence({ view, zones, travel }: Scene): string {
  const { system, budget } = view
  const say = (value: number): string => spokenLength(value, system)
  const parts = [
    `Budget. Bump travel ${say(zones.bump)}, ended by ${budget.travel.bumpLimitedBy}.`,
    travel.engagement === null
      ? `All of it is on the coilover.`
      : `Coilover zone ${say(zones.coilover)}, engagement zone ${say(zones.engagement)}.`,
    `Droop ${say(zones.droop)}, ended by ${budget.travel.droopLimitedBy}.`,
  ]
  if (travel.engagement !== null && travel.engagement < 0)
    parts.push(`The stop is touched ${spokenPosition(travel.engagement, system)}, before ride height is reached.`)
  return parts.join(' ')
}

export function shaftsSentence({ view, shafts, travel }: Scene, wheel: number): string {
  const says = shafts.map(bar => {
    if (bar.absent === 'no stop') return 'There is no stop'
    if (bar.absent === 'not met') return 'The stop is not met'
    const held = bar.id === 'stop' ? Math.max(wheel, bar.from) : wheel
    return `${bar.title} ${spokenLength(onTape(bar.left(held), view.system), view.system)} left`
  })
  return `Shafts with the wheel ${spokenPosition(Math.min(wheel, travel.bump), view.system)}. ${says.join('. ')}.`
}

export function forcesSentence(scene: Scene, wheel: number): string {
  const { view, forces } = scene
  const { system, model } = view
  const number = (force: number): string => forceNumber(force, system)
  const slow = model.forces(wheel, 'slow').total
  const fast = model.forces(wheel, 'fast').total
  const step =
    forces.step === null
      ? ''
      : ` At engagement the stop adds ${formatMeasure(forces.step.above - forces.step.below, 'force', system)} at once.`
  return (
    `Force at the wheel in ${unitWord(scene)}: ${number(slow)} slow, ${number(fast)} fast at this position; ` +
    `${number(forces.top.slow)} to ${number(forces.top.fast)} at full bump; sprung weight ${number(forces.weight)}.${step}`
  )
}

/** What one load takes, or why it has no place. */
export function demandSentence({ label, from, to, outcome, assumed, counted }: DemandSpan, { view }: Scene): string {
  const off = counted ? '' : ', not counted'
  if (to === null) return `${label}: ${outcome === 'rolls over' ? 'it rolls over' : 'it needs two axles'}${off}`
  return `${label} ${spokenLength(to - from, view.system)}${assumed ? ', assumed' : ''}${off}`
}

export function demandsSentence(scene: Scene): string {
  const { demands, system } = scene.view
  if (demands === null) return ''
  if (demands.spans.length === 0) return 'Demands. No loads yet.'
  const spans = demands.together === null ? demands.spans : [...demands.spans, demands.together]
  const { balance } = demands
  const left =
    balance === null
      ? ''
      : balance.beforeStop === null
        ? ` ${spokenLength(balance.beforeBump, system)} left before full bump.`
        : ` ${spokenLength(balance.beforeStop, system)} left before the stop.`
  return `Demands. ${spans.map(load => demandSentence(load, scene)).join('. ')}.${left}`
}
