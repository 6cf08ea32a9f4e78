/** What one stage of the run came to. A static check counts as one test. */
export interface Outcome {
  passed: number
  failed: number
  skipped: number
  /** Lines for the reader: why a test was skipped, what went wrong besides the tests themselves. */
  notes: string[]
}

export const add = (outcomes: readonly Outcome[]): Outcome => ({
  passed: outcomes.reduce((sum, outcome) => sum + outcome.passed, 0),
  failed: outcomes.reduce((sum, outcome) => sum + outcome.failed, 0),
  skipped: outcomes.reduce((sum, outcome) => sum + outcome.skipped, 0),
  notes: outcomes.flatMap(outcome => outcome.notes),
})

/** The last line of a run. */
export const lastLine = ({ passed, failed, skipped }: Outcome): string =>
  `${passed} passed, ${failed} failed, ${skipped} skipped`

/** A test that was skipped must say why; without a reason it counts as failed. */
export function skip(outcome: Outcome, name: string, reason: string | undefined): void {
  if (reason) {
    outcome.skipped += 1
    outcome.notes.push(`skipped: ${name}: ${reason}`)
  } else {
    outcome.failed += 1
    outcome.notes.push(`failed: ${name}: skipped without a reason; say why, as in skip(condition, 'reason')`)
  }
}

/** A run that stops early, or runs nothing, has failed whatever its counts say. */
export function settle(name: string, exitCode: number, reported: Outcome | undefined): Outcome {
  if (reported === undefined)
    return { passed: 0, failed: 1, skipped: 0, notes: [`failed: ${name} left no report (exit code ${exitCode})`] }
  if (reported.passed + reported.failed === 0)
    return { ...reported, failed: 1, notes: [...reported.notes, `failed: ${name} ran no tests`] }
  if (exitCode !== 0 && reported.failed === 0)
    return { ...reported, failed: 1, notes: [...reported.notes, `failed: ${name} ended with exit code ${exitCode}`] }
  return reported
}
