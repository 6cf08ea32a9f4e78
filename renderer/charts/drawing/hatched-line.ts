import type { Flat } from './flat.ts'
import { type Shape, shape } from './look.ts'
import { openPath } from './pen.ts'
import type { Place } from './place.ts'

/** A level line with its solid side hatched: something that does not move. `up` says which side is solid. */
export function hatchedLine(place: Place, from: number, to: number, height: number, up: boolean): Shape[] {
  const step = (to - from) / 10
  const rise = (up ? 0.9 : -0.9) * step
  const strokes = Array.from({ length: 10 }, (_, i): readonly Flat[] => [
    [from + (up ? i : i + 1) * step, height],
    [from + (up ? i + 0.8 : i + 0.2) * step, height + rise],
  ])
  return [
    shape('chassisHatch', strokes.map(stroke => openPath(place, stroke)).join('')),
    shape(
      'solidLine',
      openPath(place, [
        [from, height],
        [to, height],
      ]),
    ),
  ]
}
