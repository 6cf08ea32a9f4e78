import type { Finding, Severity } from '../../core/budget/results.ts'
import { paragraph } from './paragraph.ts'

const SEVERITIES: Readonly<Record<Severity, string>> = { danger: 'Danger', caution: 'Caution', note: 'Note' }

/** One finding, and what would change it. */
export const findingText = ({ severity, message, remedy }: Pick<Finding, 'severity' | 'message' | 'remedy'>): string =>
  paragraph(`${SEVERITIES[severity]}: ${message}`, '  ', '    ') + paragraph(`What would change it: ${remedy}`, '    ')
