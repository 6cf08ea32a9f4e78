import type { ChannelChoice } from './channel.ts'
import type { Column, Reading } from './reading.ts'
import type { Table } from './table-import.ts'

/** One recorded channel as it was read from its file, with what was said about it. */
export interface KeptChannel extends Omit<ChannelChoice, 'column'> {
  /** Of its column, and the unit the column names. */
  readonly name: string
  readonly unit: string | null
  /** As recorded, NaN where missing; as many as there are times. */
  readonly readings: Float64Array
}

/** A recorded run as it is kept beside the plan: what the sensors said, not what came of it, so that it can be laid over any plan. */
export interface KeptRun {
  readonly name: string
  /** The file it was read from: its name without folders, and SHA-256 of its content in hexadecimal; null where it is not known. */
  readonly source: { readonly name: string; readonly digest: string | null }
  /** As `Reading.longestPause`. */
  readonly longestPause: number | null
  /** Strictly rising, s. */
  readonly time: Float64Array
  readonly channels: readonly KeptChannel[]
}

/** SHA-256 (FIPS 180-4) of bytes, 32 of them, by whatever the machine has for it. */
export type Sha256 = (bytes: Uint8Array<ArrayBuffer>) => Uint8Array | Promise<Uint8Array>

/** How the names of kept runs' files end. */
export const KEPT_ENDING = '.stopgap-run'

/** A run to be kept, from a table read from its file. @param channels in the order of the table's values */
export const keptRun = (
  name: string,
  source: KeptRun['source'],
  { longestPause }: Reading,
  columns: readonly Column[],
  table: Table,
  channels: readonly ChannelChoice[],
): KeptRun => ({
  name,
  source,
  longestPause,
  time: table.time,
  channels: channels.map(({ column, ...channel }, i) => ({
    ...channel,
    name: columns[column]!.name,
    unit: columns[column]!.unit,
    readings: table.values[i]!,
  })),
})
