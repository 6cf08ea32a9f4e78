import type { RollGeometry, Spot } from './roll-geometry.ts'

/** From metres to the drawing, px. */
export interface RollFrame {
  readonly width: number
  readonly height: number
  /** px for a metre */
  readonly scale: number
  readonly to: (spot: Spot) => Spot
}

/** Room for the words above and below, px. */
export const ABOVE = 46
const BELOW = 42
const BESIDE = 8

/** As large as fits in a width and, words aside, a height; px. */
export function rollFrame({ low, high }: RollGeometry, width: number, tallest: number): RollFrame {
  const scale = Math.min((width - 2 * BESIDE) / (high.x - low.x), tallest / (high.y - low.y))
  const floor = ABOVE + high.y * scale
  return {
    width,
    height: floor - low.y * scale + BELOW,
    scale,
    to: ({ x, y }) => ({ x: width / 2 + x * scale, y: floor - y * scale }),
  }
}
