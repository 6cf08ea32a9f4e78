import fc from 'fast-check'

type Path = readonly (string | number)[]
type Branch = Record<string | number, unknown>

/** The path of every value in a plan, itself left out. */
function paths(value: unknown, here: Path = []): Path[] {
  if (typeof value !== 'object' || value === null) return []
  return Object.entries(value).flatMap(([key, inner]) => {
    const path = [...here, Array.isArray(value) ? Number(key) : key]
    return [path, ...paths(inner, path)]
  })
}

const branch = (value: unknown, path: Path): Branch =>
  path.reduce((inner, key) => (inner as Branch)[key], value) as Branch

/** What no plan should hold there, most of the time. */
const oddValue: fc.Arbitrary<unknown> = fc.oneof(
  fc.constantFrom<unknown>(null, undefined, '', true, 0, -1, 1e308, -1e308, 5e-324, Number.NaN, Infinity, -Infinity),
  fc.constantFrom<unknown>([], {}, [[]], 10n, Symbol('odd'), () => 1, new Date(0), 'x'.repeat(300)),
  fc.double(),
  fc.anything(),
)

const KEYS = ['unknown', '__proto__', 'constructor', 'toString', '', '0']

const change = fc.record({
  kind: fc.constantFrom('replace' as const, 'replace' as const, 'remove' as const, 'add' as const, 'scale' as const),
  place: fc.nat(),
  value: oddValue,
  key: fc.constantFrom(...KEYS),
  factor: fc.constantFrom(-1, 0, 1e-6, 0.01, 100, 1e6),
})

/** A copy of what is drawn, with one to three things in it replaced, removed, added or scaled. */
export const mutated = (from: fc.Arbitrary<object>): fc.Arbitrary<unknown> =>
  fc.tuple(from, fc.array(change, { minLength: 1, maxLength: 3 })).map(([drawn, changes]) => {
    const copy: unknown = structuredClone(drawn)
    for (const { kind, place, value, key, factor } of changes) {
      const all = paths(copy)
      const path = all[place % all.length]!
      const holder = branch(copy, path.slice(0, -1))
      const last = path.at(-1)!
      const old = holder[last]
      if (kind === 'replace') holder[last] = value
      else if (kind === 'scale') holder[last] = typeof old === 'number' ? old * factor : value
      else if (kind === 'add')
        Object.defineProperty(holder, key, { value, enumerable: true, configurable: true, writable: true })
      else if (Array.isArray(holder)) holder.splice(Number(last), 1)
      else delete holder[last]
    }
    return copy
  })
