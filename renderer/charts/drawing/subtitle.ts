import type { Figure } from './figure.ts'

/** What the drawing shows and at which scales, in the words of the column's head. */
export function cornerSubtitle({ axle, skeleton }: Figure, enlargement: number, small: boolean): string {
  const times = `travel enlarged ${enlargement.toFixed(1)} ×`
  if (skeleton.view === 'schematic')
    return small ? `schematic; ${times}` : `${axle.id}, schematic: the plan holds no points; ${times}`
  if (small) return `to scale; ${times}`
  const seen =
    skeleton.view === 'side'
      ? `${axle.id} ${skeleton.hand}`
      : `seen from ${axle.id === 'front' ? 'the front' : 'behind'}`
  return `${seen}, to scale; ${times} at the right`
}

/** Below this a leaning shock is drawn so much shorter than it is that the page says so. */
const LEANS = 0.97

/** A line of caution where the shock leans out of the view; null where it does not. */
export function leanNote(shrink: number): string | null {
  if (shrink >= LEANS) return null
  const degrees = Math.round((Math.acos(Math.max(0, shrink)) * 180) / Math.PI)
  return `shock leans ${degrees}° out of this view`
}
