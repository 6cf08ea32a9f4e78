import { spawnSync } from 'node:child_process'
import { measure } from 'mitata'
import type { Sample } from './benchmark.ts'

const rounds = 5
/** Before that, until Node has compiled what is measured as well as it will. */
const warming = 2
/** Per round and side, ns. */
const share = 60e6

const median = (values: readonly number[]): number => values.toSorted((a, b) => a - b)[values.length >> 1]!

/** Times two pieces of work in turn, so that whatever else the machine does falls on both; each is given by its median. */
export async function timed(work: () => unknown, reference: () => unknown): Promise<Sample> {
  const [own, other]: [number[], number[]] = [[], []]
  for (let round = -warming; round < rounds; round++) {
    const [mine, theirs] = [
      await measure(work, { min_cpu_time: share }),
      await measure(reference, { min_cpu_time: share }),
    ]
    if (round < 0) continue
    own.push(mine.p50)
    other.push(theirs.p50)
  }
  return { unit: 'ns', value: median(own), reference: median(other) }
}

/** For work so long that a few runs must do: each side by its quickest, for whatever else the machine does only adds. */
export function inTurn(work: () => unknown, reference: () => unknown): Sample {
  let own = Infinity
  let other = Infinity
  const taken = (run: () => unknown): number => {
    const started = process.hrtime.bigint()
    run()
    return Number(process.hrtime.bigint() - started)
  }
  for (let run = 0; run < 60; run++) work()
  for (let round = 0; round < rounds; round++) {
    for (let run = 0; run < 20; run++) own = Math.min(own, taken(work))
    other = Math.min(other, taken(reference))
  }
  return { unit: 'ns', value: own, reference: other }
}

/** The same for two programs, each run from start to end with this Node. */
export async function timedPrograms(work: readonly string[], reference: readonly string[]): Promise<Sample> {
  const [own, other]: [number[], number[]] = [[], []]
  for (let round = 0; round < 2 * rounds; round++) {
    own.push(duration(work))
    other.push(duration(reference))
  }
  return { unit: 'ns', value: median(own), reference: median(other) }
}

function duration(args: readonly string[]): number {
  const started = process.hrtime.bigint()
  const { status, stderr } = spawnSync(process.execPath, args, { encoding: 'utf8' })
  const taken = Number(process.hrtime.bigint() - started)
  if (status !== 0) throw new Error(`node ${args.join(' ')} ended with code ${status}: ${stderr}`)
  return taken
}

/** The most memory a program takes from start to end, bytes. @param source of a module, for this Node with TypeScript */
export function memoryOf(source: string): number {
  const asked = `${source}\nprocess.stdout.write(String(process.resourceUsage().maxRSS * 1024))`
  const args = ['--import', 'tsx', '--input-type=module', '--eval', asked]
  const { status, stdout, stderr } = spawnSync(process.execPath, args, { encoding: 'utf8' })
  if (status !== 0) throw new Error(`the program ended with code ${status}: ${stderr}`)
  return Number(stdout)
}
