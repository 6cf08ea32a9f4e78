import type { Placer, Spot } from '../../placement/placer.ts'
import { type Ink, span } from '../../text/span.ts'
import type { ForceRow } from '../forces-geometry.ts'
import type { Scene } from '../scene.ts'
import { forceArea } from './force-labels.ts'

/** Where a band between two edges is widest enough for a word, nearest to a wished height. */
function roomiest(
  { forces, axis }: Scene,
  from: (row: ForceRow) => number,
  to: (row: ForceRow) => number,
  width: number,
  wished: number,
): Spot[] {
  return forces.rows
    .map(row => ({ left: forces.x(from(row)), right: forces.x(to(row)), y: axis.y(row.wheel) }))
    .filter(({ left, right }) => right - left >= width + 8)
    .sort((a, b) => Math.abs(a.y - wished) - Math.abs(b.y - wished))
    .map(({ left, right, y }) => ({ x: (left + right) / 2, y: y + 4, anchor: 'middle' as const }))
}

interface Band {
  readonly id: string
  readonly word: string
  readonly ink: Ink
  readonly from: (row: ForceRow) => number
  readonly to: (row: ForceRow) => number
  /** Wheel position where the name would stand best. */
  readonly wished: number
}

/** Names of the areas: inside where they are wide enough, else beside the curves with a leader. */
export function forceNames(scene: Scene, placer: Placer): void {
  const { frame, axis, travel, measure } = scene
  const bands: Band[] = [
    { id: 'springs', word: 'springs', ink: 'coil', from: () => 0, to: row => row.springs, wished: travel.bump * 0.78 },
    { id: 'stop', word: 'stop', ink: 'stop', from: row => row.gas, to: row => row.slow, wished: travel.bump * 0.87 },
    {
      id: 'gas',
      word: 'gas',
      ink: 'ink2',
      from: row => row.springs,
      to: row => row.gas,
      wished: travel.coiloverEnd * 0.55,
    },
  ]
  const size = frame.type.label
  for (const { id, word, ink, from, to, wished } of bands) {
    const text = placer.block([span(word, { size, weight: id === 'gas' ? 400 : 600, ink })])
    const spots = roomiest(scene, from, to, measure(word, size, 600), axis.y(wished))
    if (placer.at(`force-${id}`, text, spots, forceArea(scene)) === null && !(frame.small && id === 'gas'))
      nameBeside(scene, placer, { id, word, ink, from, to, wished }, size)
  }
}

/** Thinner than this an area cannot be pointed at, px. */
const SLIVER = 0.8

function nameBeside(scene: Scene, placer: Placer, { id, word, ink, from, to, wished }: Band, size: number): void {
  const { forces, axis } = scene
  const text = placer.block([span(word, { size, ink })])
  const y = (row: ForceRow): number => axis.y(row.wheel)
  const rows = forces.rows
    .filter(row => forces.x(to(row)) - forces.x(from(row)) >= SLIVER)
    .sort((a, b) => Math.abs(y(a) - axis.y(wished)) - Math.abs(y(b) - axis.y(wished)))
  for (const row of rows) {
    const x = forces.x(Math.max(row.fast, row.slow)) + 14
    const tip = (forces.x(from(row)) + forces.x(to(row))) / 2
    const lead = { x: tip, y: y(row) - 1, width: x - tip, height: 2 }
    if (!placer.room.isFree(lead)) continue
    const spot: Spot = { x, y: y(row) + 3.5, anchor: 'start' }
    if (placer.at(`force-${id}`, text, [spot], forceArea(scene)) === null) continue
    placer.room.takeExactly(lead)
    placer.leaders.push({ id: `force-${id}`, from: [tip, y(row)], to: [x - 2, y(row)] })
    return
  }
}
