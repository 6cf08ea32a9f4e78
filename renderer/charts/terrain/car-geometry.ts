import type { AxleId } from '../../../core/plan/schema.ts'
import type { CarTrace } from '../../workers/messages.ts'
import { valueAt } from './signal-path.ts'

/** One end of the car in a small drawing, pixels: x from the left, y down. */
export interface CarEnd {
  readonly x: number
  readonly wheel: number
  readonly radius: number
  readonly body: number
  readonly road: number
}

export interface CarGeometry {
  readonly front: CarEnd
  readonly rear: CarEnd
  /** Nose down, rad, from how it began. */
  readonly pitch: number
}

/** How far the body is drawn above the wheels' centres, pixels. */
const ABOVE = 9

interface Car {
  /** m */
  readonly wheelbase: number
  readonly radius: Readonly<Record<AxleId, number>>
}

/**
 * The whole car at a moment, to scale but for its body, which is a bar above the wheels; forward is right.
 * @param time as the trace counts it; @param width and ground of the drawing, pixels
 */
export function carGeometry(
  moments: CarTrace,
  times: Float64Array,
  time: number,
  { wheelbase, radius }: Car,
  { width, ground }: { readonly width: number; readonly ground: number },
): CarGeometry {
  const margin = width / 5
  const scale = (width - 2 * margin) / wheelbase
  const heights = (id: AxleId) => {
    const { chassis, wheel, road } = moments[id]
    const body = valueAt(times, chassis, time)
    return {
      risen: body - chassis[0]!,
      body,
      wheel: body + valueAt(times, wheel, time),
      road: valueAt(times, road, time),
    }
  }
  const [front, rear] = [heights('front'), heights('rear')]
  const end = (id: AxleId, { body, wheel, road }: typeof front, x: number): CarEnd => ({
    x,
    wheel: ground - scale * (wheel + radius[id]),
    radius: scale * radius[id],
    body: ground - scale * (body + radius[id]) - ABOVE,
    road: ground - scale * road,
  })
  return {
    front: end('front', front, width - margin),
    rear: end('rear', rear, margin),
    pitch: (rear.risen - front.risen) / wheelbase,
  }
}
