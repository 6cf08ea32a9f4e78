/** One thing wrong with a plan file: where, what stands there, and what would be right. */
export interface Problem {
  /** Such as `setups[0].axles[1].corner.shock.showing`; empty for the file as a whole. */
  path: string
  found: string
  wanted: string
}

/** Path segments as people write them: `setups[0].name`. */
export const pathText = (segments: readonly PropertyKey[]): string =>
  segments.reduce<string>(
    (text, segment) =>
      typeof segment === 'number'
        ? `${text}[${segment}]`
        : text === ''
          ? String(segment)
          : `${text}.${String(segment)}`,
    '',
  )

/** A value as a person would quote it, never longer than a line. */
export function quoted(value: unknown): string {
  if (value === undefined) return 'nothing'
  if (typeof value === 'number' || typeof value === 'bigint') return String(value)
  if (Array.isArray(value)) return `a list of ${value.length}`
  if (typeof value === 'object' && value !== null) return 'a group of values'
  const text = JSON.stringify(value) ?? String(value)
  return text.length > 60 ? `${text.slice(0, 57)}…` : text
}
