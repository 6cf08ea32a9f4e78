import type { Stretch } from './coilover.ts'
import type { Flat } from './flat.ts'
import { openPath } from './pen.ts'
import type { AxisFrame, Place } from './place.ts'

/**
 * Centre lines of a coil's strands: `turns` near ones and those that join them behind. The first and last lie half a wire inside the ends,
 * so at the solid length (`turns` + ½ wires) the turns touch.
 */
export function coilStrands(
  place: Place,
  frame: AxisFrame,
  radius: number,
  { from, to }: Stretch,
  turns: number,
  thickness: number,
): { readonly before: string; readonly behind: string } {
  const pitch = coilPitch({ from, to }, turns, thickness)
  const near: string[] = []
  const far: string[] = []
  for (let i = 0; i < turns; i += 1) {
    const start = from + thickness / 2 + pitch * i
    const middle: Flat = frame(radius, start + pitch / 2)
    near.push(openPath(place, [frame(-radius, start), middle]))
    if (i < turns - 1) far.push(openPath(place, [middle, frame(-radius, start + pitch)]))
  }
  return { before: near.join(''), behind: far.join('') }
}

/** From one turn to the next along the axis, m. */
export const coilPitch = ({ from, to }: Stretch, turns: number, thickness: number): number =>
  (to - from - thickness) / (turns - 0.5)
