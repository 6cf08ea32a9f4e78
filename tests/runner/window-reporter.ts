import { writeFileSync } from 'node:fs'
import type { FullConfig, Reporter, Suite, TestError } from '@playwright/test/reporter'
import { type Outcome, skip } from './outcome.ts'

/** Writes the counts of a playwright run. A test that passed only at its second try has failed. */
export default class WindowReporter implements Reporter {
  private suite: Suite | undefined
  private readonly errors: TestError[] = []

  onBegin(_config: FullConfig, suite: Suite): void {
    this.suite = suite
  }

  onError(error: TestError): void {
    this.errors.push(error)
  }

  onEnd(): void {
    const outcome: Outcome = { passed: 0, failed: 0, skipped: 0, notes: [] }
    for (const test of this.suite?.allTests() ?? []) {
      if (test.outcome() === 'expected') outcome.passed += 1
      else if (test.outcome() === 'skipped')
        skip(
          outcome,
          test.titlePath().filter(Boolean).join(' › '),
          test.annotations.find(a => a.type === 'skip' || a.type === 'fixme')?.description,
        )
      else outcome.failed += 1
    }
    for (const error of this.errors) {
      outcome.failed += 1
      outcome.notes.push(`failed: outside any test: ${error.message ?? String(error.value)}`)
    }
    const file = process.env.WINDOW_REPORT
    if (file) writeFileSync(file, JSON.stringify(outcome))
  }

  printsToStdio(): boolean {
    return false
  }
}
