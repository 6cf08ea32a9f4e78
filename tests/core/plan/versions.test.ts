import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { expect, it } from 'vitest'
import { readPlan } from '../../../core/plan/parse.ts'
import { planSchema } from '../../../core/plan/schema.ts'

const folder = join(import.meta.dirname, 'versions')
const current = planSchema.shape.version.value
const text = (version: number) => readFileSync(join(folder, `${version}.stopgap`), 'utf8')

it('there is a plan of every version there ever was, as it was written then', () =>
  expect(readdirSync(folder).sort()).toEqual(Array.from({ length: current }, (_, n) => `${n + 1}.stopgap`).sort()))

it.each(Array.from({ length: current }, (_, n) => n + 1))(
  'a plan of version %i opens, and is of this version then',
  version => {
    expect(JSON.parse(text(version))).toMatchObject({ version })
    const read = readPlan(text(version))
    expect(read.ok ? read.plan.version : read.problems).toBe(current)
  },
)

it('a plan of the next version is refused politely: what it is, and what to do', () => {
  const read = readPlan(text(current).replace(`"version": ${current}`, `"version": ${current + 1}`))
  expect(read.ok || read.problems).toEqual([
    {
      path: 'version',
      found: `${current + 1}, written by a newer Stopgap`,
      wanted: `${current} or less: update Stopgap to open this plan`,
    },
  ])
})
