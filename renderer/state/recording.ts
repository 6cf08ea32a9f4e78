import type { ChannelChoice } from '../../core/runs/channel.ts'
import type { Column, Reading } from '../../core/runs/reading.ts'
import type { Fingerprint } from '../../core/runs/recipe.ts'
import type { Looked, WasRead } from '../workers/run-messages.ts'

/** What was found in a file once it was read to its end. */
export type Found = Omit<Extract<WasRead, { ok: true }>, 'ok'>

/** A recorded run in the window. Its numbers are with the worker. */
export interface Recording {
  readonly id: string
  readonly name: string
  /** The setup that was driven. */
  readonly driven: string
  /** null: from a run that was kept. */
  readonly file: File | null
  /** Name of the file it came from, once. */
  readonly source: string
  /** How its beginning reads; null while it is looked at, and for a kept run. */
  readonly looked: Looked | null
  readonly fingerprint: Fingerprint | null
  /** null for a kept run. */
  readonly reading: Reading | null
  readonly longestPause: number | null
  readonly columns: readonly Column[]
  readonly channels: readonly ChannelChoice[]
  /** Columns whose numbers the worker holds, in its order; none before the file was read. */
  readonly taken: readonly number[]
  readonly found: Found | null
  /** What is under way, and how far, 0 to 1. */
  readonly work: { readonly kind: 'looking' | 'reading' | 'opening' | 'keeping'; readonly share: number } | null
  /** What went wrong last, in a sentence. */
  readonly trouble: string | null
  /** The recipe it is read by, by name; null where it was told from the file itself. */
  readonly recipe: string | null
  /** Id of the run in the plan, where it is kept as it is now. */
  readonly kept: string | null
}

/** Nothing is known of it yet. */
export const emptyRecording = {
  looked: null,
  fingerprint: null,
  reading: null,
  longestPause: null,
  columns: [],
  channels: [],
  taken: [],
  found: null,
  trouble: null,
  recipe: null,
  kept: null,
} as const satisfies Partial<Recording>

/** Columns whose numbers are wanted, each once. */
export const wantedColumns = (channels: readonly ChannelChoice[]): number[] => [
  ...new Set(channels.map(({ column }) => column)),
]

/** Whether the worker holds all that the channels need, read as it is to be read now. */
export const isRead = ({ found, taken, channels }: Recording): boolean =>
  found !== null && channels.length > 0 && channels.every(({ column }) => taken.includes(column))

/** What keeps a file from being read to its end, in a sentence; null when nothing does. */
export function whyNotRead({ looked, channels, columns }: Recording): string | null {
  if (looked === null) return 'Its beginning is not read yet.'
  if (looked.size === 0) return 'The file is empty: open another.'
  const { rows } = looked.preview
  const [problem] = looked.problems
  const untimed =
    problem?.path === 'time.rowsPerSecond' &&
    rows.some(({ fault, numbers }) => fault === 'time' && numbers.some(number => number !== null))
  if (!untimed && !rows.some(({ fault }) => fault === null))
    return 'No row can be read in this way: choose how cells are parted and where the rows begin.'
  if (problem !== undefined)
    return problem.path === 'time.rowsPerSecond'
      ? 'No column tells the time: enter the rows a second it was recorded at, or choose the column.'
      : `It cannot be read so: ${problem.path} is ${problem.found}; it should be ${problem.wanted}.`
  if (channels.length === 0) return 'No column is taken yet: say below which one is which wheel.'
  const without = channels.find(({ calibration }) => calibration.scale === 0)
  return without === undefined
    ? null
    : `What “${columns[without.column]?.name ?? ''}” means is not said yet: choose its unit, or enter two points.`
}
