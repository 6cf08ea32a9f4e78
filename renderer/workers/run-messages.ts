import type { Problem } from '../../core/plan/problem.ts'
import type { AxleId, Plan, Terrain } from '../../core/plan/schema.ts'
import type { NoRide } from '../../core/ride/results.ts'
import type { Calibration } from '../../core/runs/calibration.ts'
import type { Channel, ChannelChoice } from '../../core/runs/channel.ts'
import type { RunDemand } from '../../core/runs/demand.ts'
import type { Detected } from '../../core/runs/detect.ts'
import type { Encoding } from '../../core/runs/encoding.ts'
import type { RunFigures } from '../../core/runs/figures.ts'
import type { RunFinding } from '../../core/runs/findings.ts'
import type { KeptChannel, KeptRun } from '../../core/runs/kept-run.ts'
import type { LaidRun, NotLaid } from '../../core/runs/lay.ts'
import type { Preview } from '../../core/runs/preview.ts'
import type { Column, Reading } from '../../core/runs/reading.ts'
import type { Table, TableEnd } from '../../core/runs/table-import.ts'

/** Over which axle of which setup a channel is laid. */
export interface LaidOver {
  readonly plan: Plan
  readonly setup: string
  readonly axle: AxleId
}

/** What may be asked about recorded runs. `run` names one that the worker holds; `place` is that of a channel among those it holds. */
export type RunAsk =
  /** How a file is read, from its beginning. `encoding`, `reading`: put right by somebody. */
  | {
      readonly kind: 'look'
      readonly file: Blob
      readonly encoding: Encoding | null
      readonly reading: Reading | null
    }
  /** Read a file to its end and hold the columns taken. */
  | {
      readonly kind: 'read'
      readonly run: string
      readonly file: Blob
      readonly reading: Reading
      readonly columns: readonly Column[]
      readonly taken: readonly number[]
    }
  | {
      readonly kind: 'lay'
      readonly run: string
      readonly place: number
      readonly channel: Channel
      readonly over: LaidOver
    }
  /** Where the run itself shows pad and stop meet, beside where the plan computes it. Takes longer than to lay it. */
  | {
      readonly kind: 'see'
      readonly run: string
      readonly place: number
      readonly channel: Channel
      readonly over: LaidOver
    }
  /** The scale by which ride height and full droop, at the moments picked, are as far apart as in the plan. */
  | {
      readonly kind: 'scale'
      readonly run: string
      readonly place: number
      readonly measures: Channel['measures']
      readonly rideHeightAt: number
      readonly fullDroopAt: number
      readonly over: LaidOver
    }
  /** A terrain driven over the same axle, counted as a recorded run is. */
  | { readonly kind: 'ride'; readonly terrain: Terrain; readonly over: LaidOver }
  /** The file of a run that is to be kept. */
  | {
      readonly kind: 'keep'
      readonly run: string
      readonly name: string
      readonly source: string
      readonly longestPause: number | null
      readonly columns: readonly Column[]
      readonly channels: readonly ChannelChoice[]
      /** Of each channel, among those held. */
      readonly places: readonly number[]
    }
  /** Hold what is in the file of a kept run. */
  | { readonly kind: 'restore'; readonly run: string; readonly base64: string }
  | { readonly kind: 'close'; readonly run: string }

export interface Looked {
  readonly detected: Detected
  /** As it would be read now. */
  readonly reading: Reading
  readonly preview: Preview
  /** What keeps it from being read so. */
  readonly problems: readonly Problem[]
  /** Bytes. */
  readonly size: number
}

export type WasRead =
  | ({ readonly ok: true; readonly start: number; readonly end: number } & Pick<
      Table,
      'rows' | 'faults' | 'firstLines' | 'startedAt'
    >)
  | (TableEnd & { readonly ok: false })

/** A channel laid over the plan, and what else the page says of it. */
export interface LaidWheel extends Omit<LaidRun, 'asRecorded'> {
  readonly demand: RunDemand | null
  /** Strokes a minute, as `strokesAMinute` has them. */
  readonly strokes: readonly number[]
}

export interface SeenBeside {
  readonly words: string
  /** Where the run and the plan do not agree. */
  readonly finding: RunFinding | null
}

export type Scaled =
  | { readonly ok: true; readonly calibration: Calibration }
  | { readonly ok: false; readonly why: 'nothing at ride height' | 'nothing at full droop' | 'no difference' }

export type RiddenAsRun =
  | { readonly ok: true; readonly figures: RunFigures }
  | { readonly ok: false; readonly why: NoRide['reason'] }

export type Encoded =
  | { readonly ok: true; readonly base64: string }
  /** Bytes. */
  | { readonly ok: false; readonly size: number; readonly most: number }

/** A kept run without its numbers, which stay with the worker. */
export type Restored =
  | {
      readonly ok: true
      readonly run: Omit<KeptRun, 'time' | 'channels'> & {
        readonly channels: readonly Omit<KeptChannel, 'readings'>[]
      }
      readonly rows: number
      readonly start: number
      readonly end: number
    }
  | { readonly ok: false; readonly why: string }

export interface RunAnswers {
  readonly look: Looked
  readonly read: WasRead
  readonly lay: LaidWheel | NotLaid
  readonly see: SeenBeside | null
  readonly scale: Scaled
  readonly ride: RiddenAsRun
  readonly keep: Encoded
  readonly restore: Restored
  readonly close: null
}

/** To the worker: a question, or that nobody waits for its answer any more. */
export type RunWord = { readonly id: number; readonly ask: RunAsk } | { readonly cancel: number }

/** From the worker: how far it is, the answer, or why there is none; `cancelled` when it was told that nobody waits. */
export type RunReply =
  | { readonly id: number; readonly share: number }
  | { readonly id: number; readonly answer: RunAnswers[RunAsk['kind']] }
  | { readonly id: number; readonly fault: string }
  | { readonly id: number; readonly cancelled: true }
