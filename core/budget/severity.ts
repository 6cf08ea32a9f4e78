import type { Severity } from './results.ts'

const RANK: Readonly<Record<Severity, number>> = { danger: 0, caution: 1, note: 2 }

interface Rated {
  readonly severity: Severity
}

/** For sorting: the worst first, equals in the order they came. */
export const worstFirst = (a: Rated, b: Rated): number => RANK[a.severity] - RANK[b.severity]
