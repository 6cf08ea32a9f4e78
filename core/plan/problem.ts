import type { Bound } from './bound.ts'

/** One thing wrong with a plan file: where, what stands there, and what would be right. */
export interface Problem {
  /** Such as `setups[0].axles[1].corner.shock.showing`; empty for the file as a whole. */
  path: string
  found: string
  wanted: string
  /** What `wanted` says, as a number, where a number is what is wanted. */
  bound?: Bound
}

/** Longest key in a path, and longest value quoted, in characters: what is longer is nobody's to read. */
const LONGEST = 60

const shortened = (text: string): string => (text.length > LONGEST ? `${text.slice(0, LONGEST - 3)}…` : text)

/** Text of a file as it may be shown: a sign that only steers a screen becomes a mark that one stood there. */
// biome-ignore lint/suspicious/noControlCharactersInRegex: names in a file come from anybody, and control signs are what is replaced
const withoutControls = (text: string): string => text.replace(/[\u0000-\u001f\u007f-\u009f]/g, '\ufffd')

/** Path segments as people write them: `setups[0].name`. */
export const pathText = (segments: readonly PropertyKey[]): string =>
  segments.reduce<string>((text, segment) => {
    if (typeof segment === 'number') return `${text}[${segment}]`
    const key = shortened(withoutControls(String(segment)))
    return text === '' ? key : `${text}.${key}`
  }, '')

/** A value as a person would quote it, never longer than a line. */
export function quoted(value: unknown): string {
  if (value === undefined) return 'nothing'
  if (typeof value === 'number' || typeof value === 'bigint') return String(value)
  if (Array.isArray(value)) return `a list of ${value.length}`
  if (typeof value === 'object' && value !== null) return 'a group of values'
  const text = JSON.stringify(value) ?? String(value)
  return shortened(withoutControls(text))
}
