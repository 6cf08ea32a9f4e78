import type { Box } from '../placement/box.ts'
import type { Label } from '../placement/label.ts'
import { type Leader, Placer } from '../placement/placer.ts'
import { forceWords } from './force-labels.ts'
import { heads } from './head-labels.ts'
import { histogramWords } from './histogram-labels.ts'
import type { TerrainScene } from './terrain-scene.ts'
import { bottomNotes, roadWords, rulers, timeWords } from './trace-labels.ts'
import { travelLines } from './travel-lines.ts'
import { lineNames } from './travel-names.ts'

/** Every word of the terrain plate that stands still. */
export interface TerrainLabels {
  readonly labels: readonly Label[]
  readonly leaders: readonly Leader[]
}

/** Half the height a line keeps clear of words, px. */
const CLEAR = 2.5

/** @param subject the terrain's name; @param taken what words keep off */
export function terrainLabels(scene: TerrainScene, subject: string, taken: readonly Box[] = []): TerrainLabels {
  const { frame, measure, groundAt } = scene
  const placer = new Placer({ x: 0, y: 0, width: frame.width, height: frame.height }, measure, groundAt)
  heads(scene, placer, subject)
  rulers(scene, placer)
  for (const { y, from, to } of travelLines(scene))
    placer.room.takeExactly({ x: from + 30, y: y - CLEAR, width: Math.max(0, to - from - 30), height: 2 * CLEAR })
  for (const box of taken) placer.room.take(box)
  histogramWords(scene, placer)
  bottomNotes(scene, placer)
  if (scene.duration > 0) {
    forceWords(scene, placer)
    timeWords(scene, placer)
    roadWords(scene, placer)
  }
  const names = lineNames(scene)
  return { labels: [...placer.labels, ...names.labels], leaders: [...placer.leaders, ...names.leaders] }
}
