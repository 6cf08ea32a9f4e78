import { formatMeasure } from '../../../core/units/format.ts'
import type { System } from '../../../core/units/quantity.ts'
import type { SweptPoint } from '../../state/terrain-cache.ts'
import type { SweptBy } from '../../state/terrain-sweep.ts'
import { onTape } from '../text/length-spans.ts'
import { shownShare } from './shown-share.ts'
import type { SweepView } from './sweep-geometry.ts'

/** What is swept, as a quantity people read. */
export const SWEPT = { speed: 'speed', drop: 'length' } as const

/** The value of a setup at the present speed or drop. */
export const presentOf = (points: readonly SweptPoint[] | null, present: number): SweptPoint | null =>
  points?.find(({ value }) => value === present) ?? null

/** A value as its axis reads it. */
export const sweptText = (value: number, by: SweptBy, system: System): string =>
  formatMeasure(value, SWEPT[by], system, { unit: true, digits: 0, decimal: true })

/** A sweep in sentences, for someone who hears the page. */
export function sweepSentence(view: SweepView, names: readonly string[], against: string): string {
  const { kind, by, present, shown, other, system } = view
  const say = (point: SweptPoint): string =>
    kind === 'on the stop'
      ? shownShare(point.onStop)
      : `${formatMeasure(onTape(point.wheelMax, system), 'length', system, { sign: true, unit: true })}${point.bottoms > 0 ? ', bottoming' : ''}`
  const rows = [shown, ...(other === null ? [] : [other])].map((points, i) => {
    const [first, last] = [points[0], points.at(-1)]
    if (first === undefined || last === undefined) return `${names[i]}: not worked out yet.`
    const here = presentOf(points, present)
    const middle = here === null ? '' : `, ${say(here)} at the present ${sweptText(present, by, system)}`
    return `${names[i]}: ${say(first)} at ${sweptText(first.value, by, system)}${middle}, ${say(last)} at ${sweptText(last.value, by, system)}.`
  })
  return [
    `${kind === 'on the stop' ? 'Share of the time on the stop' : 'Highest wheel'} against ${against}.`,
    ...rows,
  ].join(' ')
}
