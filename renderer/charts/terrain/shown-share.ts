/** A share as the page says it. */
export const shownShare = (share: number): string => {
  const whole = 100 * share
  return whole > 0 && whole < 0.5 ? 'under 1 %' : `${Math.round(whole)} %`
}
