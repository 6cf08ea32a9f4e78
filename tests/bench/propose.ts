import { evaluator } from '../../core/changes/evaluate.ts'
import { combinations } from '../../core/changes/ranges.ts'
import { GENERIC_SHELF } from '../../core/changes/shelf.ts'
import { usualRanges } from '../../core/changes/usual-ranges.ts'
import type { Terrain } from '../../core/plan/schema.ts'
import { seed } from '../seeds/seed.ts'
import type { Benchmark, Sample } from './benchmark.ts'

const CANDIDATES = 400
const plan = seed('before-and-after.stopgap')
const axle = plan.setups[0]!.axles.find(({ id }) => id === 'rear')!

/** Processor time of one run over the candidates, ns. */
function once(course?: Terrain): number {
  const list = combinations(axle.corner, usualRanges(axle.corner, GENERIC_SHELF, plan.units)).slice(0, CANDIDATES)
  if (list.length < CANDIDATES) throw new Error(`only ${list.length} candidates`)
  const evaluate = evaluator({ axle, units: plan.units, targets: plan.targets!, ...(course && { course }) })
  const before = process.cpuUsage()
  for (const changes of list) evaluate(changes)
  const { user, system } = process.cpuUsage(before)
  return (user + system) * 1000
}

/** The middle of three runs, shared by two cores. */
function half(course?: Terrain): Sample {
  const runs = [once(course), once(course), once(course)].sort((a, b) => a - b)
  return { unit: 'ns', value: runs[1]! / 2, reference: 2e9 }
}

/** What the map of proposals waits for. Each candidate is its own work, so two cores share them evenly: half the processor time of one. */
export const proposals: readonly Benchmark[] = [
  {
    name: `${CANDIDATES} candidates, each landed until its height is known, shared by two cores`,
    reference: 'two seconds',
    budget: 1,
    measure: async () => half(),
  },
  {
    name: `${CANDIDATES} candidates, landed and driven over a ledge, shared by two cores`,
    reference: 'two seconds',
    budget: 1,
    measure: async () => half(plan.terrains.find(({ kind }) => kind === 'ledge')),
  },
]
