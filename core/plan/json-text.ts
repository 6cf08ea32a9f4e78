import { type Problem, pathText } from './problem.ts'

/** Values a file may hold, each number, text, list and group counted: twice what fifty setups at their longest come to. */
const MOST_VALUES = 1_000_000
/** Lists and groups inside one another. A plan has a dozen, so what is deeper is refused by its shape, without a look inside. */
const DEEPEST = 64

export type JsonRead =
  | { readonly ok: true; readonly value: unknown }
  | { readonly ok: false; readonly problem: Problem }

/** Signs that begin a value, in a text that is looked at before it is read: reading one of more takes more room than there may be. */
const MOST_SIGNS = 2 * MOST_VALUES

/** Whether a text holds more lists, groups and entries than any file of ours, told without reading it. */
function isFlood(text: string): boolean {
  if (text.length < MOST_SIGNS) return false
  let signs = 0
  let inText = false
  for (let i = 0; i < text.length && signs <= MOST_SIGNS; i += 1) {
    const sign = text[i]
    if (inText && sign === '\\') i += 1
    else if (sign === '"') inText = !inText
    else if (!inText && (sign === ',' || sign === '[' || sign === '{')) signs += 1
  }
  return signs > MOST_SIGNS
}

/** From where on a text is wrong, as an editor shows it; engines say it each in their own way, some of them not at all. */
function wrongFrom(text: string, reason: string): string {
  if (/end of (JSON )?(input|data)|unterminated/i.test(reason)) return ': it breaks off'
  const position = /at position (\d+)/.exec(reason)?.[1]
  if (position === undefined) return ''
  const before = text.slice(0, Number(position)).split('\n')
  return ` from line ${before.length}, column ${(before.at(-1)?.length ?? 0) + 1} on`
}

/** The value in the text of a file, or why there is none. @param wanted what the file ought to be, such as “a plan saved by Stopgap” */
export function readJson(text: string, wanted: string): JsonRead {
  if (isFlood(text)) return { ok: false, problem: { path: '', found: `more than ${MOST_SIGNS} values`, wanted } }
  try {
    return { ok: true, value: JSON.parse(text.charCodeAt(0) === 0xfeff ? text.slice(1) : text) }
  } catch (error) {
    const reason = error instanceof Error ? error.message : String(error)
    return { ok: false, problem: { path: '', found: `text that is not JSON${wrongFrom(text, reason)}`, wanted } }
  }
}

/**
 * What makes a value too much to check at all, before anything else looks at it: more values than any file of ours,
 * or a key that would reach behind an object instead of into it. null when it may be checked.
 */
export function unbearable(value: unknown): Problem | null {
  const waiting: { value: unknown; path: readonly PropertyKey[] }[] = [{ value, path: [] }]
  let seen = 0
  for (let next = waiting.pop(); next !== undefined; next = waiting.pop()) {
    const { value: found, path } = next
    if (typeof found !== 'object' || found === null || path.length > DEEPEST) continue
    // A list is counted before its places are named, which takes more room than the list.
    const isTooMany = Array.isArray(found) && seen + found.length > MOST_VALUES
    const keys = isTooMany ? [] : Object.keys(found)
    seen += keys.length
    if (isTooMany || seen > MOST_VALUES)
      return { path: pathText(path), found: `more than ${MOST_VALUES} values`, wanted: 'a file with fewer values' }
    for (const key of keys) {
      const inner = (found as Record<string, unknown>)[key]
      if (key !== '__proto__' && (typeof inner !== 'object' || inner === null)) continue
      const at = [...path, Array.isArray(found) ? Number(key) : key]
      if (key === '__proto__')
        return { path: pathText(at), found: 'an unknown key', wanted: 'only the keys of the plan file' }
      waiting.push({ value: inner, path: at })
    }
  }
  return null
}

/** As many problems as somebody can read; the last one says how many more there are. */
export function readable(problems: readonly Problem[]): readonly Problem[] {
  const most = 200
  if (problems.length <= most) return problems
  const more = { path: '', found: `${problems.length - most} more values that are not right`, wanted: 'none' }
  return [...problems.slice(0, most), more]
}
