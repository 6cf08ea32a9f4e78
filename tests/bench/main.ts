import { spawnSync } from 'node:child_process'
import { existsSync, readFileSync, writeFileSync } from 'node:fs'
import path from 'node:path'
import { parseArgs } from 'node:util'
import { amount, type Benchmark, type Kept, ratioOf, type Sample } from './benchmark.ts'
import { budgets } from './budget.ts'
import { inTheBrowser } from './in-the-browser.ts'
import { leftOpen } from './left-open.ts'
import { proposals } from './propose.ts'
import { results } from './results.ts'
import { rides } from './rides.ts'
import { runs } from './runs.ts'
import { shipped } from './shipped.ts'
import { tolerance } from './tolerance.ts'

/**
 * `npm run bench` measures everything, `npm run bench -- window` what has that word in its name.
 * `--keep` writes what was measured to kept.json, which later runs show beside their own; `--alone` is for the program itself.
 */
const benchmarks: readonly Benchmark[] = [
  ...budgets,
  ...results,
  ...proposals,
  ...tolerance,
  ...rides,
  ...runs,
  ...shipped,
  ...inTheBrowser,
  ...leftOpen,
]

const keptFile = path.join(import.meta.dirname, '../../tests/bench/kept.json')
const kept: Record<string, Kept> = existsSync(keptFile) ? JSON.parse(readFileSync(keptFile, 'utf8')) : {}

const { values, positionals } = parseArgs({
  options: { keep: { type: 'boolean' }, alone: { type: 'string' } },
  allowPositionals: true,
})
if (values.alone !== undefined) {
  process.stdout.write(JSON.stringify(await benchmarks.find(({ name }) => name === values.alone)!.measure()))
  process.exit()
}

/** Measured in a program of its own: in one that has measured others, what is shared is compiled for those too. Null when that failed. */
function alone(name: string): Sample | null {
  const { status, stdout } = spawnSync(process.execPath, [process.argv[1]!, '--alone', name], {
    encoding: 'utf8',
    stdio: ['ignore', 'pipe', 'inherit'],
  })
  return status === 0 ? JSON.parse(stdout) : null
}

const chosen = benchmarks.filter(({ name }) => positionals.every(word => name.includes(word)))
if (chosen.length === 0) {
  console.error(`Nothing measured has “${positionals.join(' ')}” in its name. There are:`)
  for (const { name } of benchmarks) console.error(`  ${name}`)
  process.exit(1)
}

let missed = 0
let notRun = 0
for (const { name, reference, budget, missing } of chosen) {
  const without = missing?.() ?? null
  if (without !== null) {
    notRun += 1
    console.log(`none  ${name}: not run, ${without}`)
    continue
  }
  const sample = alone(name)
  if (sample === null) {
    missed += 1
    console.log(`FAIL  ${name}: not measured, for the reason above`)
    continue
  }
  const ratio = ratioOf(sample)
  const before = kept[name]
  if (ratio > budget) missed += 1
  const change =
    before === undefined
      ? 'nothing kept'
      : `kept ${before.ratio.toFixed(2)} (${amount(before.value, before.unit)}), now ${((ratio / before.ratio - 1) * 100).toFixed(0)} %`
  console.log(`${ratio > budget ? 'MISS' : 'pass'}  ${name}: ${amount(sample.value, sample.unit)}`)
  console.log(
    `      ${ratio.toFixed(2)} × ${reference} (${amount(sample.reference, sample.unit)}); budget ${Number(budget.toFixed(3))} ×; ${change}`,
  )
  kept[name] = { ratio, value: sample.value, unit: sample.unit }
}

if (values.keep) writeFileSync(keptFile, `${JSON.stringify(kept, null, 2)}\n`)
console.log(
  `${chosen.length - missed - notRun} within budget, ${missed} over${notRun > 0 ? `, ${notRun} not run` : ''}`,
)
process.exitCode = missed > 0 ? 1 : 0
