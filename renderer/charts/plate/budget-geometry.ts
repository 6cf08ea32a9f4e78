import { type System, toUnit } from '../../../core/units/quantity.ts'
import type { MeasureText } from '../text/span.ts'
import type { Frame } from './frame.ts'
import type { RulerTick } from './wheel-axis.ts'

/** Where things stand in the budget column, px. */
export interface BudgetGeometry {
  /** Right edge of the ruler's numbers. */
  readonly rulerRight: number
  readonly barX: number
  readonly barWidth: number
  readonly textX: number
  readonly textRight: number
}

/** The number beside a ruler tick, without unit. */
export function rulerNumber(wheel: number, system: System): string {
  const shown = Math.round(toUnit(wheel, 'length', system))
  return shown === 0 ? '0' : `${shown > 0 ? '+' : '−'}${Math.abs(shown)}`
}

export function budgetGeometry(
  frame: Frame,
  ruler: readonly RulerTick[],
  system: System,
  measure: MeasureText,
): BudgetGeometry {
  const { budget, small, type } = frame
  const numbers = ruler.filter(tick => tick.long).map(tick => measure(rulerNumber(tick.wheel, system), type.axis, 400))
  const rulerRight = budget.x + Math.min(Math.max(small ? 22 : 26, 9 + Math.max(0, ...numbers)), budget.width * 0.4)
  const barX = rulerRight + (small ? 4 : 6)
  const barWidth = small ? 18 : 28
  return {
    rulerRight,
    barX,
    barWidth,
    textX: barX + barWidth + (small ? 7 : 10),
    textRight: budget.right - (small ? 3 : 6),
  }
}
