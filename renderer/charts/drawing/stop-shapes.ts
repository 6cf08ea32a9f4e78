import { bar } from './coilover-shapes.ts'
import type { Flat } from './flat.ts'
import { type Shape, shape } from './look.ts'
import { type PadStation, padLine } from './pad.ts'
import { closedPath, openPath } from './pen.ts'
import type { AxisFrame, Place } from './place.ts'
import type { StopBuild, StopStations } from './stop-stack.ts'

/** Points of the foot's rounded face that its outline goes through. */
const FACE = [-1, -0.8, -0.6, -0.4, -0.2, 0, 0.2, 0.4, 0.6, 0.8, 1] as const

/** Height of a dome's face over its lowest point, m, at a distance from the axis. */
const domeAt = (dome: number, across: number): number => dome - Math.sqrt(Math.max(0, dome ** 2 - across ** 2))

/** The fixed part of a stop: a body with its two clamps, or the cup an elastomer sits in. */
export function stopBodyShapes(place: Place, frame: AxisFrame, build: StopBuild, { top }: StopStations): Shape[] {
  if (build.kind === 'elastomer')
    return [shape('band', bar(place, frame, build.half, { from: top, to: top + 0.09 * build.height }))]
  const from = top - build.body
  const clampAt = (share: number) => {
    const at = from + share * build.body
    return bar(place, frame, build.half, { from: at, to: at + 0.1 * build.body })
  }
  return [
    shape('stopBody', bar(place, frame, build.half / 1.24, { from, to: top })),
    shape('band', clampAt(0.34) + clampAt(0.83)),
  ]
}

/** The moving part of a hydraulic stop: shaft and rounded foot, its lowest point on `face`. */
function shaftAndFoot(place: Place, frame: AxisFrame, build: StopBuild, { face, shaft }: StopStations): Shape[] {
  const rounded = FACE.map((share): Flat => frame(share * build.foot, face + domeAt(build.dome, share * build.foot)))
  const back = face + build.footThickness
  return [
    shape('stopShaft', bar(place, frame, build.shaft, shaft)),
    shape('stopFoot', closedPath(place, [frame(-build.foot, back), ...rounded, frame(build.foot, back)])),
  ]
}

/** How far the nose of an elastomer has been pressed flat at most, as part of its dome's height. */
const FLAT = 1.3

/** A block of foam or rubber: it bulges as it shortens, and its nose lies flat on the pad. */
function block(place: Place, frame: AxisFrame, build: StopBuild, stations: StopStations, pad: PadStation): Shape[] {
  const { face, compression, top } = stations
  const height = top - face
  const bulge = build.foot * (1 + 0.55 * (Math.sqrt(build.height / height) - 1))
  const nose = face - Math.min(compression, FLAT * domeAt(build.dome, build.foot))
  const floor = (across: number): number => {
    const round = nose + domeAt(build.dome, across)
    return compression > 0 ? Math.max(round, padLine(pad, across)) : round
  }
  const bottom = FACE.map((share): Flat => frame(share * build.foot, floor(share * build.foot)))
  const side = (sign: 1 | -1): Flat[] => {
    const low = floor(sign * build.foot)
    const points: Flat[] = []
    for (let i = 1; i < 8; i += 1) {
      const share = i / 8
      const waist = 1 - 0.1 * (1 - compression / build.height) * Math.abs(Math.sin(2 * Math.PI * share))
      const half = waist * (build.foot + (bulge - build.foot) * Math.sin(Math.PI * share))
      points.push(frame(sign * half, low + share * (top - low)))
    }
    return points
  }
  const grooves = [0.25, 0.5, 0.75].map(share =>
    openPath(place, [
      frame(-0.62 * build.foot, face + share * height),
      frame(0.62 * build.foot, face + share * height),
    ]),
  )
  return [
    shape(
      'stopBody',
      closedPath(place, [
        ...bottom,
        ...side(1),
        frame(build.foot, top),
        frame(-build.foot, top),
        ...side(-1).reverse(),
      ]),
    ),
    shape('stopGroove', grooves.join('')),
  ]
}

/** What the pad pushes: shaft and foot, or the block. */
export const stopMovingShapes = (
  place: Place,
  frame: AxisFrame,
  build: StopBuild,
  stations: StopStations,
  pad: PadStation,
): Shape[] =>
  build.kind === 'hydraulic' ? shaftAndFoot(place, frame, build, stations) : block(place, frame, build, stations, pad)
