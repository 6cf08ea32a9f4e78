const MISSING = new Set(['', '-', '--', 'nan', 'na', 'n/a', '#n/a', 'null', 'none'])
const NUMBER = /^[+-]?(\d+\.?\d*|\.\d+)(e[+-]?\d+)?$/i
/** Second letters of what is no plain decimal: 1e5, 0x1f. */
const LETTERS = 65

/** Larger is no reading: the time in billionths of a second since 1970 is less. */
const LARGEST = 1e19

export const isMissing = (cell: string): boolean => MISSING.has(cell.trim().toLowerCase())

/** A cell that is not plainly a number: with spaces about it, missing, or words. NaN where there is no number. */
function carefully(cell: string): number {
  const plain = cell.trim().replace('\u2212', '-')
  const value = NUMBER.test(plain) ? Number(plain) : Number.NaN
  return Math.abs(value) <= LARGEST ? value : Number.NaN
}

/** The number in a cell; NaN where there is none. */
export function numberIn(cell: string, decimalComma: boolean): number {
  const pointed = decimalComma ? cell.replace(',', '.') : cell
  const value = +pointed
  if (value === 0 || !(Math.abs(value) <= LARGEST) || pointed.charCodeAt(1) >= LETTERS) return carefully(pointed)
  return value
}
