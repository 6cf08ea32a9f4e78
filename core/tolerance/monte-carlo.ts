import { seededRandom } from '../numerics/random.ts'
import { type Distribution, drawFrom } from './distribution.ts'

/**
 * Propagation of distributions by trials (JCGM 101:2008, clause 7): draw every input, work out every result, again and again.
 * Trials come in blocks; each input has numbers of its own in each block, fixed by seed, input and block alone. So blocks can be done in any
 * order, by several workers, and an input that is added, changed or taken away leaves the others' numbers as they were.
 */

/** Trials in a block. */
export const BLOCK = 250

/** Something to draw, told apart from the others by its key. */
export interface Input {
  readonly key: string
  readonly distribution: Distribution
}

/** A seed for each input and block (FNV-1a over both; G. Fowler, L. C. Noll and K.-P. Vo). */
function seedFor(seed: number, key: string, block: number): number {
  let hash = 0x811c9dc5
  const take = (byte: number): void => {
    hash = Math.imul(hash ^ (byte & 0xff), 0x01000193)
  }
  for (const word of [seed, block]) for (let shift = 0; shift < 32; shift += 8) take(word >>> shift)
  for (let i = 0; i < key.length; i += 1) {
    const code = key.charCodeAt(i)
    take(code)
    take(code >>> 8)
  }
  return hash >>> 0
}

/**
 * Deviations of one input over a block.
 * @param into gets them from place `at` on, each `step` places after the one before
 */
export function deviationsOf(
  { key, distribution }: Input,
  seed: number,
  block: number,
  into = new Float64Array(BLOCK),
  at = 0,
  step = 1,
): Float64Array {
  const draw = drawFrom(distribution, seededRandom(seedFor(seed, key, block)))
  for (let number = 0; number < BLOCK; number += 1) into[at + number * step] = draw()
  return into
}

/**
 * One block of trials.
 * @param trial gets the deviation of each input, in their order, and the number of the trial within the block
 */
export function runBlock(
  inputs: readonly Input[],
  seed: number,
  block: number,
  trial: (deviations: Float64Array, number: number) => void,
): void {
  const width = inputs.length
  const deviations = new Float64Array(width * BLOCK)
  for (let i = 0; i < width; i += 1) deviationsOf(inputs[i]!, seed, block, deviations, i, width)
  const row = new Float64Array(width)
  for (let number = 0; number < BLOCK; number += 1) {
    for (let i = 0; i < width; i += 1) row[i] = deviations[number * width + i]!
    trial(row, number)
  }
}
