import type { AxleId } from '../plan/schema.ts'
import type { Say } from '../units/saying.ts'
import type { AxleLedger, LoadResult } from './ledger.ts'
import type { AxleModel } from './setup-model.ts'

/** Reaching the stop in a turn takes grip from this end of the car: all of its roll then hangs on one hard wheel. Common practice. */
const IN_A_TURN: Readonly<Record<AxleId, string>> = {
  front: 'the front pushes wide when it gets there',
  rear: 'the rear steps out when it gets there',
}

/** A step of this share of the weight is felt as a knock: common practice. */
const KNOCK = 0.1

/** Wheel rate just before and just past the touch, N/m. */
function rates({ model }: AxleModel, engagement: number): { before: number; past: number } | null {
  if (engagement <= model.droop || engagement >= model.bump) return null
  return { before: model.wheelRate(engagement, 'slow', 'below'), past: model.wheelRate(engagement, 'slow', 'above') }
}

/** What the driver of a car that rests on or near its stops feels, in sentences. */
export function feelOf(axle: AxleModel, book: AxleLedger, loads: readonly LoadResult[], say: Say): string[] {
  const { model, weight } = axle
  const { engagement, from, rows, together } = book
  if (engagement === null) return []
  const feels: string[] = []
  const on = from >= engagement
  const both = rates(axle, engagement)
  const stiffer =
    both !== null && both.past > both.before ? ` (${say(both.before, 'rate')} against ${say(both.past, 'rate')})` : ''
  feels.push(
    on
      ? `Small bumps are as harsh as large ones: the wheel is already on the stop${stiffer}, and only droop is left to the springs.`
      : `Every bump over ${say(engagement - from, 'length')} meets the stop${stiffer}: soft at first, then suddenly hard.`,
  )
  const step = model.forces(Math.max(engagement, model.droop), 'slow', 'above').stop
  if (step >= KNOCK * weight) {
    const share = say(step / weight, 'share')
    feels.push(
      on
        ? `The stop gives ${say(step, 'force')}, ${share} of the weight, before it moves at all: ripples go straight to the chassis.`
        : `It meets the stop with a knock: ${say(step, 'force')} at once, ${share} of the weight.`,
    )
  }
  const reaching = (kind: LoadResult['kind']): boolean =>
    rows.some(row => row.kind === kind && together.chosen.includes(row.id) && row.to !== null && row.to >= engagement)
  const cornering = loads.some(({ kind, id }) => kind === 'cornering' && together.chosen.includes(id))
  if (cornering && (reaching('cornering') || (together.to !== null && together.to >= engagement)))
    feels.push(`In a turn the outer wheel runs onto the stop: ${IN_A_TURN[book.id]}.`)
  if (reaching('braking') && book.id === 'front')
    feels.push('Under braking it dives onto the stop: the front wheels skip over ripples just when they should hold.')
  if (reaching('payload')) feels.push('Loaded, it rides on its stops all day.')
  return feels
}
