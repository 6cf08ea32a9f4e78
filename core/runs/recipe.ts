import type { ChannelChoice } from './channel.ts'
import type { Column, Reading } from './reading.ts'

/** By what a kind of file is known again: what its table looked like before anybody corrected anything. */
export interface Fingerprint {
  readonly columns: readonly Column[]
  readonly delimiter: Reading['delimiter']
}

/** How a kind of file was read, so that the next one is read the same way. Moments are of one run and not kept; what they set is in the calibration. */
export interface Recipe {
  readonly name: string
  readonly fingerprint: Fingerprint
  readonly reading: Reading
  readonly channels: readonly ChannelChoice[]
}

/** @param channels as they were used: with zero and sign in their calibrations */
export const recipeOf = (
  name: string,
  fingerprint: Fingerprint,
  reading: Reading,
  channels: readonly ChannelChoice[],
): Recipe => ({
  name,
  fingerprint,
  reading,
  channels: channels.map(channel => ({ ...channel, rideHeightAt: null, fullDroopAt: null })),
})

const isSame = (a: Fingerprint, b: Fingerprint): boolean =>
  a.delimiter === b.delimiter &&
  a.columns.length === b.columns.length &&
  a.columns.every(({ name, unit }, i) => name === b.columns[i]!.name && unit === b.columns[i]!.unit)

/** The recipe for a kind of file, the last one made; null without one. A file nothing was told from has none. */
export const recipeFor = (recipes: readonly Recipe[], fingerprint: Fingerprint): Recipe | null =>
  fingerprint.columns.length === 0
    ? null
    : (recipes.findLast(recipe => isSame(recipe.fingerprint, fingerprint)) ?? null)
