import type { Severity } from '../../../core/budget/results.ts'

/** How bad it is, in front of a finding. */
export const severityWords: Readonly<Record<Severity, string>> = { danger: 'Danger', caution: 'Caution', note: 'Note' }
