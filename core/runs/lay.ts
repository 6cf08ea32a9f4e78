import type { AxleLedger } from '../loads/ledger.ts'
import type { AxleModel } from '../loads/setup-model.ts'
import type { Say } from '../units/saying.ts'
import { type Calibration, readingAt, travelOf, zeroed } from './calibration.ts'
import type { Channel } from './channel.ts'
import { type EvenRun, evenly, type Stretch } from './evenly.ts'
import { type RunFigures, runFigures } from './figures.ts'
import { type RunFinding, runFindings } from './findings.ts'
import { HIGHEST_CUTOFF, lowPass } from './low-pass.ts'
import { saturatedShare } from './saturation.ts'
import { wheelFromShaft } from './wheel-travel.ts'

/** One channel as recorded. */
export interface Recorded {
  /** Strictly rising, s. */
  readonly time: Float64Array
  /** In the sensor's own unit, NaN where missing. */
  readonly readings: Float64Array
  /** A longer pause is a gap, s; null: five of the usual steps. */
  readonly longestPause: number | null
}

export interface LaidRun {
  readonly ok: true
  readonly figures: RunFigures
  readonly findings: readonly RunFinding[]
  /** As used, with zero and sign. */
  readonly calibration: Calibration
  /** Wheel travel from ride height, m. */
  readonly run: EvenRun
  /** The same before anything was filtered: what `seeEngagement` looks in. */
  readonly asRecorded: EvenRun
}

export type NotLaid =
  | {
      readonly ok: false
      readonly why:
        | 'no rows'
        | 'not calibrated'
        | 'shaft turns back'
        | 'nothing at ride height'
        | 'nothing at full droop'
    }
  /** With the highest cutoff there is for this run, Hz. */
  | { readonly ok: false; readonly why: 'cutoff too high'; readonly highest: number }

/** Lays one recorded channel over an axle of the plan: readings to travel, travel to wheel, and what the wheel did. */
export function layRun(
  { model, rest }: AxleModel,
  ledger: AxleLedger,
  { time, readings, longestPause }: Recorded,
  channel: Channel,
  say: Say,
): LaidRun | NotLaid {
  if (channel.calibration.scale === 0) return { ok: false, why: 'not calibrated' }
  const recorded = evenly(time, readings, longestPause)
  if (recorded === null) return { ok: false, why: 'no rows' }
  const { step } = recorded
  if (channel.lowPass !== null && channel.lowPass > HIGHEST_CUTOFF / step)
    return { ok: false, why: 'cutoff too high', highest: HIGHEST_CUTOFF / step }
  const moment = (at: number | null): number | null => (at === null ? null : readingAt(time, readings, at))
  const [ride, droop] = [moment(channel.rideHeightAt), moment(channel.fullDroopAt)]
  if (channel.rideHeightAt !== null && ride === null) return { ok: false, why: 'nothing at ride height' }
  if (channel.fullDroopAt !== null && droop === null) return { ok: false, why: 'nothing at full droop' }
  const calibration = ride === null ? channel.calibration : zeroed(channel.calibration, ride, droop)
  const toWheel = channel.measures === 'wheel' ? (travel: number) => travel : wheelFromShaft(model)
  if (toWheel === null) return { ok: false, why: 'shaft turns back' }
  const wheels = (filtered: (values: Float64Array) => Float64Array): EvenRun => ({
    ...recorded,
    stretches: recorded.stretches.map(({ start, values }): Stretch => {
      return { start, values: filtered(values).map(reading => toWheel(travelOf(calibration, reading))) }
    }),
  })
  const { lowPass: cutoff } = channel
  const asRecorded = wheels(values => values)
  const run = cutoff === null ? asRecorded : wheels(values => lowPass(values, cutoff, step))
  const places = ledger.rows.flatMap(({ id, label, to }) => (to === null ? [] : [{ id, label, wheel: to }]))
  const figures = runFigures(model, run, places)
  const { low, high } = saturatedShare(readings)
  const saturated = calibration.scale > 0 ? { droop: low, bump: high } : { droop: high, bump: low }
  const hung = droop === null ? null : toWheel(travelOf(calibration, droop))
  const findings = runFindings({ model, rest, figures, saturated, hung, say })
  return { ok: true, figures, findings, calibration, run, asRecorded }
}
