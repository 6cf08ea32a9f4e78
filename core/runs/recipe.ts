import type { ChannelChoice } from './channel.ts'
import type { Column, Reading } from './reading.ts'

/** By what a kind of file is known again: what its table looked like before anybody corrected anything. */
export interface Fingerprint {
  readonly columns: readonly Column[]
  readonly delimiter: Reading['delimiter']
}

/** How a kind of file was read, so that the next one is read the same way. Moments are of one run and are not kept: they are in its calibration. */
export interface Recipe {
  readonly name: string
  readonly fingerprint: Fingerprint
  readonly reading: Reading
  readonly channels: readonly ChannelChoice[]
}
