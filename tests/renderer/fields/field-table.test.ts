import { readdirSync, readFileSync } from 'node:fs'
import path from 'node:path'
import { describe, expect, test } from 'vitest'
import { planJsonSchema } from '../../../core/plan/json-schema.ts'
import { readPlan } from '../../../core/plan/parse.ts'
import type { Plan } from '../../../core/plan/schema.ts'
import { fieldTable, generic, specOf } from '../../../renderer/fields/field-table.ts'
import { groupOf } from '../../../renderer/panels/measurements/groups.ts'

const seeds = path.join(import.meta.dirname, '../../../seeds')

const demos: Plan[] = readdirSync(seeds)
  .filter(name => name.endsWith('.stopgap'))
  .map(name => {
    const read = readPlan(readFileSync(path.join(seeds, name), 'utf8'))
    if (!read.ok) throw new Error(`${name} is no plan: ${JSON.stringify(read.problems)}`)
    return read.plan
  })

/** Every number in a value, by path. */
function numbers(value: unknown, at: string): string[] {
  if (typeof value === 'number') return [at]
  if (typeof value !== 'object' || value === null) return []
  return Object.entries(value).flatMap(([key, inner]) => numbers(inner, at === '' ? key : `${at}.${key}`))
}

const fields = new Set(
  demos.flatMap(plan => [
    ...plan.setups.flatMap(setup => setup.axles.flatMap(axle => numbers(axle, ''))),
    ...(['vehicle', 'loads', 'terrains', 'targets'] as const).flatMap(part => numbers(plan[part], part)),
  ]),
)

interface Shape {
  readonly type?: string
  readonly anyOf?: readonly Shape[]
  readonly oneOf?: readonly Shape[]
  readonly properties?: Readonly<Record<string, Shape>>
  readonly items?: Shape
  readonly prefixItems?: readonly Shape[]
}

/** Where a schema takes a number, with `*` for a place in a list. */
function numbersOf({ type, anyOf, oneOf, properties, items, prefixItems }: Shape, at = ''): string[] {
  const inner = (key: string): string => (at === '' ? key : `${at}.${key}`)
  const found = [
    ...(type === 'number' || type === 'integer' ? [at] : []),
    ...[...(anyOf ?? []), ...(oneOf ?? [])].flatMap(shape => numbersOf(shape, at)),
    ...Object.entries(properties ?? {}).flatMap(([key, shape]) => numbersOf(shape, inner(key))),
    ...[...(prefixItems ?? []), ...(items === undefined ? [] : [items])].flatMap(shape => numbersOf(shape, inner('*'))),
  ]
  return [...new Set(found)]
}

describe('the field table', () => {
  test('has a name, a unit and a way to measure for every number of every demo plan', () => {
    expect(fields.size).toBeGreaterThan(60)
    expect([...fields].filter(field => specOf(field) === null)).toEqual([])
  })

  test('has a field and a group for every number a plan may hold: what may be changed is chosen on Changes, tolerances on How sure', () => {
    const all = numbersOf(planJsonSchema()).map(place => place.replace(/^setups\.\*\.axles\.\*\./, ''))
    const elsewhere = /^(version|ranges\..*|tolerances\..*)$/
    const here = all.filter(place => !elsewhere.test(place))
    expect(here.length).toBeGreaterThan(70)
    expect(here.filter(place => specOf(place) === null || groupOf(place) === null)).toEqual([])
  })

  test('has a group for each', () => {
    expect([...fields].filter(field => groupOf(field) === null)).toEqual([])
  })

  test('says how in one sentence or two that fit the foot of the column', () => {
    const long = Object.entries(fieldTable).filter(([, { how, more }]) => how.length > 125 || (more?.length ?? 0) > 90)
    expect(long.map(([field]) => field)).toEqual([])
    expect(Object.values(fieldTable).filter(({ how }) => !/[.!]$/.test(how))).toEqual([])
  })

  test('takes places in lists for one entry', () => {
    expect(generic('corner.linkage.pivot.1.2')).toBe('corner.linkage.pivot.*.*')
    expect(generic('corner.springs.springs[0].rate')).toBe('corner.springs.springs.*.rate')
  })
})

test('damper curves of shock and stop are in one group, their other values in theirs', () => {
  expect(groupOf('corner.shock.compression.1.force')?.id).toBe('dampers')
  expect(groupOf('corner.stop.rebound.0.velocity')?.id).toBe('dampers')
  expect(groupOf('corner.stop.gap')?.id).toBe('ride-height')
  expect(groupOf('corner.stop.stroke')?.id).toBe('stop')
})
