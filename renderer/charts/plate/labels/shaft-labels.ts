import type { Placer, Spot } from '../../placement/placer.ts'
import { lengthSpans, onTape } from '../../text/length-spans.ts'
import { span } from '../../text/span.ts'
import type { Scene } from '../scene.ts'
import type { ShaftBar } from '../shafts-geometry.ts'

const fills = (bar: ShaftBar, wheel: number): boolean => bar.absent === null && wheel > bar.from

/** What is left of each shaft at the wheel position, on the wheel line. */
export function shaftReadings(scene: Scene, placer: Placer, wheel: number): void {
  const { shafts, frame, axis, view, measure } = scene
  const y = axis.y(wheel)
  const within = { x: frame.shafts.x + 1, y: axis.top, width: frame.shafts.width - 2, height: axis.bottom - axis.top }
  const shown = shafts.filter(bar => bar.absent === null)
  const spans = (bar: ShaftBar, size: number) =>
    lengthSpans(onTape(bar.left(wheel), view.system), view.system, { size, weight: 600 })
  const sizes = [frame.type.reading, 12, 11, 10.5].filter(size => size <= frame.type.reading)
  const pitch = frame.shafts.width / 3
  const widest = (size: number) =>
    Math.max(...shown.map(bar => spans(bar, size).reduce((sum, s) => sum + measure(s.text, s.size, s.weight), 0)))
  const size = sizes.find(candidate => widest(candidate) <= pitch - 4) ?? (sizes.at(-1) as number)
  const above = y - 6
  const below = y + size + 3
  for (const bar of shown) {
    const text = placer.block(spans(bar, size))
    const spot = (at: number): Spot => ({ x: bar.centre, y: at, anchor: 'middle' })
    const foot = [spot(bar.bottom + size + 3), spot(bar.bottom - 5)]
    placer.at(
      `left-${bar.id}`,
      text,
      fills(bar, wheel) || bar.id !== 'stop' ? [spot(above), spot(below)] : foot,
      within,
    ) ?? placer.near(`left-${bar.id}`, text, bar.centre, fills(bar, wheel) ? y : bar.bottom, 'middle', within)
  }
}

/** What is left at full bump, on top of each bar; what stands in for a bar that is not there; what the readings are. */
export function shaftCaptions(scene: Scene, placer: Placer): void {
  const { shafts, frame, axis, view } = scene
  const { type } = frame
  const within = { x: frame.shafts.x + 1, y: axis.top, width: frame.shafts.width - 2, height: axis.bottom - axis.top }
  for (const bar of shafts) {
    if (bar.absent !== null) {
      const middle = (bar.top + bar.bottom) / 2
      const word = placer.block([span(bar.absent, { size: type.axis, ink: 'ink2' })])
      const lines = bar.absent.split(' ').map(part => [span(part, { size: type.axis, ink: 'ink2' })])
      placer.near(`absent-${bar.id}`, word, bar.centre, middle, 'middle', within) ??
        placer.near(`absent-${bar.id}`, placer.block(...lines), bar.centre, middle, 'middle', within)
    }
    if (bar.spare === null || bar.absent !== null) continue
    const text = placer.block(lengthSpans(onTape(bar.spare, view.system), view.system, { size: type.axis }))
    placer.near(`spare-${bar.id}`, text, bar.centre, bar.top - 4 - text.height / 2, 'middle', {
      ...within,
      height: bar.top - 1 - within.y,
    })
  }
  const y = scene.foot + 17
  const unit = view.system === 'inch' ? 'inches left' : 'mm left'
  for (const words of [unit, 'left']) {
    const text = placer.block([span(words, { size: type.axis, ink: 'ink2' })])
    const x = frame.shafts.x + (frame.small ? 7 : 10)
    if (placer.at('left-unit', text, [{ x, y, anchor: 'start' }], within) !== null) return
  }
}
