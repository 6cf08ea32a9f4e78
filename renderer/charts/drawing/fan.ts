import { type Figure, wheelPath } from './figure.ts'
import { clamp, type Flat } from './flat.ts'
import type { Layout } from './layout.ts'
import { type Look, type Shape, shape } from './look.ts'
import { pagePath } from './pen.ts'

/** What the fan carries from the wheel's path to the axis: wheel positions, m. */
export interface FanMarks {
  readonly coilover: { readonly from: number; readonly to: number }
  readonly engagementZone: { readonly from: number; readonly to: number }
  readonly engagement: number | null
  readonly otherEngagement: number | null
}

const hubOnPage = (figure: Figure, { place }: Layout, wheel: number): Flat =>
  place.at(figure.skeleton.at(clamp(wheel, figure.model.droop, figure.model.bump)).hub)

/** A straight line from the hub at a wheel position to that position on the axis. */
export const fanLine = (figure: Figure, layout: Layout, wheel: number): string =>
  pagePath([hubOnPage(figure, layout, wheel), [layout.axisX, layout.axisY(wheel)]])

function wedge(figure: Figure, layout: Layout, look: Look, { from, to }: { from: number; to: number }): Shape[] {
  if (to <= from) return []
  const path = wheelPath(figure, from, to).map(layout.place.at)
  const onAxis: Flat[] = [
    [layout.axisX, layout.axisY(to)],
    [layout.axisX, layout.axisY(from)],
  ]
  return [shape(look, pagePath([...path, ...onAxis], true))]
}

const tick = ([x, y]: Flat): string =>
  pagePath([
    [x - 5, y],
    [x + 5, y],
  ])

/** The parts of the fan that stand still, the wheel's path with its marks, and the line of ride height. */
export function fanShapes(figure: Figure, layout: Layout, marks: FanMarks): Shape[] {
  const { droop, bump } = figure.model
  const { x, small } = layout.column
  const ride = hubOnPage(figure, layout, 0)
  const line = (look: Look, wheel: number | null): Shape[] =>
    wheel === null ? [] : [shape(look, fanLine(figure, layout, wheel))]
  const at = (wheel: number): string => tick(hubOnPage(figure, layout, wheel))
  return [
    ...wedge(figure, layout, 'engagementZone', marks.engagementZone),
    ...wedge(figure, layout, 'coiloverZone', marks.coilover),
    ...line('fan', bump),
    ...line('fan', droop),
    ...line('fanOther', marks.otherEngagement),
    ...line('fanEngagement', marks.engagement),
    shape('wheelPath', pagePath(wheelPath(figure, droop, bump).map(layout.place.at))),
    shape('mark', at(droop) + at(bump)),
    ...(marks.engagement === null ? [] : [shape('engagementMark', at(marks.engagement))]),
    shape('rideHeight', pagePath([[x + (small ? 12 : 16), ride[1]], ride, [layout.axisX, layout.axisY(0)]])),
  ]
}
