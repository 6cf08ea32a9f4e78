import type { Figure } from './figure.ts'

/** What the drawing shows and at which scales, in the words of the column's head: the wordings there are, the longest first. */
export function cornerSubtitles({ axle, skeleton }: Figure, enlargement: number, small: boolean): string[] {
  const factor = `${enlargement.toFixed(1)} ×`
  const times = `travel enlarged ${factor}`
  const schematic = skeleton.view === 'schematic'
  const shorter = [`${schematic ? 'schematic' : 'to scale'}; ${times}`, times, factor]
  if (small) return shorter
  if (schematic) return [`${axle.id}, schematic: the plan holds no points; ${times}`, ...shorter]
  const seen =
    skeleton.view === 'side'
      ? `${axle.id} ${skeleton.hand}`
      : `seen from ${axle.id === 'front' ? 'the front' : 'behind'}`
  return [`${seen}, to scale; ${times} at the right`, `${seen}, to scale; ${times}`, ...shorter]
}

/** Below this a leaning shock is drawn so much shorter than it is that the page says so. */
const LEANS = 0.97

/** A line of caution where the shock leans out of the view; null where it does not. */
export function leanNote(shrink: number): string | null {
  if (shrink >= LEANS) return null
  const degrees = Math.round((Math.acos(Math.max(0, shrink)) * 180) / Math.PI)
  return `shock leans ${degrees}° out of this view`
}
