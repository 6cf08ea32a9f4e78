import type { MeasureText, Span } from '../text/span.ts'
import type { Box } from './box.ts'
import { type Anchor, type Block, baselineBox, block, blockBox, blockLabels, type Ground, type Label } from './label.ts'
import { type Apart, Occupancy } from './occupancy.ts'

/** A thin line from what is named to a name that had to move. */
export interface Leader {
  readonly id: string
  readonly from: readonly [number, number]
  readonly to: readonly [number, number]
}

/** Where a label's first baseline may stand. */
export interface Spot {
  readonly x: number
  readonly y: number
  readonly anchor: Anchor
}

/** A centred label may stand a little aside to stay within its column. */
function held(box: Box, anchor: Anchor, within: Box | undefined): Box {
  if (anchor !== 'middle' || within === undefined || box.width > within.width) return box
  return { ...box, x: Math.min(Math.max(box.x, within.x), within.x + within.width - box.width) }
}

/** Places labels one after the other; what finds no room is left out. */
export class Placer {
  readonly labels: Label[] = []
  readonly leaders: Leader[] = []
  readonly room: Occupancy

  constructor(
    area: Box,
    readonly measure: MeasureText,
    /** What lies under a height on the plate. */
    readonly groundAt: (y: number) => Ground = () => 'sheet',
    apart?: Apart,
  ) {
    this.room = new Occupancy(area, apart)
  }

  block(...lines: (readonly Span[])[]): Block {
    return block(lines, this.measure)
  }

  private settle(id: string, text: Block, box: Box, anchor: Anchor): Box {
    this.room.take(box)
    this.labels.push(...blockLabels(id, text, box, anchor, this.groundAt(box.y + box.height / 2)))
    return box
  }

  /** At the first spot that is free. */
  at(id: string, text: Block, spots: readonly Spot[], within?: Box): Box | null {
    for (const { x, y, anchor } of spots) {
      const box = held(baselineBox(text, x, y, anchor), anchor, within)
      if (this.room.isFree(box, within)) return this.settle(id, text, box, anchor)
    }
    return null
  }

  /** As near as can be to having its middle at `y`, moved up or down inside `within`, with `margin` free above and below. */
  near(id: string, text: Block, x: number, y: number, anchor: Anchor, within: Box, margin = 0): Box | null {
    const box = held(blockBox(text, x, y - text.height / 2, anchor), anchor, within)
    const place = this.room.slide({ ...box, y: box.y - margin, height: box.height + 2 * margin }, within)
    return place === null ? null : this.settle(id, text, { ...box, y: place.y + margin }, anchor)
  }

  /** The first of several wordings that finds room. */
  first<T>(wordings: readonly T[], place: (wording: T) => Box | null): Box | null {
    for (const wording of wordings) {
      const box = place(wording)
      if (box !== null) return box
    }
    return null
  }
}
