import { cornerModel } from '../../core/corner/corner.ts'
import type { CornerModel } from '../../core/corner/corner-model.ts'
import type { Corner } from '../../core/plan/schema.ts'
import { ride } from '../../core/ride/ride.ts'
import type { Ridden, RideAsk } from './messages.ts'

let last: { text: string; model: CornerModel } | null = null

/** A sweep asks for the same corner many times; what arrives is a copy each time, so they are told apart by what they say. */
function modelOf(corner: Corner): CornerModel {
  const text = JSON.stringify(corner)
  if (last?.text !== text) last = { text, model: cornerModel(corner) }
  return last.model
}

/** Rides one corner over one terrain. */
export function ridden({ corner, terrain, trace: asked }: RideAsk): Ridden {
  const outcome = ride(modelOf(corner), terrain)
  return !outcome.ok || asked ? outcome : { ...outcome, trace: null }
}

/** The memory of an answer that may change hands instead of being copied. */
export const handedOver = (answer: Ridden): ArrayBuffer[] =>
  answer.ok && answer.trace !== null ? Object.values(answer.trace).map(({ buffer }) => buffer as ArrayBuffer) : []
