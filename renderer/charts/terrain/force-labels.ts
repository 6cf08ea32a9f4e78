import type { Box } from '../placement/box.ts'
import type { Placer } from '../placement/placer.ts'
import { forceUnit, shortForce } from '../plate/force-text.ts'
import { type Ink, span } from '../text/span.ts'
import { besideAxis } from './beside-axis.ts'
import { hasStop, type TerrainScene } from './terrain-scene.ts'

/** Whether the forces leave more room for words at the right end of their strip than at the left, where words begin. */
function roomAtRight({ shown, other, time }: TerrainScene): boolean {
  const reach = 0.3 * (time.right - time.left)
  const points = [...(shown?.suspension ?? []), ...(other?.suspension ?? [])]
  const highest = (at: (x: number) => boolean): number =>
    points.reduce((least, { x, y }) => (at(x) ? Math.min(least, y) : least), Infinity)
  return highest(x => x > time.right - reach) > highest(x => x < time.left + reach) + 8
}

/** Numbers of the force axis, and what the two forces are. */
export function forceWords(scene: TerrainScene, placer: Placer): void {
  const { frame, forces, time, view, rulerRight } = scene
  const { type } = frame
  const strip = frame.forces
  for (const tick of forces.ticks) {
    const y = forces.y(tick)
    if (y < strip.top + 4 || y > strip.bottom + 1) continue
    const text = placer.block([span(shortForce(tick, view.system), { size: type.axis, ink: 'ink2' })])
    placer.near(`force-${tick}`, text, rulerRight, Math.min(y, strip.bottom - text.height / 2), 'end', {
      x: frame.trace.x,
      y: strip.top - 4,
      width: frame.trace.width,
      height: strip.bottom - strip.top + 8,
    })
  }
  const style = { size: type.label, weight: 600 } as const
  const unit = forceUnit(view.system)
  const within: Box = { x: time.left, y: strip.top, width: time.right - time.left, height: strip.bottom - strip.top }
  const ends = [
    { x: time.left + 4, anchor: 'start' as const },
    { x: time.right - 2, anchor: 'end' as const },
  ]
  if (roomAtRight(scene)) ends.reverse()
  const at = (id: string, words: readonly string[], ink: Ink, baseline: number): void => {
    const wordings = words.map(text => span(text, { ...style, ink }))
    besideAxis({ id, wordings, baseline, within, spots: ends }, frame, placer)
  }
  at('name-suspension', [`force at the wheel, ${unit}`, `force, ${unit}`, unit], 'ink', strip.top + type.label)
  if (hasStop(view)) at('name-stop', ['stop, along its own axis', 'stop'], 'stop', strip.top + 2 * type.label + 4)
}
