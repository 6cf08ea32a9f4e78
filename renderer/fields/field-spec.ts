import type { Quantity } from '../../core/units/quantity.ts'

/** What the window says about one measurement of the plan. */
export interface FieldSpec {
  /** On the row; `short` where the column is narrow. */
  readonly label: string
  readonly short?: string
  readonly quantity: Quantity
  /** In a sentence: `the gap`. Undo drops the article. */
  readonly named: string
  /** One line on how to measure it. */
  readonly how: string
  /** What else helps. */
  readonly more?: string
}

export const spec = (
  quantity: Quantity,
  label: string,
  named: string,
  how: string,
  rest: Pick<FieldSpec, 'short' | 'more'> = {},
): FieldSpec => ({ quantity, label, named, how, ...rest })

/** As undo names it: `gap`. */
export const plainName = ({ named }: FieldSpec): string => named.replace(/^(the|an?) /, '')
