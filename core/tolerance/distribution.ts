/** How likely a value is off by how much. */
export type Distribution =
  /** Anywhere within ± halfWidth alike: what a stated limit says and no more (JCGM 100:2008 (GUM) 4.3.7). */
  | { readonly kind: 'rectangular'; readonly halfWidth: number }
  /** A mean of many readings, or a certificate's standard uncertainty. */
  | { readonly kind: 'normal'; readonly deviation: number }

/** Standard uncertainty, in the unit of the value: a/√3 for a rectangle. */
export const standardUncertainty = (distribution: Distribution): number =>
  distribution.kind === 'rectangular' ? distribution.halfWidth / Math.sqrt(3) : distribution.deviation

/**
 * Deviations drawn from a distribution.
 * @param random evenly spread over [0, 1)
 */
export function drawFrom(distribution: Distribution, random: () => number): () => number {
  if (distribution.kind === 'rectangular') {
    const { halfWidth } = distribution
    return () => halfWidth * (2 * random() - 1)
  }
  const { deviation } = distribution
  let spare: number | null = null
  // G. E. P. Box and M. E. Muller, Annals of Mathematical Statistics 29 (1958) 610.
  return () => {
    if (spare !== null) {
      const kept = spare
      spare = null
      return kept
    }
    const size = deviation * Math.sqrt(-2 * Math.log(1 - random()))
    const angle = 2 * Math.PI * random()
    spare = size * Math.sin(angle)
    return size * Math.cos(angle)
  }
}
