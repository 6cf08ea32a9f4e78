import type { Finding } from '../../../../core/budget/results.ts'
import type { Box } from '../../placement/box.ts'
import type { Label } from '../../placement/label.ts'
import { type Leader, Placer } from '../../placement/placer.ts'
import { crossLines } from '../cross-lines.ts'
import { balancedOn, uprightBox } from '../demands-geometry.ts'
import { type HandleGeometry, handleGeometry } from '../handle.ts'
import type { Scene } from '../scene.ts'
import { otherShareLabel, rulerLabels, zoneLabels } from './budget-labels.ts'
import { balanceLabels, demandValues, offerLabels } from './demand-labels.ts'
import { forceAxisLabels, forceNotes, forceReading } from './force-labels.ts'
import { forceNames } from './force-names.ts'
import { type MarkPlace, placeMarks } from './mark-places.ts'
import { shaftCaptions, shaftReadings } from './shaft-labels.ts'

export interface PlacedLabels {
  readonly handle: HandleGeometry
  readonly labels: readonly Label[]
  readonly leaders: readonly Leader[]
  readonly marks: readonly MarkPlace[]
  /** Lines of words to begin with usual loads, while there are none. */
  readonly offer: readonly Box[]
}

/** Half the height a line keeps clear of words, px. */
const LINE_CLEAR = 2.5

/**
 * Places every label and mark for one wheel position, the most needed first: handle, readings, marks, zone lengths, balance, then names
 * and notes. What finds no room is shortened, moved or left out; nothing overlaps.
 */
export function placeLabels(scene: Scene, findings: readonly Finding[], wheel: number): PlacedLabels {
  const { frame, axis, measure, groundAt, demands } = scene
  const placer = new Placer(
    { x: 0, y: axis.top + 1, width: frame.names.x, height: axis.bottom - axis.top - 2 },
    measure,
    groundAt,
  )
  rulerLabels(scene, placer)
  const handle = handleGeometry(scene, wheel)
  placer.room.take(handle.box)
  const keepLine = (y: number, from: number, to: number): void =>
    placer.room.takeExactly({ x: from, y: y - LINE_CLEAR, width: to - from, height: 2 * LINE_CLEAR })
  // The ends of the travel and engagement are never written over; marks may sit on lines, so they go before the others.
  const marks = placeMarks(scene, placer, findings)
  for (const line of crossLines(scene)) keepLine(line.y, scene.budget.textX - 2, line.to)
  keepLine(axis.y(wheel), frame.budget.x, frame.names.x)
  shaftReadings(scene, placer, wheel)
  forceReading(scene, placer, wheel)
  zoneLabels(scene, placer)
  for (const bar of demands?.bars ?? [])
    placer.room.takeExactly({ x: bar.x - 2, y: bar.top, width: bar.width + 4, height: bar.bottom - bar.top })
  const upright = demands === null ? null : balancedOn(demands, scene.view.demands?.balance ?? null, axis, scene.travel)
  if (upright !== null) placer.room.takeExactly(uprightBox(upright))
  balanceLabels(scene, placer)
  demandValues(scene, placer)
  const offer = offerLabels(scene, placer)
  forceNotes(scene, placer)
  shaftCaptions(scene, placer)
  forceNames(scene, placer)
  otherShareLabel(scene, placer)
  forceAxisLabels(scene, placer)
  return { handle, labels: placer.labels, leaders: placer.leaders, marks, offer }
}
