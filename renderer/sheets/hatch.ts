/** px, y down. */
export interface Area {
  readonly left: number
  readonly right: number
  readonly top: number
  readonly bottom: number
}

const rounded = (value: number): string => (Math.round(value * 100) / 100).toString()

/**
 * Lines at 45 degrees that fill an area, each drawn from edge to edge of it. A pattern would do on a screen; on paper a browser makes dots
 * of a pattern, seen with the naked eye.
 * @param apart distance between two lines, px
 * @param ways rising to the right, falling, or both
 */
export function hatch(
  { left, right, top, bottom }: Area,
  apart: number,
  ways: readonly ('rising' | 'falling')[],
): string {
  if (!(right > left && bottom > top)) return ''
  const step = apart * Math.SQRT2
  const lines: string[] = []
  for (const way of ways) {
    const rising = way === 'rising'
    // Along a line x + y (rising, since y is down) or x − y stays the same.
    const [first, last] = rising ? [left + top, right + bottom] : [left - bottom, right - top]
    for (let same = first + step / 2; same < last; same += step) {
      const from = Math.max(left, rising ? same - bottom : same + top)
      const to = Math.min(right, rising ? same - top : same + bottom)
      const height = (x: number): number => (rising ? same - x : x - same)
      if (to > from) lines.push(`M${rounded(from)} ${rounded(height(from))}L${rounded(to)} ${rounded(height(to))}`)
    }
  }
  return lines.join('')
}
