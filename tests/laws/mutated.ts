import fc from 'fast-check'

type Branch = Record<string | number, unknown>
type Place = readonly [holder: Branch, key: string]

/** Every value in a plan, as the branch that holds it and its key there. */
function places(value: unknown, found: Place[] = []): Place[] {
  if (typeof value !== 'object' || value === null) return found
  for (const key of Object.keys(value)) {
    found.push([value as Branch, key])
    places((value as Branch)[key], found)
  }
  return found
}

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
      const all = places(copy)
      const [holder, last] = all[place % all.length]!
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
