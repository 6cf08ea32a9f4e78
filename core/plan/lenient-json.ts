/** Marks what could not be read. */
export const LOST: unique symbol = Symbol('lost')

/** Lists and groups inside one another, and values in all: as in a whole file, past which nothing is read. */
const DEEPEST = 64
const MOST_VALUES = 1_000_000
/** Longest line a bracket is looked at in. */
const LONGEST_HEAD = 500
/** Furthest in that anything begins: twice what a plan comes to. */
const DEEPEST_IN = 2 * DEEPEST

const NUMBER = /-?\d+(?:\.\d+)?(?:[eE][+-]?\d+)?(?=[\s,\]}])/y
const WORD = /(?:true|false|null)(?=[\s,\]}])/y
const UNSAFE = new Set(['__proto__', 'constructor', 'prototype'])

/**
 * What can be read of a JSON text that is damaged, cut off or stirred; LOST where nothing can, in the place of a value, of an entry, and behind the
 * last entry of a list that is cut off. A value at the very end is not taken, as more of it may have followed. Where a bracket is lost, the indentation of the text says what belongs where.
 */
export function readLeniently(text: string): unknown {
  let at = 0
  let seen = 0

  const match = (pattern: RegExp): string | null => {
    pattern.lastIndex = at
    const found = pattern.exec(text)?.[0]
    if (found === undefined) return null
    at += found.length
    return found
  }

  /** A text, with its quotation marks. It ends on its own line: what is written by Stopgap has its line ends escaped. */
  const textHere = (): string | null => {
    if (text[at] !== '"') return null
    for (let end = at + 1; end < text.length; end += 1) {
      const sign = text[end]!
      if (sign < ' ') return null
      if (sign === '\\') end += 1
      else if (sign === '"') {
        const found = text.slice(at, end + 1)
        at = end + 1
        return found
      }
    }
    return null
  }

  /** How far in a place is on its line; null where something of the file stands before it there. */
  const indentation = (place: number): number | null => {
    let line = place
    while (line > 0 && text[line - 1] !== '\n') {
      line -= 1
      if (place - line > DEEPEST_IN || /["{}[\]:,]/.test(text[line]!)) return null
    }
    return line === 0 ? null : place - line
  }

  /** How far in the line begins on which a group or list is opened, when what is in it stands on lines of its own; else null. */
  const blockIndentation = (place: number): number | null => {
    if (!/^ *\r?\n/.test(text.slice(place + 1, place + 100))) return null
    const before = text.slice(Math.max(0, place - LONGEST_HEAD), place)
    const line = before.lastIndexOf('\n') + 1
    if (line === 0 && place > LONGEST_HEAD) return null
    return /^[^"{}[\]:,]*/.exec(before.slice(line))![0].length
  }

  /** To the next place where something may begin; commas and whatever is nothing are passed over. */
  const toNext = (): void => {
    while (at < text.length && !/["{}[\]\-\dtfn]/.test(text[at]!)) at += 1
  }

  /** Behind a value that could not be read: to the end of its line, or of the value. */
  const passOver = (): void => {
    while (at < text.length && !/[,\n}\]]/.test(text[at]!)) at += 1
  }

  /** Whether the last list or group that ended did so without its closing bracket. */
  let torn = false

  /**
   * Whether the list or group has ended here; its own closing bracket is taken.
   * @param block how far in it began, when it stands on lines of its own
   */
  const hasEnded = (bracket: string, block: number | null): boolean => {
    torn = true
    for (;;) {
      toNext()
      if (at >= text.length) return true
      const isBracket = text[at] === '}' || text[at] === ']'
      if (block === null) {
        if (!isBracket) return false
        torn = text[at] !== bracket
        if (!torn) at += 1
        return true
      }
      const here = indentation(at)
      // Its own bracket was lost, and this belongs to what is around it.
      if (here !== null && (here < block || (here === block && !isBracket))) return true
      if (!isBracket) return false
      at += 1
      torn = here !== block
      if (!torn) return true
    }
  }

  function group(depth: number): unknown {
    const block = blockIndentation(at)
    at += 1
    const found: Record<string, unknown> = {}
    while (!hasEnded('}', block)) {
      const key = textHere()
      if (key === null) {
        at += 1
        continue
      }
      const colon = /^\s*:\s*/.exec(text.slice(at, at + 100))
      if (colon === null) continue
      at += colon[0].length
      const name = unquoted(key)
      const inner = value(depth + 1)
      if (inner === LOST) passOver()
      if (name !== LOST && !UNSAFE.has(name as string) && !Object.hasOwn(found, name as string))
        found[name as string] = inner
    }
    return found
  }

  function list(depth: number): unknown {
    const block = blockIndentation(at)
    at += 1
    const found: unknown[] = []
    while (!hasEnded(']', block)) {
      const before = at
      const inner = value(depth + 1)
      found.push(inner)
      if (inner === LOST) {
        passOver()
        if (at === before) at += 1
      }
    }
    if (torn) found.push(LOST)
    return found
  }

  function value(depth: number): unknown {
    seen += 1
    if (depth > DEEPEST || seen > MOST_VALUES) {
      at = text.length
      return LOST
    }
    if (text[at] === '{') return group(depth)
    if (text[at] === '[') return list(depth)
    const written = textHere() ?? match(NUMBER) ?? match(WORD)
    return written === null ? LOST : unquoted(written)
  }

  const start = text.indexOf('{')
  if (start < 0) return LOST
  at = start
  return value(0)
}

function unquoted(written: string): unknown {
  try {
    return JSON.parse(written)
  } catch {
    return LOST
  }
}
