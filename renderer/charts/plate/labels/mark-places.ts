import type { Finding } from '../../../../core/budget/results.ts'
import type { Placer } from '../../placement/placer.ts'
import type { Scene } from '../scene.ts'

/** Where a finding's mark stands, px; its number is its place in the list. */
export interface MarkPlace {
  readonly finding: Finding
  readonly number: number
  readonly x: number
  readonly y: number
}

export const MARK_RADIUS = 7.5
const SIZE = 2 * MARK_RADIUS + 2
/** From one mark to the next of several that want the same place. */
const STEP = SIZE + 4
const RINGS = 14

/** Where a finding would like its mark to be. */
function wished({ frame, axis, shafts, forces, view, travel }: Scene, { where, at }: Finding): [number, number] {
  const wheel = Math.min(Math.max(at, travel.droop), travel.bump)
  const y = axis.y(wheel)
  switch (where) {
    case 'drawing':
      return [frame.budget.x - 13, y]
    case 'budget':
      return [frame.budget.right - 13, y]
    case 'forces':
      return [forces.x(view.model.forces(wheel, 'slow').total), y - 17]
    default: {
      const bar = shafts.find(({ id }) => id === where)
      return [bar?.centre ?? frame.shafts.x, y - 11]
    }
  }
}

/** Every finding gets its mark: at its place, or at the nearest free place around it. */
export function placeMarks(scene: Scene, placer: Placer, findings: readonly Finding[]): MarkPlace[] {
  const { frame, axis } = scene
  const left = SIZE
  const right = frame.names.x - SIZE / 2
  const hold = (value: number, from: number, to: number): number => Math.min(Math.max(value, from), Math.max(from, to))
  return findings.map((finding, index) => {
    const [x0, y0] = wished(scene, finding)
    const x = hold(x0, left, right)
    const y = hold(y0, axis.top + SIZE / 2 + 1, axis.bottom - SIZE / 2 - 1)
    let place = { x, y }
    search: for (let ring = 0; ring <= RINGS; ring++)
      for (const [dx, dy] of ringSteps(ring)) {
        const candidate = { x: x + dx * STEP, y: y + dy * STEP }
        const box = { x: candidate.x - SIZE / 2, y: candidate.y - SIZE / 2, width: SIZE, height: SIZE }
        if (candidate.x < left || candidate.x > right || !placer.room.isFree(box)) continue
        place = candidate
        placer.room.take(box)
        break search
      }
    return { finding, number: index + 1, ...place }
  })
}

/** Grid steps of one ring around a place, upward and sideways first. */
function ringSteps(ring: number): [number, number][] {
  if (ring === 0) return [[0, 0]]
  const steps: [number, number][] = []
  for (let dx = -ring; dx <= ring; dx++)
    for (let dy = -ring; dy <= ring; dy++) if (Math.max(Math.abs(dx), Math.abs(dy)) === ring) steps.push([dx, dy])
  return steps.sort((a, b) => a[0] ** 2 + a[1] ** 2 - (b[0] ** 2 + b[1] ** 2) || a[1] - b[1] || b[0] - a[0])
}
