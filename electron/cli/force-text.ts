import type { AxleBudget } from '../../core/budget/results.ts'
import type { CornerModel, WheelForces } from '../../core/corner/corner-model.ts'
import { type GasLaw, gasPressure } from '../../core/forces/gas.ts'
import { chamberOf } from '../../core/forces/stop.ts'
import { ATMOSPHERE } from '../../core/units/constants.ts'
import { formatMeasure } from '../../core/units/format.ts'
import type { System } from '../../core/units/quantity.ts'
import { paragraph } from './paragraph.ts'
import { table } from './table.ts'
import { force } from './tape.ts'

/** What carries the wheel at rest: on the step of a stop, the stop gives what the rest leaves over. */
function atRest({ static: rest }: AxleBudget, model: CornerModel): WheelForces {
  const { springs, gas } = model.forces(rest.position, 'slow')
  const stop = rest.stopForce
  return { springs, gas, stop, total: springs + gas + stop }
}

const cells = ({ springs, gas, stop, total }: WheelForces, system: System): readonly string[] =>
  [springs, gas, stop, total].map(value => force(value, system))

/** Two named rows; one row under their common name when they read the same. */
function pair(common: string, one: [string, readonly string[]], two: [string, readonly string[]]): string[][] {
  const same = one[1].every((cell, i) => cell === two[1][i])
  return same ? [[common, ...one[1]]] : [one, two].map(([name, row]) => [name, ...row])
}

/** Force at one wheel from each part, where it matters. */
export function forceText(axle: AxleBudget, model: CornerModel, system: System): string {
  const { engagement, travel } = axle
  const at = (wheel: number, law: GasLaw, side?: 'below' | 'above') => cells(model.forces(wheel, law, side), system)
  const touch = engagement !== null && engagement.wheel > 0 && engagement.wheel < travel.bump ? engagement.wheel : null
  return table([
    ['Force at one wheel', 'springs', 'shock gas', 'stop', 'together'],
    ['at rest', ...cells(atRest(axle, model), system)],
    ...(touch === null
      ? []
      : pair(
          'at engagement',
          ['just before engagement', at(touch, 'slow', 'below')],
          ['just past engagement', at(touch, 'slow', 'above')],
        )),
    ...pair(
      'full bump',
      ['full bump, slow gas', at(travel.bump, 'slow')],
      ['full bump, fast gas', at(travel.bump, 'fast')],
    ),
  ])
}

/** What the stop itself has to take at full bump; empty when it is not met. */
export function stopText({ engagement, travel }: AxleBudget, model: CornerModel, system: System): string {
  const { stop } = model.corner
  if (engagement === null || stop === null) return ''
  const both = (of: (law: GasLaw) => string): string => `${of('slow')} slow, ${of('fast')} fast`
  const along = both(law => force(model.stopForce(travel.bump, law), system))
  if (stop.kind === 'elastomer')
    return paragraph(`Along the stop at full bump: ${force(model.stopForce(travel.bump, 'slow'), system)}.`, '  ')
  const pushed = model.parts(travel.bump).stopCompression ?? 0
  const inside = both(law =>
    formatMeasure(gasPressure(chamberOf(stop), pushed, law) - ATMOSPHERE, 'pressure', system, { unit: true }),
  )
  return paragraph(`Along the stop at full bump: ${along}. Pressure inside: ${inside}.`, '  ')
}
