import { cornerModel } from '../../core/corner/corner.ts'
import type { CornerModel } from '../../core/corner/corner-model.ts'
import type { AxleId, Corner } from '../../core/plan/schema.ts'
import { rideFindings } from '../../core/ride/findings/findings.ts'
import type { CarOutcome, CarRide, CornerRide } from '../../core/ride/results.ts'
import { ride } from '../../core/ride/ride.ts'
import type { Course } from '../../core/ride/terrain.ts'
import { rideCar } from '../../core/ride/whole-car.ts'
import type { Answer, Ask, CarTrace, Driven, FindingsAsk, Ridden, RideAsk } from './messages.ts'

/** A sweep asks for the same corners many times; what arrives is a copy each time, so they are told apart by what they say. */
const KEPT = 4
const models: { text: string; model: CornerModel }[] = []

function modelOf(corner: Corner): CornerModel {
  const text = JSON.stringify(corner)
  const at = models.findIndex(each => each.text === text)
  const [known] = at < 0 ? [{ text, model: cornerModel(corner) }] : models.splice(at, 1)
  models.unshift(known!)
  models.length = Math.min(models.length, KEPT)
  return known!.model
}

type Drove =
  | {
      readonly ok: true
      readonly ride: CornerRide
      readonly car: CarTrace | null
      readonly pitch: { least: number; most: number } | null
    }
  | Exclude<CarOutcome, CarRide>

/** Drives what is asked for, over a terrain. */
function drive(driven: Driven, terrain: Course): Drove {
  if (driven.kind === 'corner') {
    const outcome = ride(modelOf(driven.corner), terrain)
    return outcome.ok ? { ok: true, ride: outcome, car: null, pitch: null } : outcome
  }
  const axles = driven.axles.map(({ id, corner }) => ({ id, model: modelOf(corner) }))
  const outcome = rideCar(axles, driven.wheelbase, terrain)
  if (!outcome.ok) return outcome
  const [least, most] = outcome.pitch.reduce(([low, high], now) => [Math.min(low, now), Math.max(high, now)], [0, 0])
  const at = driven.axles.findIndex(({ id }) => id === driven.axle)
  const moved = (id: AxleId) => outcome.axles[driven.axles.findIndex(axle => axle.id === id)]!.trace
  const car = { front: moved('front'), rear: moved('rear') }
  return { ok: true, ride: outcome.axles[at]!, car, pitch: { least, most } }
}

/** No more of it than is drawn. */
function slim(car: CarTrace | null): CarTrace | null {
  if (car === null) return null
  const [front, rear] = [car.front, car.rear].map(({ chassis, wheel, road }) => ({ chassis, wheel, road }))
  return { front: front!, rear: rear! }
}

function ridden({ driven, terrain, trace: asked }: RideAsk): Ridden {
  const drove = drive(driven, terrain)
  if (!drove.ok) return drove
  return {
    ...drove.ride,
    ok: true,
    trace: asked ? drove.ride.trace : null,
    car: asked ? slim(drove.car) : null,
    pitch: drove.pitch,
  }
}

/** The same with another corner where it was asked about. */
const withCorner = (driven: Driven, corner: Corner): Driven =>
  driven.kind === 'corner'
    ? { ...driven, corner }
    : { ...driven, axles: driven.axles.map(each => (each.id === driven.axle ? { ...each, corner } : each)) }

function found({ driven, axle, terrain, units }: FindingsAsk) {
  const drove = drive(driven, terrain)
  if (!drove.ok) return []
  const again = (corner: Corner) => {
    const other = drive(withCorner(driven, corner), terrain)
    return other.ok ? { ...other.ride, ok: true as const } : other
  }
  return rideFindings(axle, modelOf(axle.corner), terrain, drove.ride, units, again)
}

/** Works out what the page asked for. */
export const answerTo = (ask: Ask): Answer =>
  ask.kind === 'ride' ? { kind: 'ride', ridden: ridden(ask) } : { kind: 'findings', findings: found(ask) }

/** The memory of an answer that may change hands instead of being copied. */
export const handedOver = (answer: Answer): ArrayBuffer[] =>
  answer.kind === 'ride' && answer.ridden.ok && answer.ridden.trace !== null
    ? [
        ...new Set(
          [answer.ridden.trace, ...Object.values(answer.ridden.car ?? {})]
            .flatMap(moments => Object.values(moments))
            .map(({ buffer }) => buffer as ArrayBuffer),
        ),
      ]
    : []
