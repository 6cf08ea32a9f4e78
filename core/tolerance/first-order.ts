/**
 * First-order propagation of uncertainty: how results follow small deviations of what they are worked out from
 * (JCGM 100:2008 (GUM) 5.1.2).
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

/** Standard uncertainty of each result from independent inputs. */
export const combined = (slopes: Slopes, uncertainties: readonly number[]): number[] =>
  slopes.map(row => Math.sqrt(row.reduce((sum, slope, i) => sum + (slope * uncertainties[i]!) ** 2, 0)))
