import type { Placer } from '../placement/placer.ts'
import { span } from '../text/span.ts'
import type { TravelScene } from './travel-scene.ts'

/** Titles and subtitles of the columns. @param subject the terrain's name */
export function heads(scene: TravelScene, placer: Placer, subject: string): void {
  const { frame, duration, view } = scene
  const { type, inset } = frame
  const quiet = { size: type.label, ink: 'ink2' } as const
  const unit = view.system === 'inch' ? 'in' : 'mm'
  const line = (id: string, wordings: readonly string[], x: number, y: number, right: number, bold: boolean): void => {
    const style = bold ? ({ size: type.heading, weight: 600 } as const) : quiet
    placer.first(wordings, text =>
      placer.at(id, placer.block([span(text, style)]), [{ x, y, anchor: 'start' }], {
        x: 0,
        y: 0,
        width: right - 3,
        height: frame.head,
      }),
    )
  }
  const { titleBaseline: title, subtitleBaseline: sub, corner, trace, histogram, names } = frame
  line('title-corner', ['Corner'], corner.x + (frame.small ? 12 : 16), title, corner.right, true)
  const x = trace.x + inset
  line('title-trace', ['Wheel position over time', 'Wheel over time', 'Trace'], x, title, trace.right, true)
  if (duration > 0) {
    const lasts = `${duration.toFixed(duration < 100 ? 1 : 0)} s`
    line('subtitle-trace', [`${unit}, ${lasts} of ${subject}`, `${unit}, ${lasts}`, unit], x, sub, trace.right, false)
  }
  const h = histogram.x + inset
  line('title-histogram', ['Time spent there', 'Time spent', 'Time'], h, title, names.right, true)
  line(
    'subtitle-histogram',
    ['share of the run at each height', 'share of the run', 'share'],
    h,
    sub,
    names.right,
    false,
  )
}
