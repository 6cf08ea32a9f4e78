import type { CornerModel } from '../../../core/corner/corner-model.ts'
import { wheelAt } from '../../../core/runs/outline.ts'
import { formatMeasure } from '../../../core/units/format.ts'
import { shownTime } from '../terrain/time-axis.ts'
import { onTape, spokenPosition } from '../text/length-spans.ts'
import type { RunView } from './run-scene.ts'

/** A wheel this close to an end of its travel is at it, m. */
const AT_END = 1.5e-3

/** Where a wheel is in its travel, in words; what holds the car up there a position does not tell. */
function placeWords(wheel: number, { bump, droop, engagement }: CornerModel): string {
  if (wheel > bump + AT_END) return 'past full bump'
  if (wheel >= bump - AT_END) return 'at full bump'
  if (engagement !== null && wheel >= engagement) return 'past engagement'
  if (wheel < droop - AT_END) return 'past full droop'
  return wheel <= droop + AT_END ? 'at full droop' : wheel >= 0 ? 'in the coilover zone' : 'in droop'
}

/** Where the wheel was at a time; null in a gap. */
export const wheelIn = ({ shown }: Pick<RunView, 'shown'>, time: number): number | null =>
  shown.laid === null ? null : wheelAt(shown.laid.run, time)

/** What the trace reads at a time, in a line. */
export function readingLine(view: RunView, time: number): string {
  const wheel = wheelIn(view, time)
  const at = `At ${shownTime(time)} s`
  if (wheel === null) return `${at}: nothing was recorded`
  const { system, shown } = view
  const position = formatMeasure(onTape(wheel, system), 'length', system, {
    sign: true,
    unit: true,
    digits: system === 'metric' ? 0 : undefined,
  })
  return `${at}: ${position}, ${placeWords(wheel, shown.model)}`
}

/** The same for someone who hears the page. */
export function spokenReading(view: RunView, time: number): string {
  const wheel = wheelIn(view, time)
  const at = `${shownTime(time)} seconds`
  return wheel === null
    ? `${at}: nothing was recorded`
    : `${at}: wheel ${spokenPosition(wheel, view.system)}, ${placeWords(wheel, view.shown.model)}`
}
