import type { CornerModel } from '../../../core/corner/corner-model.ts'
import type { Stop } from '../../../core/plan/schema.ts'
import type { Stretch } from './coilover.ts'
import { clamp } from './flat.ts'

/** Sizes of a stop, m, halves across its axis; what the plan does not hold follows in the proportions of common parts. */
export interface StopBuild {
  readonly kind: Stop['kind']
  /** Its widest part. */
  readonly half: number
  readonly shaft: number
  readonly foot: number
  readonly footThickness: number
  /** Radius of the foot's rounded face. */
  readonly dome: number
  /** From the foot's face, fully out, to its far end. */
  readonly height: number
  /** Length of the body, 0 for an elastomer. */
  readonly body: number
  readonly stroke: number
}

/** Part of its height that a block of foam or rubber gives up at the end of its curve. */
const GIVES = 0.7

export function stopBuild(stop: Stop): StopBuild {
  if (stop.kind === 'elastomer') {
    const stroke = stop.curve.at(-1)!.deflection
    const height = stroke / GIVES
    const half = 0.42 * height
    return {
      kind: 'elastomer',
      half: 1.3 * half,
      shaft: half,
      foot: half,
      footThickness: 0.1 * height,
      dome: 2 * half,
      height,
      body: 0,
      stroke,
    }
  }
  const { stroke } = stop
  const unit = clamp(stop.shaftDiameter, stroke / 8, stroke)
  const half = clamp(0.58 * (stop.body?.bore ?? 1.42 * unit), 0.62 * unit, 1.6 * unit)
  const foot = Math.min(0.76 * unit, half)
  const footThickness = 0.4 * unit
  const body = 1.55 * stroke + 2.3 * unit
  return {
    kind: 'hydraulic',
    half: 1.24 * half,
    shaft: 0.5 * unit,
    foot,
    footThickness,
    dome: 1.8 * foot,
    height: footThickness + stroke + body,
    body,
    stroke,
  }
}

/** Where pad and stop stand at one wheel position: m along the stop's axis from the pad at ride height. */
export interface StopStations {
  readonly pad: number
  /** Where the foot's face (or the block's) is. */
  readonly face: number
  /** Pushed in, and left to go. */
  readonly compression: number
  readonly left: number
  /** Far end, fixed to the chassis. */
  readonly top: number
  /** Shaft showing between foot and body; for an elastomer what it can still give. */
  readonly shaft: Stretch
}

export function stopStations(build: StopBuild, model: CornerModel, wheel: number): StopStations | null {
  const { stop } = model.corner
  const { stopGap, stopCompression, stopLeft } = model.parts(wheel)
  if (stop === null || stopGap === null || stopCompression === null || stopLeft === null) return null
  const face = stop.gap + stopCompression
  const from = build.kind === 'hydraulic' ? face + build.footThickness : face
  return {
    pad: stop.gap - stopGap,
    face,
    compression: stopCompression,
    left: stopLeft,
    top: stop.gap + build.height,
    shaft: { from, to: from + stopLeft },
  }
}
