import { writeFileSync } from 'node:fs'
import type { Reporter, TestModule } from 'vitest/node'
import { type Outcome, skip } from './outcome.ts'

/** Writes the counts of a vitest run, with the reasons of skipped tests, which its own JSON report leaves out. */
export default class UnitReporter implements Reporter {
  onTestRunEnd(modules: readonly TestModule[], errors: readonly { message?: string }[]): void {
    const outcome: Outcome = { passed: 0, failed: 0, skipped: 0, notes: [] }
    for (const module of modules) {
      for (const test of module.children.allTests()) {
        const result = test.result()
        if (result.state === 'passed') outcome.passed += 1
        else if (result.state === 'skipped') skip(outcome, `${module.relativeModuleId} › ${test.fullName}`, result.note)
        else outcome.failed += 1
      }
      for (const error of module.errors()) {
        outcome.failed += 1
        outcome.notes.push(`failed: ${module.relativeModuleId}: ${error.message}`)
      }
    }
    for (const error of errors) {
      outcome.failed += 1
      outcome.notes.push(`failed: outside any test: ${error.message}`)
    }
    const file = process.env.UNIT_REPORT
    if (file) writeFileSync(file, JSON.stringify(outcome))
  }
}
