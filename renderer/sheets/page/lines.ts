import { type Ink, lineWidth, type MeasureText, type Span, span, type Weight } from '../../charts/text/span.ts'
import { ADVANCES } from '../font/advances.ts'

/** Text of one look inside a paragraph. */
export interface Run {
  readonly text: string
  readonly weight?: Weight
  readonly ink?: Ink
}

export interface Look {
  readonly size: number
  readonly weight?: Weight
  readonly ink?: Ink
  /** Height of a line over its size. */
  readonly lead?: number
}

/** Characters the font does not have come from another: room for the widest letters of any script, in 2048ths. */
const ELSEWHERE = 2048
const PICTURE = 2900

function advance(letter: string, weight: Weight): number {
  const { latin, more, single } = ADVANCES[weight]
  const code = letter.codePointAt(0)!
  return (
    latin[code - 0x20] ??
    more[code - 0xa0] ??
    (single as Readonly<Record<string, number>>)[letter] ??
    (/\p{M}|\p{Cf}/u.test(letter) ? 0 : code > 0xffff ? PICTURE : ELSEWHERE)
  )
}

/** Width of a text in the sheets' own font, px; never less than what is drawn, which is kerned. */
export const widthOf: MeasureText = (text, size, weight) => {
  let units = 0
  for (const letter of text) units += advance(letter, weight)
  return (units / 2048) * size
}

/** What neither paper nor a drawing's file can hold: control characters, halves of letters, and what turns the reading order round. */
const UNPRINTABLE = /[\p{Cc}\p{Cs}\u2028\u2029\u202a-\u202e\u2066-\u2069\ufffe\uffff]+/gu

export const printable = (text: string): string => text.replace(UNPRINTABLE, ' ')

/** Words, each with the blanks after it; a hyphen between letters ends one. A no-break space does not. */
const wordsOf = (text: string): string[] => text.split(/(?<= )(?! )|(?<=\p{L}-)(?=\p{L})/u).filter(word => word !== '')

/** The longest beginning that is no wider, at least one letter. */
function beginning(word: string, room: number, size: number, weight: Weight): string {
  let [fits, width] = ['', 0]
  for (const letter of word) {
    width += widthOf(letter, size, weight)
    if (fits !== '' && width > room) return fits
    fits += letter
  }
  return fits
}

/** Runs as lines no wider than `width`; a word wider than that is broken inside. */
export function broken(runs: readonly Run[], look: Look, width: number): Span[][] {
  const lines: Span[][] = [[]]
  let used = 0
  const put = (text: string, style: Required<Pick<Look, 'weight' | 'ink'>>): void => {
    const line = lines.at(-1)!
    const last = line.at(-1)
    used += widthOf(text, look.size, style.weight)
    if (last !== undefined && last.weight === style.weight && last.ink === style.ink)
      line[line.length - 1] = { ...last, text: last.text + text }
    else line.push(span(text, { ...look, ...style }))
  }
  const next = (): void => {
    lines.push([])
    used = 0
  }
  for (const run of runs) {
    const style = { weight: run.weight ?? look.weight ?? 400, ink: run.ink ?? look.ink ?? 'ink' } as const
    for (const word of wordsOf(printable(run.text))) {
      let rest = word
      if (used > 0 && used + widthOf(rest.trimEnd(), look.size, style.weight) > width) next()
      while (widthOf(rest.trimEnd(), look.size, style.weight) > width) {
        const part = beginning(rest, width, look.size, style.weight)
        if (part === rest) break
        put(part, style)
        next()
        rest = rest.slice(part.length)
      }
      put(rest, style)
    }
  }
  return lines.map(trimmed)
}

/** Without the blanks at its end. */
function trimmed(line: Span[]): Span[] {
  const last = line.at(-1)
  return last === undefined ? line : [...line.slice(0, -1), { ...last, text: last.text.trimEnd() }]
}

/** A line with dots at its end that is no wider. */
function dotted(line: readonly Span[], width: number): Span[] {
  const spans = [...line]
  for (let last = spans.pop(); last !== undefined; last = spans.pop()) {
    const { text, size, weight } = last
    const room = width - lineWidth(spans, widthOf) - widthOf('…', size, weight)
    if (room < 0 && spans.length > 0) continue
    const kept = widthOf(text, size, weight) > room ? beginning(text, room, size, weight) : text
    return [...spans, { ...last, text: `${kept.trimEnd()}…` }]
  }
  return spans
}

/** At most so many lines: what is cut off is seen to be cut off. */
export function cut(lines: readonly Span[][], most: number, width: number): readonly Span[][] {
  return lines.length <= most ? lines : [...lines.slice(0, most - 1), dotted(lines[most - 1]!, width)]
}
