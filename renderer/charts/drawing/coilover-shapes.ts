import { coilStrands } from './coil.ts'
import type { CoiloverBuild, CoiloverStations, Stretch } from './coilover.ts'
import type { Flat } from './flat.ts'
import { type Shape, shape } from './look.ts'
import { circlePath, closedPath } from './pen.ts'
import type { AxisFrame, Place } from './place.ts'

/** A rectangle across the axis. */
export const bar = (place: Place, frame: AxisFrame, half: number, { from, to }: Stretch): string =>
  closedPath(place, [frame(-half, from), frame(half, from), frame(half, to), frame(-half, to)])

/**
 * A coilover from behind to before: far strands of the coils, shaft, body, stop ring, near strands, seats and dividers, eyes.
 * @param frame along the shock from its lower eye
 * @param shrink drawn length over true length along the shock
 */
export function coiloverShapes(
  place: Place,
  frame: AxisFrame,
  shrink: number,
  build: CoiloverBuild,
  stations: CoiloverStations,
): Shape[] {
  const { shaft, body, springs, dividers, ring, lowerSeat, upperSeat, length } = stations
  const coils = springs.map((spring, i) => {
    const { turns, thickness } = build.wires[i]!
    const strands = coilStrands(place, frame, build.coil, spring, turns, thickness)
    return { ...strands, width: Math.max(0.7, thickness * shrink * place.scale) }
  })
  const seat = 0.34 * build.seat
  const plates = [
    bar(place, frame, 1.12 * build.seat, { from: upperSeat, to: upperSeat + 0.8 * seat }),
    bar(place, frame, build.seat, { from: lowerSeat - 0.6 * seat, to: lowerSeat }),
    ...dividers.map(divider => bar(place, frame, build.seat, divider)),
  ]
  const eyes: readonly Flat[] = [frame(0, 0), frame(0, length)]
  const tail = bar(place, frame, 0.75 * build.eye, { from: 0, to: lowerSeat })
  return [
    ...coils.map(({ behind, width }) => shape('coilBehind', behind, width * 0.55)),
    shape('shaft', bar(place, frame, build.shaft, shaft)),
    shape('shockBody', tail),
    shape('shockBody', bar(place, frame, build.body, body)),
    ...(upperSeat < body.from
      ? [shape('shaft', bar(place, frame, 1.1 * build.body, { from: upperSeat, to: body.from }))]
      : []),
    ...(ring === null ? [] : [shape('band', bar(place, frame, build.ring, ring))]),
    ...coils.map(({ before, width }) => shape('coil', before, width)),
    shape('seat', plates.join('')),
    shape('joint', eyes.map(eye => circlePath(place, eye, build.eye, 2)).join('')),
    shape('jointCentre', eyes.map(eye => circlePath(place, eye, 0.34 * build.eye, 1)).join('')),
  ]
}
