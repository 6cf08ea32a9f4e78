import type { Encoded, Restored } from '../workers/run-messages.ts'
import type { Recording } from './recording.ts'

/** A recording as a kept run gives it: its times and channels are checked, so nothing of it is in doubt. */
export function asRestored({ run, rows, start, end }: Extract<Restored, { ok: true }>): Partial<Recording> {
  return {
    source: run.source.name,
    longestPause: run.longestPause,
    columns: run.channels.map(({ name, unit }) => ({ name, unit })),
    channels: run.channels.map(({ name: _, unit: __, ...channel }, column) => ({ ...channel, column })),
    taken: run.channels.map((_, column) => column),
    found: {
      rows,
      start,
      end,
      faults: { unreadable: 0, repeated: 0, backward: 0, missing: 0 },
      firstLines: { unreadable: null, repeated: null, backward: null, missing: null },
      startedAt: null,
    },
  }
}

const megabytes = (bytes: number): string => `${Math.round(bytes / 1024 / 1024)} MB`

/** Why a run is not kept, in a sentence. */
export const tooLongToKeep = (name: string, { size, most }: Extract<Encoded, { ok: false }>): string =>
  `“${name}” is too long to be kept: its file would be ${megabytes(size)}; right would be ${megabytes(most)} or less. Record fewer rows a second, or a shorter run.`
