import { mkdir } from 'node:fs/promises'
import path from 'node:path'
import { add, lastLine, type Outcome } from './runner/outcome.ts'
import { run, runningStages, type Stage, staticStages } from './runner/stages.ts'

/** All checks of the project in one run; `npm test -- lint unit` runs only those named. */
const asked = process.argv.slice(2)
const names = [...new Set([...staticStages, ...runningStages].map(stage => stage.name))]
const unknown = asked.filter(name => !names.includes(name))
if (unknown.length > 0) {
  console.error(`No stage is called ${unknown.join(', ')}. There are: ${names.join(', ')}.`)
  process.exit(1)
}
const wanted = (stage: Stage) => asked.length === 0 || asked.includes(stage.name)

const outcomes: Outcome[] = []
async function finish(stage: Stage, running: ReturnType<typeof run>, started: number): Promise<void> {
  const { outcome, output } = await running
  const seconds = ((performance.now() - started) / 1000).toFixed(1)
  if (output.trim() !== '') console.log(output.trimEnd())
  console.log(`${outcome.failed === 0 ? 'pass' : 'FAIL'}  ${stage.title}  (${seconds} s)`)
  outcomes.push(outcome)
}

await mkdir(path.join(import.meta.dirname, '../.cache'), { recursive: true })
const started = performance.now()
const checks = staticStages.filter(wanted).map(stage => ({ stage, running: run(stage) }))
for (const { stage, running } of checks) await finish(stage, running, started)
for (const stage of runningStages.filter(wanted)) {
  console.log(`\n${stage.title} …`)
  await finish(stage, run(stage), performance.now())
}

const total = add(outcomes)
console.log('')
for (const note of total.notes) console.log(note)
console.log(lastLine(total))
process.exitCode = total.failed > 0 || total.passed === 0 ? 1 : 0
