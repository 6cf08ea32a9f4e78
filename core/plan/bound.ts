/** The number a value may not pass, in the value's own SI unit: for whoever says it in other units than the file's. */
export interface Bound {
  /** `least` and `most` may be met, `above` and `below` may not. */
  readonly side: 'least' | 'most' | 'above' | 'below'
  readonly limit: number
  /** What the limit is in the plan, `the stroke`; absent where it is no measurement but a range. */
  readonly of?: string
  /** Why there is one, where that is not plain. */
  readonly why?: string
}

const ALONE = { least: 'or more', most: 'or less' } as const
const AGAINST = { least: 'no less than', most: 'no more than', above: 'more than', below: 'less than' } as const

/** A bound in words, as what would be right. @param say the limit as text, with its unit */
export function boundWords({ side, limit, of, why }: Bound, say: (limit: number) => string): string {
  const alone = side === 'above' || side === 'below' ? `${AGAINST[side]} ${say(limit)}` : `${say(limit)} ${ALONE[side]}`
  const words = of === undefined ? alone : `${AGAINST[side]} ${of}, ${say(limit)}`
  return why === undefined ? words : `${words}: ${why}`
}
