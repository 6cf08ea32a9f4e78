import type { MeasureText } from './span.ts'

/**
 * Measures text on a canvas in one font family. Digits count as wide as a zero, because figures are tabular on the plate.
 * Widths are kept, so that a label asks the canvas once.
 */
export function canvasMeasure(family: string): MeasureText {
  const context = document.createElement('canvas').getContext('2d')
  if (context === null) throw new Error('Labels cannot be measured: the canvas gives no 2d context.')
  const widths = new Map<string, number>()
  return (text, size, weight) => {
    const shape = text.replace(/\d/g, '0')
    const key = `${weight} ${size} ${shape}`
    const known = widths.get(key)
    if (known !== undefined) return known
    context.font = `${weight} ${size}px ${family}`
    const { width } = context.measureText(shape)
    widths.set(key, width)
    return width
  }
}
