import { seededRandom } from '../numerics/random.ts'
import type { Terrain } from '../plan/schema.ts'
import type { Road } from './road.ts'

/** Level road before and after an obstacle, s. */
const LEAD_IN = 1
const RUN_OUT = 2
const LANDING_TIME = 3

/** A step no longer than this sees every motion of a car, s. */
const LONGEST_STEP = 0.02

const flat = (duration: number): Road => ({
  duration,
  at: () => ({ height: 0, rise: 0 }),
  breaks: [],
  longestStep: LONGEST_STEP,
})

/** ½·height·(1 − cos 2πx/spacing) over `count` waves, 1 s lead-in, 2 s run-out. */
function whoops({ spacing, height, speed, count }: Extract<Terrain, { kind: 'whoops' }>): Road {
  const period = spacing / speed
  const end = LEAD_IN + count * period
  const turning = (2 * Math.PI) / period
  return {
    duration: end + RUN_OUT,
    at: time => {
      if (time <= LEAD_IN || time >= end) return { height: 0, rise: 0 }
      const angle = turning * (time - LEAD_IN)
      return { height: (height / 2) * (1 - Math.cos(angle)), rise: (height / 2) * turning * Math.sin(angle) }
    },
    breaks: [LEAD_IN, end],
    longestStep: Math.min(LONGEST_STEP, period / 8),
  }
}

/** A step is met by a wheel at least this many times as large in radius as the step is high, so that no road stands upright. */
const ROLLABLE = 1.25

/**
 * A step up, level for `length`, and down again, as the axle of a round wheel follows it: an arc of the tire's radius about each edge
 * (of a larger one where the step is too high for that wheel to roll).
 */
function ledge({ height, length, speed }: Extract<Terrain, { kind: 'ledge' }>, tireRadius: number): Road {
  const radius = Math.max(tireRadius, ROLLABLE * height)
  const reach = Math.sqrt(2 * radius * height - height * height)
  const start = LEAD_IN * speed
  const up = start + reach
  const down = up + length
  const end = down + reach
  const arc = (distance: number) => {
    const across = Math.sqrt(radius * radius - distance * distance)
    return { height: across - (radius - height), rise: (-distance / across) * speed }
  }
  return {
    duration: end / speed + RUN_OUT,
    at: time => {
      const x = speed * time
      if (x <= start || x >= end) return { height: 0, rise: 0 }
      return x < up ? arc(x - up) : x <= down ? { height, rise: 0 } : arc(x - down)
    },
    breaks: [start, up, down, end].map(place => place / speed),
    longestStep: Math.min(LONGEST_STEP, Math.max(reach, 1e-3) / speed / 4),
  }
}

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

/**
 * A road of an ISO 8608 class as a sum of sines with seeded phases: Gd(n) = Gd(n₀)·(n/n₀)⁻², each line carrying its band's whole variance,
 * Gd(n₀)·n₀²·(1/n₁ − 1/n₂). Class means, not their upper limits.
 */
function rough({ isoClass, speed, duration, seed }: Extract<Terrain, { kind: 'rough' }>): Road {
  const random = seededRandom(seed)
  const ratio = (BAND[1] / BAND[0]) ** (1 / LINES)
  const lines = Array.from({ length: LINES }, (_, i) => {
    const low = BAND[0] * ratio ** i
    const high = low * ratio
    const frequency = low + (high - low) * random()
    const amplitude = Math.sqrt(2 * ROUGHNESS[isoClass] * N0 * N0 * (1 / low - 1 / high))
    return { turning: 2 * Math.PI * frequency * speed, amplitude, phase: 2 * Math.PI * random() }
  })
  const height = (time: number): number =>
    lines.reduce((sum, line) => sum + line.amplitude * Math.sin(line.turning * time + line.phase), 0)
  const atStart = height(0)
  return {
    duration,
    at: time => {
      let z = -atStart
      let rise = 0
      for (const { turning, amplitude, phase } of lines) {
        const angle = turning * time + phase
        z += amplitude * Math.sin(angle)
        rise += amplitude * turning * Math.cos(angle)
      }
      return { height: z, rise }
    },
    breaks: [],
    longestStep: Math.min(LONGEST_STEP, 1 / (8 * BAND[1] * speed)),
  }
}

/** The road of a terrain under a wheel of `radius` m. */
export function roadOf(terrain: Terrain, radius: number): Road {
  switch (terrain.kind) {
    case 'whoops':
      return whoops(terrain)
    case 'landing':
      return flat(LANDING_TIME)
    case 'ledge':
      return ledge(terrain, radius)
    case 'rough':
      return rough(terrain)
  }
}
