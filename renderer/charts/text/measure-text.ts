import type { MeasureText } from './span.ts'

/** More widths than all pages ask for. */
const MOST = 5000

const known = new Map<string, MeasureText>()

/**
 * Measures text on a canvas in one font family. Digits count as wide as a zero, because figures are tabular on the plate.
 * Widths are kept, so that a label asks the canvas once, on whatever page it stands.
 */
export function canvasMeasure(family: string): MeasureText {
  const before = known.get(family)
  if (before !== undefined) return before
  const made = measureIn(family)
  known.set(family, made)
  return made
}

function measureIn(family: string): MeasureText {
  const context = document.createElement('canvas').getContext('2d')
  if (context === null) throw new Error('Labels cannot be measured: the canvas gives no 2d context.')
  const widths = new Map<string, number>()
  return (text, size, weight) => {
    const shape = text.replace(/\d/g, '0')
    const key = `${weight} ${size} ${shape}`
    const before = widths.get(key)
    if (before !== undefined) return before
    context.font = `${weight} ${size}px ${family}`
    const { width } = context.measureText(shape)
    if (widths.size >= MOST) widths.clear()
    widths.set(key, width)
    return width
  }
}
