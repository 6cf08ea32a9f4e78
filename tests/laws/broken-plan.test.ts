import fc from 'fast-check'
import { expect, it } from 'vitest'
import { readPlan } from '../../core/plan/parse.ts'
import { formatShelf, readShelf } from '../../core/plan/shelf-file.ts'
import { arbitraryPlan } from './arbitrary-plan.ts'
import { broken } from './broken-plan.ts'

const stock = fc.constantFrom(...fc.sample(arbitraryPlan(), { numRuns: 40, seed: 17 }))
const runs = 10_000

/** Whether one of the two paths leads to the other. */
const meets = (one: string, other: string) => one.startsWith(other) || other.startsWith(one)

it(`refuses all of ${runs} broken plans by name, takes none, and stays standing`, () => {
  const kinds = new Map<string, number>()
  fc.assert(
    fc.property(broken(stock), ({ text, how, place }) => {
      const read = readPlan(text)
      if (read.ok) throw new Error(`taken: ${how} at ${place}`)
      const kind = how.split(' ')[0]!
      kinds.set(kind, (kinds.get(kind) ?? 0) + 1)
      for (const { found, wanted } of read.problems) {
        if (!/\S/.test(found) || !/\S/.test(wanted)) throw new Error(`nothing said: ${how} at ${place}`)
        if (found.length + wanted.length > 1000) throw new Error(`too much said: ${how} at ${place}`)
      }
      if (place !== null && !read.problems.some(problem => meets(problem.path, place)))
        throw new Error(`${how} at ${place} was called ${read.problems.map(problem => problem.path).join(', ')}`)
    }),
    // So many take a while on a busy machine; that one of them failed is told all the same.
    { numRuns: runs, seed: 18, interruptAfterTimeLimit: 110_000 },
  )
  expect([...kinds.keys()].sort()).toEqual(['added', 'cut', 'garbled', 'removed', 'replaced', 'version'])
  expect(Math.min(...kinds.values())).toBeGreaterThan(runs / 16)
  expect(Object.keys({}).concat(Object.keys(Object.prototype))).toEqual([])
})

const shelf = JSON.parse(formatShelf({ stops: [], springs: [], tubes: [] })) as object
const tube = { id: 'a', name: 'Tube', generic: true, part: { outerDiameter: 0.05, wall: 0.003 } }

it('refuses shelves broken the same way', () => {
  expect(readShelf(JSON.stringify({ ...shelf, tubes: [tube] })).ok).toBe(true)
  for (const text of [
    '{"__proto__":{},"format":"stopgap-shelf","version":1,"stops":[],"springs":[],"tubes":[]}',
    JSON.stringify({ ...shelf, version: 2 }),
    JSON.stringify({ ...shelf, tubes: [{ ...tube, part: { ...tube.part, constructor: 1 } }] }),
    JSON.stringify({ ...shelf, tubes: [{ ...tube, name: 'x'.repeat(1e6) }] }),
    JSON.stringify({ ...shelf, tubes: [tube] }).replace('0.05', '1e400'),
    JSON.stringify({ ...shelf, tubes: Array.from({ length: 1001 }, (_, n) => ({ ...tube, id: `t${n}` })) }),
    `{"tubes":${'['.repeat(1e5)}${']'.repeat(1e5)}}`,
  ]) {
    const read = readShelf(text)
    expect(read.ok ? text.slice(0, 100) : read.problems[0]!.wanted).toMatch(/\S/)
    expect(read.ok).toBe(false)
  }
})

it('gives up on more values than any file holds, and lists no more problems than can be read', () => {
  const [plan] = fc.sample(arbitraryPlan(), { numRuns: 1, seed: 3 })
  const flood = readPlan(JSON.stringify({ ...plan, terrains: Array.from({ length: 1_100_000 }, () => 0) }))
  expect(flood.ok || flood.problems).toMatchObject([{ path: 'terrains', found: 'more than 1000000 values' }])
  const keys = Object.fromEntries(Array.from({ length: 5000 }, (_, n) => [`key ${n}`, n]))
  const odd = readPlan(JSON.stringify({ ...plan, ...keys }))
  expect(odd.ok || odd.problems).toHaveLength(201)
  expect(odd.ok || odd.problems.at(-1)).toMatchObject({ found: '4800 more values that are not right' })
})
