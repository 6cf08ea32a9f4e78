import fc from 'fast-check'

type Branch = Record<string, unknown>

/** A text no reader may take for a plan, what was done to it, and where; `place` is null when it is no longer JSON. */
export interface Broken {
  text: string
  how: string
  place: string | null
}

/** JSON that is right at no place of any plan. */
const NEVER_RIGHT = [
  '[false]',
  '1e400',
  '-1e400',
  '1e300',
  '[[[]]]',
  '{"__proto__":{"polluted":true}}',
  '{"constructor":{"prototype":{"polluted":true}}}',
  '{"toString":null}',
  `"${'long'.repeat(26_000)}"`,
  `${'['.repeat(5000)}${']'.repeat(5000)}`,
  `${'{"a":'.repeat(5000)}0${'}'.repeat(5000)}`,
]
const STRANGE_KEYS = ['__proto__', 'constructor', 'prototype', 'toString', 'hasOwnProperty', 'unknown', '']
/** Keys that no group of a plan can be without, wherever they stand. */
const NEEDED =
  /^(format|version|title|notes|units|vehicle|setups|loads|terrains|name|wheelbase|cgHeight|id|axles|suspension|track|corner|cornerMass|linkage|kind|stroke|showing|shaftDiameter|gas|springs|preload|crossover|stop|tire|clearance|bump|droop|rate|freeLength|gap|charge|masses|amplitude)$/
const NOT_JSON = [
  (text: string) => `\ufeff\ufeff${text}`,
  (text: string) => `${text}}`,
  (text: string) => `// a remark\n${text}`,
  (text: string) => text.replaceAll('"', "'"),
  (text: string) => text.replace(/: (\d)/, ': 0x$1'),
  (text: string) => text.replace('{', '{"nothing": NaN,'),
  (text: string) => text.replace(/,(?=\s*")/, ','.repeat(2)),
  (text: string) => text.replace('"title"', '"title\u0000"'),
  (text: string) => `<!doctype html><script>${text}</script>`,
  () => '',
  () => 'null',
  () => `"${'plan'.repeat(1000)}"`,
]
const VERSIONS = ['0', '2', '99', '1e9', '-1', '1.5', '"1"', 'null', '1e400']

interface Group {
  path: string
  value: Branch | unknown[]
}

function groups(value: unknown, path: string, found: Group[]): Group[] {
  if (typeof value !== 'object' || value === null) return found
  found.push({ path, value: value as Branch })
  for (const [key, inner] of Object.entries(value)) groups(inner, joined(path, value, key), found)
  return found
}

const joined = (path: string, holder: object, key: string): string =>
  Array.isArray(holder) ? `${path}[${key}]` : path === '' ? key : `${path}.${key}`

const MARK = 'put-the-odd-value-here'

/** The text of `plan` with one thing wrong in it that nothing else can make right. */
export const broken = (plans: fc.Arbitrary<object>): fc.Arbitrary<Broken> =>
  fc
    .record({
      plan: plans,
      how: fc.constantFrom('replaced', 'replaced', 'added', 'added', 'removed', 'cut', 'garbled', 'version'),
      where: fc.nat(),
      which: fc.nat(),
      odd: fc.nat(),
    })
    .map(({ plan, how, where, which, odd }) => {
      const text = JSON.stringify(plan, null, 2)
      // Not structuredClone: what is drawn may hold one table twice.
      const copy = JSON.parse(text) as Branch
      const one = <T>(list: readonly T[], n: number) => list[n % list.length] as T
      if (how === 'cut') return { text: text.slice(0, which % text.length), how, place: null }
      if (how === 'garbled') return { text: one(NOT_JSON, odd)(text), how, place: null }
      if (how === 'version')
        return { text: text.replace('"version": 1', `"version": ${one(VERSIONS, odd)}`), how, place: 'version' }
      const filled = groups(copy, '', []).filter(({ value }) => Object.keys(value).length > 0)
      const needing = filled.filter(({ value }) => Object.keys(value).some(key => NEEDED.test(key)))
      const named = filled.filter(({ value }) => !Array.isArray(value))
      const { path, value } = one(how === 'removed' ? needing : how === 'added' ? named : filled, where)
      const holder = value as Branch
      const key = one(how === 'added' ? STRANGE_KEYS : keysFor(how, holder), which)
      if (how === 'removed') delete holder[key]
      else Object.defineProperty(holder, key, { value: MARK, enumerable: true, configurable: true, writable: true })
      return {
        text: JSON.stringify(copy).replace(`"${MARK}"`, () => one(NEVER_RIGHT, odd)),
        how: `${how} with ${one(NEVER_RIGHT, odd).slice(0, 40)}`,
        place: joined(path, value, key),
      }
    })

const keysFor = (how: string, holder: Branch): string[] =>
  Object.keys(holder).filter(key => how !== 'removed' || NEEDED.test(key))
