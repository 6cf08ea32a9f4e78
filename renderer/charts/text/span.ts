/** Inks of the plate, one custom property each. */
export type Ink = 'ink' | 'ink2' | 'ink3' | 'coil' | 'stop' | 'alarm' | 'sheet'
export type Weight = 400 | 600

/** A run of text in one size; runs of a line follow each other on one baseline. Lengths in px. */
export interface Span {
  readonly text: string
  readonly size: number
  readonly weight: Weight
  readonly ink: Ink
  /** Space before it. */
  readonly space: number
  /** How far its own baseline is lifted above the line's. */
  readonly rise: number
}

export interface TextStyle {
  readonly size: number
  readonly weight?: Weight
  readonly ink?: Ink
}

/** Width of a text, px. */
export type MeasureText = (text: string, size: number, weight: Weight) => number

export const span = (text: string, { size, weight = 400, ink = 'ink' }: TextStyle, space = 0, rise = 0): Span => ({
  text,
  size,
  weight,
  ink,
  space,
  rise,
})

export const lineWidth = (spans: readonly Span[], measure: MeasureText): number =>
  spans.reduce((width, { text, size, weight, space }) => width + space + measure(text, size, weight), 0)

/** Parts of a letter's size above and below the baseline that ink may reach. */
const ABOVE = 0.77
const BELOW = 0.23

export const lineAscent = (spans: readonly Span[]): number =>
  spans.reduce((most, { size, rise }) => Math.max(most, rise + ABOVE * size), 0)
export const lineDescent = (spans: readonly Span[]): number =>
  spans.reduce((most, { size, rise }) => Math.max(most, BELOW * size - rise), 0)

/** The longest beginning of a text that fits, closed with an ellipsis; null when not even two letters do. */
export function shortened(text: string, style: TextStyle, width: number, measure: MeasureText): string | null {
  const fits = (candidate: string) => measure(candidate, style.size, style.weight ?? 400) <= width
  if (fits(text)) return text
  for (let length = text.length - 1; length >= 2; length--) {
    const candidate = `${text.slice(0, length).trimEnd()}…`
    if (fits(candidate)) return candidate
  }
  return null
}
