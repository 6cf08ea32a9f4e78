import type { Box } from '../placement/box.ts'
import type { Placer, Spot } from '../placement/placer.ts'
import type { Span } from '../text/span.ts'
import type { TerrainFrame } from './terrain-frame.ts'

interface AxisName {
  readonly id: string
  /** The best comes first. */
  readonly wordings: readonly Span[]
  readonly baseline: number
  /** Where it stands among the traces, if it must. */
  readonly within: Box
  readonly spots: readonly Omit<Spot, 'y'>[]
}

/** Names what a strip shows: under the drawing of the corner, where no trace runs through it; where that is too narrow, in the strip. */
export function besideAxis(name: AxisName, { corner, forces, inset }: TerrainFrame, placer: Placer): void {
  const { id, wordings, baseline, within, spots } = name
  const aside: Box = {
    x: corner.x + inset,
    y: forces.top,
    width: corner.width - 2 * inset,
    height: forces.bottom - forces.top,
  }
  const put = (text: Span, at: readonly Omit<Spot, 'y'>[], inside: Box): Box | null =>
    placer.at(
      id,
      placer.block([text]),
      at.map(spot => ({ ...spot, y: baseline })),
      inside,
    )
  const there = placer.first(wordings, text => put(text, [{ x: corner.right - inset, anchor: 'end' }], aside))
  if (there === null) placer.first(wordings, text => put(text, spots, within))
}
