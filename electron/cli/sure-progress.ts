import type { Setup } from '../../core/plan/schema.ts'
import type { TrialProgress } from '../../core/tolerance/steps.ts'
import { setupName } from './names.ts'

/** Tells how far the trials of a setup have come, in a line. */
export const tellTrials =
  (setup: Setup, tell: (line: string) => void, what = 'trial') =>
  ({ done, of }: TrialProgress): void =>
    tell(`${setupName(setup)}: ${what} ${done.toLocaleString('en-US')} of ${of.toLocaleString('en-US')}`)
