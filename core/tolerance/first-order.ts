/**
 * First-order propagation of uncertainty: how results follow small deviations of what they are worked out from
 * (JCGM 100:2008 (GUM) 5.1.2 and 5.2.2; for several results at once JCGM 102:2011 6.2).
 */

/** Slopes of results over inputs: `slopes[result][input]`. */
export type Slopes = readonly (readonly number[])[]

/**
 * Slopes at no deviation by central differences.
 * @param results of deviations in the inputs' own units, always as many
 * @param steps of each input, more than 0: small against its uncertainty, large against rounding
 */
export function slopesOf(
  results: (deviations: readonly number[]) => readonly number[],
  steps: readonly number[],
): Slopes {
  const none = steps.map(() => 0)
  const columns = steps.map((step, i) => {
    const up = results(none.with(i, step))
    const down = results(none.with(i, -step))
    return up.map((value, result) => (value - down[result]!) / (2 * step))
  })
  return results(none).map((_, result) => columns.map(column => column[result]!))
}

/**
 * Covariances of the results, S·V·Sᵀ.
 * @param covariances of the inputs; for independent ones their variances on the diagonal
 */
export function propagated(slopes: Slopes, covariances: readonly (readonly number[])[]): number[][] {
  const through = slopes.map(row =>
    covariances.map((_, j) => row.reduce((sum, slope, i) => sum + slope * covariances[i]![j]!, 0)),
  )
  return through.map(row => slopes.map(other => row.reduce((sum, value, j) => sum + value * other[j]!, 0)))
}

/** Standard uncertainty of each result from independent inputs. */
export const combined = (slopes: Slopes, uncertainties: readonly number[]): number[] =>
  slopes.map(row => Math.sqrt(row.reduce((sum, slope, i) => sum + (slope * uncertainties[i]!) ** 2, 0)))

/**
 * Effective degrees of freedom of a combined uncertainty (Welch–Satterthwaite, JCGM 100:2008 G.4.1).
 * @param freedoms of each input; infinite for one known for good
 */
export function effectiveFreedom(
  slopes: readonly number[],
  uncertainties: readonly number[],
  freedoms: readonly number[],
): number {
  const parts = slopes.map((slope, i) => (slope * uncertainties[i]!) ** 2)
  const total = parts.reduce((sum, part) => sum + part, 0)
  return total ** 2 / parts.reduce((sum, part, i) => sum + part ** 2 / freedoms[i]!, 0)
}
