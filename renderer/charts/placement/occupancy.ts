import { type Box, inside, overlap } from './box.ts'

/** Labels keep this far apart, px. */
const APART = { x: 3, y: 1 }

/** Keeps the rounding of sums from making neighbours overlap, px. */
const CLEAR = 0.01

const roomy = (box: Box): Box => ({
  x: box.x - APART.x,
  y: box.y - APART.y,
  width: box.width + 2 * APART.x,
  height: box.height + 2 * APART.y,
})

/** What is taken on the plate. The first to ask gets its place; later ones look for the nearest free one. */
export class Occupancy {
  readonly #taken: Box[] = []

  constructor(readonly area: Box) {}

  take(box: Box): void {
    this.#taken.push(roomy(box))
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
