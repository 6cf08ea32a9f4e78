/** From a reading to a travel: travel = offset + scale · reading. Travel is of shaft or wheel from ride height, m, positive in bump. */
export interface Calibration {
  /** m for one of the reading's unit, not 0. */
  readonly scale: number
  readonly offset: number
}

/** A reading, in the sensor's own unit, and the travel it was taken at, m. */
export interface CalibrationPoint {
  readonly reading: number
  readonly travel: number
}

/** Travel from ride height at a reading, m, positive in bump. */
export const travelOf = ({ scale, offset }: Calibration, reading: number): number => offset + scale * reading
/** The reading at a travel, m: in the sensor's own unit. */
export const readingOf = ({ scale, offset }: Calibration, travel: number): number => (travel - offset) / scale

/** The straight line through two points; null when their readings or their travels are the same. */
export function twoPoint(a: CalibrationPoint, b: CalibrationPoint): Calibration | null {
  if (a.reading === b.reading || a.travel === b.travel) return null
  const scale = (b.travel - a.travel) / (b.reading - a.reading)
  return { scale, offset: a.travel - scale * a.reading }
}

/**
 * The same sensor with its zero where the car stood at ride height, and its sign such that droop is below it.
 * @param ride reading at ride height; @param droop reading at full droop, where that was recorded
 */
export function zeroed({ scale }: Calibration, ride: number, droop: number | null): Calibration {
  const signed = droop !== null && (droop - ride) * scale > 0 ? -scale : scale
  return { scale: signed, offset: -signed * ride }
}

/**
 * The calibration by which ride height and full droop are as far apart as they are known to be; null when the readings do not differ, or the
 * travel is nothing.
 * @param ride reading at ride height; @param droop reading at full droop; @param travel from one to the other, m, negative
 */
export const byTravel = (ride: number, droop: number, travel: number): Calibration | null =>
  twoPoint({ reading: ride, travel: 0 }, { reading: droop, travel })

/** Time about a moment that its reading is averaged over, s: longer than a shake, shorter than a change. */
const ABOUT = 0.1

/** The reading at a moment, averaged over 0.1 s about it; null when nothing was recorded there. @param time rising, s */
export function readingAt(time: Float64Array, values: Float64Array, moment: number): number | null {
  let [sum, count] = [0, 0]
  for (const [i, at] of time.entries()) {
    if (at < moment - ABOUT / 2 || at > moment + ABOUT / 2 || Number.isNaN(values[i]!)) continue
    sum += values[i]!
    count += 1
  }
  return count === 0 ? null : sum / count
}
