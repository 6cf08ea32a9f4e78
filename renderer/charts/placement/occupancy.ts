import { type Box, inside, overlap } from './box.ts'

/** How far labels keep apart, px. */
export interface Apart {
  readonly x: number
  readonly y: number
}

/** Keeps the rounding of sums from making neighbours overlap, px. */
const CLEAR = 0.01

/** What is taken on the plate. The first to ask gets its place; later ones look for the nearest free one. */
export class Occupancy {
  readonly #taken: Box[] = []

  constructor(
    readonly area: Box,
    private readonly apart: Apart = { x: 3, y: 1 },
  ) {}

  take(box: Box): void {
    const { x, y } = this.apart
    this.#taken.push({ x: box.x - x, y: box.y - y, width: box.width + 2 * x, height: box.height + 2 * y })
  }

  /** Something thin that labels keep off: no room is added around it. */
  takeExactly(box: Box): void {
    this.#taken.push(box)
  }

  isFree(box: Box, within: Box = this.area): boolean {
    return inside(box, this.area) && inside(box, within) && !this.#taken.some(taken => overlap(taken, box))
  }

  /** The free place nearest to `box`, moved up or down only; null when there is none in `within`. */
  slide(box: Box, within: Box): Box | null {
    const top = Math.max(within.y, this.area.y)
    const bottom = Math.min(within.y + within.height, this.area.y + this.area.height) - box.height
    if (!(bottom >= top)) return null
    const wanted = Math.min(Math.max(box.y, top), bottom)
    const candidates = [wanted, top, bottom]
    for (const taken of this.#taken) {
      if (taken.x >= box.x + box.width || taken.x + taken.width <= box.x) continue
      candidates.push(taken.y - box.height - CLEAR, taken.y + taken.height + CLEAR)
    }
    candidates.sort((a, b) => Math.abs(a - wanted) - Math.abs(b - wanted))
    for (const y of candidates) {
      const moved = { ...box, y }
      if (this.isFree(moved, within)) return moved
    }
    return null
  }
}
