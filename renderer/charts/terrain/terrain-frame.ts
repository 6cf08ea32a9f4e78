import type { Column } from '../plate/frame.ts'

/** A strip of the terrain plate, px from the top. */
export interface Strip {
  readonly top: number
  readonly bottom: number
}

/** Columns and strips of the terrain plate at one size, px. */
export interface TerrainFrame {
  readonly width: number
  readonly height: number
  readonly small: boolean
  readonly head: number
  readonly titleBaseline: number
  readonly subtitleBaseline: number
  readonly inset: number
  readonly type: { readonly heading: number; readonly body: number; readonly label: number; readonly axis: number }
  readonly corner: Column
  readonly trace: Column
  readonly histogram: Column
  readonly names: Column
  /** The wheel travel axis: full bump at the top, full droop at the bottom, with room for marks beyond both. */
  readonly travel: Strip
  readonly road: Strip
  readonly forces: Strip
  /** Baseline of the numbers of the time axis. */
  readonly timeBaseline: number
  /** The whole run, where the trace shows only part of it. */
  readonly overview: Strip
}

const clamp = (value: number, least: number, most: number): number => Math.min(Math.max(value, least), most)

/** Order: corner, histogram, names; the trace takes the rest, and most of what is extra. */
const WIDE = [286, 176, 96] as const
const SMALL = [174, 128, 78] as const
/** Of the width beyond what these and a trace as wide as all of them need. */
const SHARE = [0.3, 0.12, 0] as const
const WIDE_FROM = 960

/**
 * @param width, height px, above 0
 * @param windowed the run is longer than the trace shows at once
 */
export function terrainFrame(width: number, height: number, windowed: boolean): TerrainFrame {
  const small = width < WIDE_FROM || height < 400
  const base = small ? SMALL : WIDE
  const extra = width - (small ? 804 : 1172)
  // Narrower than the smallest window: everything shrinks alike.
  const squeeze = Math.min(1, width / 720)
  const [corner = 0, histogram = 0, names = 0] = base.map((value, i) =>
    extra > 0 ? value + extra * (SHARE[i] ?? 0) : value * squeeze,
  )
  const column = (x: number, wide: number): Column => ({ x, width: wide, right: x + wide })
  const trace = Math.max(1, width - corner - histogram - names)

  const head = Math.min(small ? 38 : 44, height * 0.2)
  const room = Math.max(height - head, 1)
  const time = Math.min(small ? 17 : 20, room * 0.08)
  const over = windowed ? Math.min(small ? 13 : 16, room * 0.06) : 0
  const forces = Math.min(clamp(room * 0.24, 56, 210), room * 0.3)
  const road = Math.min(clamp(room * 0.08, 20, 56), room * 0.12)
  const gap = Math.min(small ? 7 : 10, room * 0.03)
  const timeTop = height - time - over
  const forcesTop = timeTop - forces
  const roadTop = forcesTop - gap - road
  return {
    width,
    height,
    small,
    head,
    titleBaseline: small ? 16 : 19,
    subtitleBaseline: small ? 31 : 36,
    inset: small ? 8 : 12,
    type: small ? { heading: 12, body: 11, label: 11, axis: 10.5 } : { heading: 13, body: 12, label: 11, axis: 10.5 },
    corner: column(0, corner),
    trace: column(corner, trace),
    histogram: column(corner + trace, histogram),
    names: column(corner + trace + histogram, names),
    travel: { top: head, bottom: roadTop },
    road: { top: roadTop, bottom: roadTop + road },
    forces: { top: forcesTop, bottom: forcesTop + forces },
    timeBaseline: timeTop + time - (small ? 5 : 6),
    overview: { top: height - over, bottom: height - (over > 0 ? 5 : 0) },
  }
}
