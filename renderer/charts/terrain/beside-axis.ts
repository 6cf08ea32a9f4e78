import type { Box } from '../placement/box.ts'
import type { Block } from '../placement/label.ts'
import type { Placer } from '../placement/placer.ts'
import type { TerrainFrame } from './terrain-frame.ts'

/** Names what the strip of the second axis shows, under the drawing of the corner, where no trace runs through it; null where it is too narrow. */
export function besideAxis(
  id: string,
  text: Block,
  { corner, forces, inset }: TerrainFrame,
  baseline: number,
  placer: Placer,
): Box | null {
  const within: Box = {
    x: corner.x + inset,
    y: forces.top,
    width: corner.width - 2 * inset,
    height: forces.bottom - forces.top,
  }
  return placer.at(id, text, [{ x: corner.right - inset, y: baseline, anchor: 'end' }], within)
}
