import type { AxleId } from '../plan/schema.ts'
import type { Calibration } from './calibration.ts'

/** What a channel tells, and how. */
export interface Channel {
  readonly measures: 'shaft' | 'wheel'
  readonly calibration: Calibration
  /** Moments, s of the run's own time: standing at ride height, and at full droop; null where not picked. */
  readonly rideHeightAt: number | null
  readonly fullDroopAt: number | null
  /** Cutoff, Hz; null leaves the run as it was recorded. */
  readonly lowPass: number | null
}

/** One column taken from a file, and whose travel it is. */
export interface ChannelChoice extends Channel {
  /** From 0. */
  readonly column: number
  readonly axle: AxleId
  /** `both`: one shaft that stands for the axle. */
  readonly side: 'left' | 'right' | 'both'
}
