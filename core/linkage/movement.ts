import { type Looks, lookOver } from '../numerics/looks.ts'
import type { LinkageModel } from './linkage-model.ts'

/** How far from ride height anything is looked for, m. */
export const REACH = 1

/** Shock and stop movement of a linkage, looked over once within reach of ride height for every search to start from. */
export interface Movement {
  readonly linkage: LinkageModel
  /** Lowest and highest wheel position looked at, m. */
  readonly low: number
  readonly high: number
  readonly shock: Looks
  readonly stop: Looks
}

/** Looks at places a function rises between. */
const looksAt = (f: (x: number) => number, x: readonly number[]): Looks => ({ f, x, y: x.map(f) })

/** A linkage looked over from one end of its reach to the other, m of wheel travel; a rising one at its own rows, any other every 10 mm. */
export function movementOf(linkage: LinkageModel): Movement {
  const low = Math.max(-REACH, linkage.lowest)
  const high = Math.min(REACH, linkage.highest)
  if (linkage.rises) {
    const places = [low, ...linkage.knots.filter(knot => knot > low && knot < high), high]
    return {
      linkage,
      low,
      high,
      shock: looksAt(wheel => linkage.at(wheel).shock, places),
      stop: looksAt(wheel => linkage.at(wheel).stop, places),
    }
  }
  const part = (name: 'shock' | 'stop', ratio: 'shockRatio' | 'stopRatio'): Looks =>
    lookOver(
      wheel => {
        const position = linkage.at(wheel)
        return { value: position[name], slope: position[ratio] }
      },
      low,
      high,
    )
  return { linkage, low, high, shock: part('shock', 'shockRatio'), stop: part('stop', 'stopRatio') }
}
