import { seededRandom } from '../numerics/random.ts'
import type { Terrain } from '../plan/schema.ts'
import { LONGEST_STEP, lookedAt, type Road, type Under } from './road.ts'

/** Gd(n₀), m³, geometric mean of each road class: ISO 8608:2016, table C.1 (classes A to E as printed; F to H each four times the one before). */
export const ROUGHNESS = {
  A: 16e-6,
  B: 64e-6,
  C: 256e-6,
  D: 1024e-6,
  E: 4096e-6,
  F: 16384e-6,
  G: 65536e-6,
  H: 262144e-6,
} as const

/** Reference spatial frequency of ISO 8608, and the band it describes a road over, cycles/m. */
const N0 = 0.1
const BAND = [0.011, 2.83] as const
const LINES = 240

/** One wave of a road: cycles/m, m, rad. */
export interface Line {
  readonly frequency: number
  readonly amplitude: number
  readonly phase: number
}

/**
 * A road of an ISO 8608 class as a sum of sines with seeded phases: Gd(n) = Gd(n₀)·(n/n₀)⁻², each line carrying its band's whole variance,
 * Gd(n₀)·n₀²·(1/n₁ − 1/n₂). Class means, not their upper limits.
 */
export function roughLines(isoClass: keyof typeof ROUGHNESS, seed: number): Line[] {
  const random = seededRandom(seed)
  const ratio = (BAND[1] / BAND[0]) ** (1 / LINES)
  return Array.from({ length: LINES }, (_, i) => {
    const low = BAND[0] * ratio ** i
    const high = low * ratio
    const frequency = low + (high - low) * random()
    const amplitude = Math.sqrt(2 * ROUGHNESS[isoClass] * N0 * N0 * (1 / low - 1 / high))
    return { frequency, amplitude, phase: 2 * Math.PI * random() }
  })
}

/** Places a stretch holds, and their distance, m: 16 on the shortest wave, so that the cubic between is good to 6·10⁻⁵ of that wave's height. */
const PLACES = 1024
const SPACING = 1 / (16 * BAND[1])

/** A stretch of road worked out at even places, without a sine for each: every line is turned on from place to place. */
class Stretch {
  index = -1
  private readonly heights = new Float64Array(PLACES + 1)
  private readonly slopes = new Float64Array(PLACES + 1)

  fill(index: number, lines: readonly Line[], base: number): void {
    const { heights, slopes } = this
    this.index = index
    heights.fill(-base)
    slopes.fill(0)
    const start = index * PLACES * SPACING
    for (const { frequency, amplitude, phase } of lines) {
      const turning = 2 * Math.PI * frequency
      let sine = amplitude * Math.sin(turning * start + phase)
      let cosine = amplitude * Math.cos(turning * start + phase)
      const [s, c] = [Math.sin(turning * SPACING), Math.cos(turning * SPACING)]
      for (let i = 0; i <= PLACES; i += 1) {
        heights[i]! += sine
        slopes[i]! += turning * cosine
        const next = sine * c + cosine * s
        cosine = cosine * c - sine * s
        sine = next
      }
    }
  }

  /** @param place from its start, in places, 0 to PLACES; @param speed m/s */
  look(place: number, speed: number, under: Under): void {
    const i = Math.min(PLACES - 1, place | 0)
    const t = place - i
    const h0 = this.heights[i]!
    const d0 = this.slopes[i]! * SPACING
    const d1 = this.slopes[i + 1]! * SPACING
    const rise = this.heights[i + 1]! - h0
    const bend = 3 * rise - 2 * d0 - d1
    const twist = d0 + d1 - 2 * rise
    under.road = h0 + t * (d0 + t * (bend + t * twist))
    under.roadRise = ((d0 + t * (2 * bend + 3 * t * twist)) / SPACING) * speed
  }
}

/** A rough road under a wheel; the last two stretches asked for are kept. */
export function rough({ isoClass, speed, duration, seed }: Extract<Terrain, { kind: 'rough' }>): Road {
  const lines = roughLines(isoClass, seed)
  const base = lines.reduce((sum, { amplitude, phase }) => sum + amplitude * Math.sin(phase), 0)
  let [here, other] = [new Stretch(), new Stretch()]
  const perSecond = speed / SPACING
  const stretch = (index: number): Stretch => {
    if (here.index !== index) [here, other] = [other, here]
    if (here.index !== index) here.fill(index, lines, base)
    return here
  }
  const look = (time: number, under: Under): void => {
    const place = time * perSecond
    const index = Math.floor(place / PLACES)
    stretch(index).look(place - index * PLACES, speed, under)
  }
  return {
    duration,
    ...lookedAt(look),
    look,
    breaks: [],
    longestStep: () => Math.min(LONGEST_STEP, 1 / (4 * BAND[1] * speed)),
  }
}
