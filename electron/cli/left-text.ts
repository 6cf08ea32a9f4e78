import type { AxleBudget } from '../../core/budget/results.ts'
import type { CornerModel, PartPositions } from '../../core/corner/corner-model.ts'
import type { System } from '../../core/units/quantity.ts'
import { table } from './table.ts'
import { length } from './tape.ts'

/** What is left of shock, main spring and stop at the wheel positions that matter, each along itself. */
export function leftText({ engagement, travel }: AxleBudget, model: CornerModel, system: System): string {
  const within = engagement !== null && engagement.wheel > 0 && engagement.wheel < travel.bump
  const places = [
    { name: 'at ride height', parts: model.parts(0) },
    ...(within ? [{ name: 'at engagement', parts: model.parts(engagement.wheel) }] : []),
    { name: 'at full bump', parts: model.parts(travel.bump) },
  ]
  const row = (name: string, of: (parts: PartPositions) => number) => [
    name,
    ...places.map(({ parts }) => length(of(parts), system)),
  ]
  return table([
    ['Left to use', ...places.map(({ name }) => name)],
    row('shock shaft', parts => parts.shockLeft),
    row('main spring', parts => parts.springs.at(-1)!.left),
    ...(model.corner.stop === null ? [] : [row('bump stop', parts => parts.stopLeft ?? 0)]),
  ])
}
