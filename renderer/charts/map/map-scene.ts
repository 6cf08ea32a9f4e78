import { scaleLinear } from 'd3'
import type { Worked } from '../../../core/changes/evaluate.ts'
import type { Proposals } from '../../../core/changes/propose.ts'
import type { Targets } from '../../../core/plan/schema.ts'
import { formatMeasure } from '../../../core/units/format.ts'
import { type System, toUnit, unitOf } from '../../../core/units/quantity.ts'

export interface MapPoint {
  readonly candidate: Worked
  readonly x: number
  readonly y: number
}

export interface MapTick {
  readonly at: number
  readonly text: string
}

/** Places on the map, px: landing height to the right, the coilover's share upwards. */
export interface MapScene {
  readonly left: number
  readonly top: number
  readonly right: number
  readonly bottom: number
  readonly across: readonly MapTick[]
  readonly up: readonly MapTick[]
  readonly points: readonly MapPoint[]
  readonly present: MapPoint | null
  /** The setup it is compared with; null where there is none. */
  readonly other: MapPoint | null
  /** Where the targets stand; null for one the plan does not name. */
  readonly shareY: number | null
  readonly landingX: number | null
  /** Highest landing height on the map, m. */
  readonly highest: number
  readonly shareAt: (y: number) => number
  readonly landingAt: (x: number) => number
}

const MARGIN = { left: 46, right: 14, top: 12, bottom: 36 } as const

/** Room beyond the highest candidate or target, as a share. */
const BEYOND = 1.12

/** The map begins at this share of the lowest. */
const LESS = 0.6

export function mapScene(
  width: number,
  height: number,
  proposals: Proposals | null,
  targets: Targets,
  system: System,
  other: Worked | null = null,
): MapScene {
  const found = proposals === null ? [] : [proposals.present, ...proposals.order]
  const all = other === null ? found : [...found, other]
  const most = Math.max(0.1, targets.landingDrop ?? 0, ...all.map(({ figures }) => figures.landing.drop))
  const unit = unitOf('length', system).size
  const [left, right] = [MARGIN.left, Math.max(MARGIN.left + 10, width - MARGIN.right)]
  const [top, bottom] = [MARGIN.top, Math.max(MARGIN.top + 10, height - MARGIN.bottom)]
  const least = Math.min(most, targets.landingDrop ?? most, ...all.map(({ figures }) => figures.landing.drop))
  const mostShare = Math.max(0.1, targets.coiloverShare ?? 0, ...all.map(({ figures }) => figures.share))
  const from = least * LESS
  const across = scaleLinear(
    [from, most * BEYOND].map(drop => toUnit(drop, 'length', system)),
    [left, right],
  )
  const up = scaleLinear([0, Math.min(1, mostShare * BEYOND)], [bottom, top])
  const x = (drop: number): number => across(drop / unit)
  const stops = across.ticks(Math.max(2, Math.floor((right - left) / 70)))
  // As many digits as tell neighbours apart.
  const digits = Math.max(0, -Math.floor(Math.log10((stops[1] ?? 1) - (stops[0] ?? 0)) + 1e-9))
  const placed = (candidate: Worked): MapPoint => ({
    candidate,
    x: x(candidate.figures.landing.drop),
    y: up(candidate.figures.share),
  })
  return {
    left,
    top,
    right,
    bottom,
    across: stops.map(tick => ({
      at: across(tick),
      text: formatMeasure(tick * unit, 'length', system, { digits }),
    })),
    up: up.ticks(5).map(tick => ({ at: up(tick), text: formatMeasure(tick, 'share', system, { unit: true }) })),
    points: proposals === null ? [] : proposals.order.map(placed),
    present: proposals === null ? null : placed(proposals.present),
    other: other === null ? null : placed(other),
    shareY: targets.coiloverShare === undefined ? null : up(targets.coiloverShare),
    landingX: targets.landingDrop === undefined ? null : x(targets.landingDrop),
    highest: most * BEYOND,
    shareAt: y => Math.min(1, Math.max(0, up.invert(y))),
    landingAt: to => Math.min(most * BEYOND, Math.max(from, across.invert(to) * unit)),
  }
}

/** The point nearest to a place, if it is near enough to be meant. */
export function pointNear({ points }: MapScene, x: number, y: number, within = 14): MapPoint | null {
  let nearest: MapPoint | null = null
  let least = within ** 2
  for (const point of points) {
    const distance = (point.x - x) ** 2 + (point.y - y) ** 2
    if (distance <= least) [nearest, least] = [point, distance]
  }
  return nearest
}
