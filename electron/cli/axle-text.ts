import type { AxleBudget } from '../../core/budget/results.ts'
import type { CornerModel } from '../../core/corner/corner-model.ts'
import { formatMeasure } from '../../core/units/format.ts'
import type { Quantity, System } from '../../core/units/quantity.ts'
import { findingText } from './finding-text.ts'
import { forceText, stopText } from './force-text.ts'
import { leftText } from './left-text.ts'
import { paragraph } from './paragraph.ts'
import { force, length, onTape } from './tape.ts'
import { travelBar } from './travel-bar.ts'

const shown = (value: number, quantity: Quantity, system: System): string =>
  formatMeasure(value, quantity, system, { unit: true })

/** Where the stop is met, in words. */
function met({ engagement, travel }: AxleBudget, { corner }: CornerModel, system: System): string {
  if (corner.stop === null) return paragraph('There is no bump stop.', '  ')
  if (engagement === null) return paragraph('No bump stop is met in this travel.', '  ')
  const { wheel, shock } = engagement
  const shaft = `${length(Math.abs(shock), system)} ${shock < 0 ? 'further out' : 'further in'}`
  const rounded = onTape(wheel, system)
  const text =
    wheel < -travel.droop
      ? 'The stop is pushed in through the whole travel: there is no coilover zone.'
      : rounded > 0
        ? `Pad and stop meet ${length(wheel, system)} above ride height, with the shock shaft ${shaft} than at ride height.`
        : rounded === 0
          ? 'Pad and stop meet at ride height: there is no coilover zone.'
          : `Pad and stop meet ${length(-wheel, system)} below ride height, with the shock shaft ${shaft} than at ride height: there is no coilover zone.`
  return paragraph(text, '  ')
}

/** The other things that would end bump, nearest first. */
function beyond({ travel, limits }: AxleBudget, system: System): string {
  const others = Object.entries(limits)
    .filter(([name]) => name !== travel.bumpLimitedBy)
    .sort(([, a], [, b]) => a - b)
    .map(([name, wheel]) => `${name} at ${length(wheel, system)}`)
  return others.length === 0 ? '' : paragraph(`Beyond full bump: ${others.join(', ')}.`, '  ')
}

function resting({ static: rest }: AxleBudget, { corner }: CornerModel, system: System): string {
  const away = onTape(rest.position, system)
  const where = away === 0 ? 'at' : `${length(Math.abs(away), system)} ${away > 0 ? 'lower' : 'higher'} than`
  const carried = force(rest.stopForce, system)
  const share = formatMeasure(rest.stopForce / rest.sprungWeight, 'share', system, { unit: true })
  const ofIt = carried === force(0, system) ? 'none of it' : `${carried} of it, ${share}`
  const stop = corner.stop === null ? '' : `; the stop ${ofIt}`
  return paragraph(
    `At rest the car sits ${where} the measured ride height. Each wheel carries ${force(rest.sprungWeight, system)} of sprung weight${stop}.`,
    '  ',
  )
}

function ride({ ride: at }: AxleBudget, system: System): string {
  const past =
    at.frequencyPastEngagement === null
      ? ''
      : `; ${shown(at.frequencyPastEngagement, 'frequency', system)} just past engagement`
  return paragraph(
    `At ride height: motion ratio ${shown(at.motionRatio, 'ratio', system)}, wheel rate ${shown(at.wheelRate, 'rate', system)}, ride frequency ${shown(at.frequency, 'frequency', system)} (${shown(at.frequencyOnTire, 'frequency', system)} with the tire${past}).`,
    '  ',
  )
}

/** The budget of one axle, each wheel of it, as a page of text. */
export function axleText(axle: AxleBudget, model: CornerModel, system: System): string {
  const findings =
    axle.findings.length === 0 ? paragraph('Nothing stands out.', '  ') : axle.findings.map(findingText).join('')
  return [
    travelBar(axle, system),
    '\n',
    met(axle, model, system),
    beyond(axle, system),
    resting(axle, model, system),
    ride(axle, system),
    '\n',
    leftText(axle, model, system),
    '\n',
    forceText(axle, model, system),
    stopText(axle, model, system),
    '\n',
    '  Findings\n',
    findings,
  ].join('')
}
