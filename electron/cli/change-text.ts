import type { AxleBudget, Finding } from '../../core/budget/results.ts'
import { formatMeasure } from '../../core/units/format.ts'
import type { Quantity, System } from '../../core/units/quantity.ts'
import { paragraph } from './paragraph.ts'
import { force, length, onTape, toDigits, toTen } from './tape.ts'

/** A number of the budget that two setups can differ in, as it is shown: rounded first, so that differences add up. */
interface Reading {
  readonly name: string
  readonly value: number | null
  readonly show: (value: number) => string
  /** What a larger and a smaller value are called; empty where a difference would be misread. */
  readonly more: string
  readonly less: string
}

function readings(axle: AxleBudget, system: System): readonly Reading[] {
  const { travel, engagement, zones, bump, static: rest } = axle
  const place = (name: string, value: number | null, more: string, less: string): Reading => ({
    name,
    value: value === null ? null : onTape(value, system),
    show: shown => length(shown, system),
    more,
    less,
  })
  const push = (name: string, value: number): Reading => ({
    name,
    value: toTen(value, system),
    show: shown => force(shown, system),
    more: 'more',
    less: 'less',
  })
  const other = (name: string, value: number, quantity: Quantity, more = 'more', less = 'less'): Reading => ({
    name,
    value: toDigits(value, quantity, system),
    show: shown => formatMeasure(shown, quantity, system, { unit: true }),
    more,
    less,
  })
  const energy = zones.reduce((sum, zone) => (zone.id === 'droop' ? sum : sum + zone.energy), 0)
  return [
    place('Engagement', engagement?.wheel ?? null, 'later', 'earlier'),
    other('Coilover zone, of bump travel', zones.find(({ id }) => id === 'coilover')!.share, 'share', '', ''),
    place('Full bump', travel.bump, 'later', 'earlier'),
    place('Full droop', travel.droop, 'further', 'less far'),
    place('Rest position', rest.position, 'higher', 'lower'),
    push('Carried by the stop at rest', rest.stopForce),
    other('Wheel rate at ride height', axle.ride.wheelRate, 'rate', 'stiffer', 'softer'),
    push('Force at full bump, slow gas', bump.forceSlow),
    push('Force at full bump, fast gas', bump.forceFast),
    push('Force along the stop, fast gas', bump.stopForceFast),
    other('Energy from ride height to full bump, fast gas', energy, 'energy'),
    place('Shock shaft left at full bump', axle.shockLeftAtBump, 'more', 'less'),
    place('Main spring left at full bump', axle.mainSpring.leftAtBump, 'more', 'less'),
  ]
}

const words = ({ value, show }: Reading): string => (value === null ? 'none' : show(value))

function changed(before: Reading, after: Reading): string {
  const by =
    before.value === null || after.value === null || after.more === ''
      ? ''
      : ` (${after.show(Math.abs(after.value - before.value))} ${after.value > before.value ? after.more : after.less})`
  return `${after.name}: ${words(after)}, was ${words(before)}${by}.`
}

const without = (findings: readonly Finding[], others: readonly Finding[]): readonly Finding[] =>
  findings.filter(({ id }) => !others.some(other => other.id === id))

/** What one axle gains and loses from one setup to another, a line each, and what stays. */
export function changeText(before: AxleBudget, after: AxleBudget, system: System): string {
  const then = readings(before, system)
  const pairs = readings(after, system).map((now, i) => ({ was: then[i]!, now }))
  const differ = pairs.filter(({ was, now }) => words(was) !== words(now))
  const same = pairs.filter(({ was, now }) => words(was) === words(now)).map(({ now }) => now.name.toLowerCase())
  const limits = (['bumpLimitedBy', 'droopLimitedBy'] as const)
    .filter(end => before.travel[end] !== after.travel[end])
    .map(
      end =>
        `What ends ${end === 'bumpLimitedBy' ? 'bump' : 'droop'}: ${after.travel[end]}, was ${before.travel[end]}.`,
    )
  const lines = [
    ...differ.map(({ was, now }) => changed(was, now)),
    ...limits,
    ...without(before.findings, after.findings).map(({ message }) => `No longer found: ${message}`),
    ...without(after.findings, before.findings).map(({ message }) => `Newly found: ${message}`),
  ]
  if (lines.length === 0) return paragraph('Nothing changes.', '  ')
  const stays = same.length === 0 ? '' : paragraph(`The same: ${same.join('; ')}.`, '  ')
  return lines.map(line => paragraph(line, '  ', '    ')).join('') + stays
}
