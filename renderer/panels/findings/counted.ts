import type { Finding, Severity } from '../../../core/budget/results.ts'

const one: Readonly<Record<Severity, readonly [string, string]>> = {
  danger: ['danger', 'dangers'],
  caution: ['caution', 'cautions'],
  note: ['note', 'notes'],
}

/** `1 danger, 2 cautions, 1 note`; a sentence when there is nothing. */
export function countedFindings(findings: readonly Pick<Finding, 'severity'>[]): string {
  const parts = (Object.keys(one) as Severity[]).flatMap(severity => {
    const count = findings.filter(finding => finding.severity === severity).length
    return count === 0 ? [] : [`${count} ${one[severity][count === 1 ? 0 : 1]}`]
  })
  return parts.length === 0 ? 'nothing stands out on this axle' : parts.join(', ')
}
