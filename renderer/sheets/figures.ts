import { axleBudget } from '../../core/budget/budget.ts'
import type { AxleBudget } from '../../core/budget/results.ts'
import { HIGHEST, landingHeight } from '../../core/changes/landing.ts'
import { cornerModel } from '../../core/corner/corner.ts'
import type { CornerModel } from '../../core/corner/corner-model.ts'
import { type AxleLedger, setupLoads } from '../../core/loads/ledger.ts'
import type { Axle, Plan, Setup } from '../../core/plan/schema.ts'
import { INCH } from '../../core/units/constants.ts'
import { type Say, sayIn } from '../../core/units/saying.ts'

/** What both sheets say of one side. SI. */
export interface Side {
  readonly setup: Setup
  readonly axle: Axle
  readonly model: CornerModel
  readonly budget: AxleBudget
  readonly ledger: AxleLedger
  /** Drop it lands from without coming to its end; `sure`: driven, not only bounded by its energy. */
  readonly landing: { readonly drop: number; readonly sure: boolean; readonly more: boolean }
}

export function sideOf(plan: Plan, setup: Setup, axle: Axle): Side {
  const model = cornerModel(axle.corner)
  const { drop, by } = landingHeight(model)
  return {
    setup,
    axle,
    model,
    budget: axleBudget(axle, plan, model),
    ledger: setupLoads(plan, setup).ledger.find(({ id }) => id === axle.id)!,
    landing: { drop, sure: by === 'simulation', more: drop >= HIGHEST },
  }
}

/** Wheel travel on the springs alone, m. */
export const coilover = ({ budget }: Side): number => budget.zones.find(({ id }) => id === 'coilover')!.length

/** A height as a person says it: whole inches, or centimetres, and no finer than it is known. */
export const roundDrop = (drop: number, units: Plan['units']): string =>
  units === 'inch' ? `${Math.floor(drop / INCH + 1e-9)}\u00a0in` : `${Math.floor(drop * 100 + 1e-9)}\u00a0cm`

/** Writes a value that is not torn from its unit at the end of a line. */
export function sayer({ units }: Plan): Say {
  const say = sayIn(units)
  return (value, quantity, options) => say(value, quantity, options).replaceAll(' ', '\u00a0')
}

/** A length off the tape: sixteenths, or whole millimetres. */
export const taped = (value: number, plan: Plan): string =>
  sayer(plan)(value, 'length', plan.units === 'metric' ? { digits: 0 } : {})
