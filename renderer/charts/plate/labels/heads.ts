import type { Box } from '../../placement/box.ts'
import type { Label } from '../../placement/label.ts'
import { Placer } from '../../placement/placer.ts'
import { lengthSpans } from '../../text/length-spans.ts'
import { type Span, span } from '../../text/span.ts'
import { forceUnit } from '../force-text.ts'
import type { Column } from '../frame.ts'
import type { Scene } from '../scene.ts'

/** Writes heads into their columns. */
function writer({ frame, measure }: Scene) {
  const { type, inset, titleBaseline } = frame
  const placer = new Placer({ x: 0, y: 0, width: frame.width, height: frame.head }, measure)
  const line = (id: string, spans: readonly Span[], x: number, y: number, anchor: 'start' | 'middle', within: Box) =>
    placer.at(id, placer.block(spans), [{ x, y, anchor }], within)
  const areaOf = ({ x, width }: Column): Box => ({ x: x + 1, y: 0, width: width - 2, height: frame.head })
  const title = (id: string, column: Column, wordings: readonly string[]): void => {
    placer.first(wordings, text =>
      line(
        id,
        [span(text, { size: type.heading, weight: 600 })],
        column.x + inset,
        titleBaseline,
        'start',
        areaOf(column),
      ),
    )
  }
  return { placer, line, areaOf, title }
}

/** Titles and subtitles of the columns right of the drawing, demands aside. */
export function headLabels(scene: Scene): Label[] {
  const { frame, shafts, view, zones } = scene
  const { type, inset, subtitleBaseline, small } = frame
  const { placer, line, areaOf, title } = writer(scene)
  const quiet = { size: type.label, ink: 'ink2' } as const
  title('title-corner', { ...frame.corner, x: 4 }, ['Corner'])
  title('title-budget', frame.budget, ['Budget'])
  title('title-shafts', frame.shafts, ['Shafts'])
  title('title-forces', frame.forces, small ? ['Forces'] : ['Forces at the wheel', 'Forces'])

  const travel = lengthSpans(zones.bump, view.system, quiet, { unit: true })
  placer.first(small ? ['of', ''] : ['bump travel', 'of', ''], word => {
    const [first, ...rest] = travel
    const spans = word === '' || first === undefined ? travel : [span(word, quiet), { ...first, space: 4 }, ...rest]
    return line('subtitle-budget', spans, frame.budget.x + inset, subtitleBaseline, 'start', areaOf(frame.budget))
  })
  const unit = forceUnit(view.system)
  placer.first(
    small ? [`${unit}, slow to fast`, unit] : [`${unit}, from slow gas to fast gas`, `${unit}, slow to fast`, unit],
    text =>
      line(
        'subtitle-forces',
        [span(text, quiet)],
        frame.forces.x + inset,
        subtitleBaseline,
        'start',
        areaOf(frame.forces),
      ),
  )
  for (const bar of shafts)
    line(`head-${bar.id}`, [span(bar.title, quiet)], bar.centre, subtitleBaseline, 'middle', areaOf(frame.shafts))
  return placer.labels
}

/** Title of the demands, and a name over each bar. */
export function demandHeadLabels(scene: Scene): Label[] {
  const { frame, demands } = scene
  if (demands === null) return []
  const { placer, line, areaOf, title } = writer(scene)
  title('title-demands', demands.column, ['Demands'])
  for (const bar of demands.bars) {
    if (bar.name === '') continue
    const name = [span(bar.name, { size: frame.type.axis, ink: bar.span.counted ? 'ink2' : 'ink3' })]
    line(`head-demand-${bar.span.id}`, name, bar.nameX, frame.subtitleBaseline, 'middle', areaOf(demands.column))
  }
  return placer.labels
}
