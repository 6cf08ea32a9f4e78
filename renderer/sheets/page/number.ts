import { type Span, span, type TextStyle } from '../../charts/text/span.ts'

/** Words and units beside a large number are smaller than it. */
const WORDS = 0.66

const UNIT_SPACE = 0.2

/** The slash is narrower than it looks. */
const SLASH_SPACE = 0.05

/**
 * A written value as spans of a large size: `at least 4 3/8 in` with its fraction built (raised, slash, lowered), its words and its unit
 * small. What is no number is written as it is.
 */
export function numberSpans(text: string, style: TextStyle): Span[] {
  const { size } = style
  const found = /^(\D*?)([−+]?[\d.,]+)?(?:\s?(\d+)\/(\d+))?(?:\s([^\d\s]+))?$/u.exec(text)
  const [, words = '', whole, numerator, denominator, unit] = found ?? []
  if (found === null || (whole === undefined && numerator === undefined))
    return [span(text, { ...style, size: size * 0.8 })]
  const part = { ...style, size: size * 0.66 }
  const small = { ...style, size: size * WORDS }
  return [
    ...(words === '' ? [] : [span(words.trim(), small)]),
    ...(whole === undefined ? [] : [span(whole, style, words === '' ? 0 : size * UNIT_SPACE)]),
    ...(numerator === undefined || denominator === undefined
      ? []
      : [
          span(numerator, part, whole === undefined && words === '' ? 0 : size * 0.1, size * 0.3),
          span('⁄', { ...style, size: size * 0.9 }, size * SLASH_SPACE),
          span(denominator, part, size * SLASH_SPACE),
        ]),
    ...(unit === undefined ? [] : [span(unit, small, size * UNIT_SPACE)]),
  ]
}
