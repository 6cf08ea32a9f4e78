import { once } from 'node:events'
import { createWriteStream } from 'node:fs'

const HEAD = `time (s),front left (mm),front right (mm),rear left (mm),rear right (mm),${'abcde'
  .split('')
  .map(letter => `other ${letter}`)
  .join(',')}\n`

/** Rows written at a time; only their times differ from one time to the next. */
const ROWS = 10_000
const DIGITS = 8

const signed = (value: number): string => `${value < 0 ? '-' : '+'}${Math.abs(value).toFixed(3).padStart(7, '0')}`
const rowOf = (i: number): string =>
  `${'0'.repeat(DIGITS - 3)}.000,${[3, 5, 7, 9, 2, 4, 6, 8, 10].map(wave => signed(120 * Math.sin((2 * Math.PI * i * wave) / ROWS))).join(',')}\n`

/** A recorded run of at least so many bytes, a thousand rows a second, four travels and five other columns. @returns its rows */
export async function writeLongRun(file: string, least: number): Promise<number> {
  const out = createWriteStream(file)
  out.write(HEAD)
  const block = Buffer.from(Array.from({ length: ROWS }, (_, i) => rowOf(i)).join(''))
  const width = block.length / ROWS
  let [written, rows] = [HEAD.length, 0]
  while (written < least) {
    const piece = Buffer.from(block)
    for (let i = 0; i < ROWS; i += 1, rows += 1)
      for (let digit = 0, left = rows; digit < DIGITS; digit += 1, left = Math.floor(left / 10))
        // The point stands before the last three.
        piece[i * width + DIGITS - digit - (digit < 3 ? 0 : 1)] = 48 + (left % 10)
    written += piece.length
    if (!out.write(piece)) await once(out, 'drain')
  }
  out.end()
  await once(out, 'finish')
  return rows
}
