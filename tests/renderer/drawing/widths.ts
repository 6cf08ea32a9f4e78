import type { MeasureText } from '../../../renderer/charts/text/span.ts'

/** Widths of a wide font, so that labels have less room than on most machines. */
export const wideFont: MeasureText = (text, size, weight) => text.length * size * (weight === 600 ? 0.68 : 0.63)
