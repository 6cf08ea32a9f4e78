import { formatMeasure } from '../../../../core/units/format.ts'
import type { Box } from '../../placement/box.ts'
import type { Placer, Spot } from '../../placement/placer.ts'
import { type Ink, span } from '../../text/span.ts'
import { forceNumber, forceUnit, shortForce } from '../force-text.ts'
import type { Scene } from '../scene.ts'

/** Where words of the forces column may stand. */
export const forceArea = ({ frame, axis }: Scene): Box => ({
  x: frame.forces.x + 2,
  y: axis.top,
  width: frame.forces.width - 5,
  height: axis.bottom - axis.top,
})

/** Slow and fast force at the wheel position, beside their marks on the wheel line. */
export function forceReading(scene: Scene, placer: Placer, wheel: number): void {
  const { forces, view, axis, frame } = scene
  const { system, model } = view
  const [slow, fast] = (['slow', 'fast'] as const).map(law => model.forces(wheel, law).total) as [number, number]
  const y = axis.y(wheel)
  const size = frame.type.reading
  const range = (text: (force: number) => string): string =>
    text(slow) === text(fast) ? text(slow) : `${text(slow)} to ${text(fast)}`
  const wordings = [
    ...new Set([
      range(force => forceNumber(force, system)),
      range(force => shortForce(force, system)),
      shortForce(slow, system),
    ]),
  ]
  const right = forces.x(Math.max(slow, fast)) + 8
  const left = forces.x(Math.min(slow, fast)) - 8
  const edge = frame.forces.right - 5
  const heights = [y - 6, y + size + 3]
  const sides: Spot[][] = [
    heights.map(at => ({ x: right, y: at, anchor: 'start' as const })),
    heights.map(at => ({ x: left, y: at, anchor: 'end' as const })),
    [...heights].reverse().map(at => ({ x: edge, y: at, anchor: 'end' as const })),
  ]
  placer.first(wordings, words =>
    placer.first(sides, spots =>
      placer.at('force-reading', placer.block([span(words, { size, weight: 600 })]), spots, forceArea(scene)),
    ),
  )
}

/** The step at the touch, and the sprung weight. */
export function forceNotes(scene: Scene, placer: Placer): void {
  const { forces, frame, axis, view } = scene
  const { system, budget } = view
  const { type, small } = frame
  const within = forceArea(scene)
  const edge = frame.forces.right - 5
  const beside = (x: number, y: number, size: number): Spot[] => [
    { x, y: y + size + 4, anchor: 'start' },
    { x, y: y - 6, anchor: 'start' },
  ]
  const atEdge = (y: number, size: number): Spot[] => [
    { x: edge, y: y + size + 4, anchor: 'end' },
    { x: edge, y: y - 6, anchor: 'end' },
  ]
  const unit = ` ${forceUnit(system)}`
  if (forces.step !== null) {
    const { wheel, below, above } = forces.step
    const amount = `+${formatMeasure(above - below, 'force', system)}${unit}`
    const short = `+${shortForce(above - below, system)}${unit}`
    const wordings = small ? [amount, short] : [`${amount} at the touch`, amount, short]
    const y = axis.y(wheel)
    placer.first([beside(forces.x(above) + 8, y, type.label), atEdge(y, type.label)], spots =>
      placer.first(wordings, words =>
        placer.at(
          'force-step',
          placer.block([span(words, { size: type.label, weight: 600, ink: 'stop' })]),
          spots,
          within,
        ),
      ),
    )
  }
  const weight = formatMeasure(forces.weight, 'force', system) + unit
  const style = { size: type.label } as const
  const y = axis.y(budget.static.position)
  placer.first([beside(forces.x(forces.weight) + 11, y, type.label), atEdge(y, type.label)], spots =>
    placer.first(small ? ['sprung', ''] : ['sprung weight', 'sprung', ''], word =>
      placer.at(
        'force-weight',
        placer.block([
          ...(word === '' ? [] : [span(word, style)]),
          span(weight, { ...style, weight: 600 }, word === '' ? 0 : 4),
        ]),
        spots,
        within,
      ),
    ),
  )
}

/** Numbers along the force axis, and which edge is slow and which is fast. */
export function forceAxisLabels(scene: Scene, placer: Placer): void {
  const { forces, frame, axis, view, travel } = scene
  const { system } = view
  const { type } = frame
  const within = { ...forceArea(scene), x: frame.forces.x + 1, width: frame.forces.width - 2 }
  const y = scene.foot + 17
  const last = forces.ticks.at(-1) ?? 0
  const order = [0, last, ...forces.ticks.filter(force => force !== 0 && force !== last)]
  const style = { size: type.axis, ink: 'ink2' } as const
  for (const force of new Set(order)) {
    const plain = `${formatMeasure(force, 'force', system)} ${forceUnit(system)}`
    const short = shortForce(force, system)
    const wordings = force === last && last > 0 ? [plain, `${short} ${forceUnit(system)}`, short] : [short]
    placer.first(wordings, words =>
      placer.at(
        `force-tick-${short}`,
        placer.block([span(words, style)]),
        [{ x: forces.x(force), y, anchor: 'middle' }],
        within,
      ),
    )
  }
  const top = axis.y(travel.bump) - 6
  const { slow, fast } = forces.top
  const word = (id: string, text: string, ink: Ink, spots: Spot[]) =>
    placer.at(id, placer.block([span(text, { size: type.label, ink })]), spots, within)
  const [x1, x2] = [forces.x(slow), forces.x(fast)]
  const apart = x2 - x1 > 30
  word('force-slow', 'slow', 'ink', [
    ...(apart ? [{ x: x1, y: top, anchor: 'middle' as const }] : []),
    { x: (x1 + x2) / 2 - 3, y: top, anchor: 'end' },
  ])
  word('force-fast', 'fast', 'stop', [
    ...(apart ? [{ x: x2, y: top, anchor: 'middle' as const }] : []),
    { x: (x1 + x2) / 2 + 3, y: top, anchor: 'start' },
    { x: frame.forces.right - 3, y: top, anchor: 'end' },
  ])
}
