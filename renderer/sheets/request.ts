import type { Shelf } from '../../core/changes/shelf.ts'
import type { Axle, AxleId, Plan, Setup } from '../../core/plan/schema.ts'
import { same } from './differences.ts'
import type { Paper } from './page/paper.ts'

export type SheetKind = 'customer' | 'shop'

export const SHEETS: Readonly<Record<SheetKind, string>> = { customer: 'Customer sheet', shop: 'Shop sheet' }
export const PAPERS: Readonly<Record<Paper, string>> = { a4: 'A4', letter: 'Letter' }

/** What a sheet is made from. */
export interface SheetRequest {
  readonly plan: Plan
  readonly axle: AxleId
  /** Setups, by id. */
  readonly before: string
  readonly after: string
  readonly paper: Paper
  /** Tubes a spacer may be cut from; generic sizes when left out. */
  readonly shelf?: Shelf
  /** The day to print on it, as it is to be read; null: a blank to write it in. */
  readonly date: string | null
}

/** One axle in the two setups of a sheet. */
export interface Pair {
  readonly before: { readonly setup: Setup; readonly axle: Axle }
  readonly after: { readonly setup: Setup; readonly axle: Axle }
}

const axleOf = (setup: Setup | undefined, id: AxleId): Axle | undefined => setup?.axles.find(axle => axle.id === id)

/** The setups to compare when nobody says: the first, and the next one that differs from it; the first twice in a plan of one. */
export function usualPair({ setups }: Plan, axle?: AxleId): { before: string; after: string } {
  const before = setups[0]!
  const changed = setups
    .slice(1)
    .find(setup =>
      setup.axles.some(each => (axle === undefined || each.id === axle) && !same(axleOf(before, each.id), each)),
    )
  return { before: before.id, after: (changed ?? setups[1] ?? before).id }
}

/** The axle a sheet is about when nobody says, of those both setups have: the first that differs, else the last. */
export function usualAxle(plan: Plan, before: string, after: string): AxleId {
  const [was, is] = [before, after].map(id => plan.setups.find(setup => setup.id === id))
  const shown = (is ?? plan.setups[0]!).axles
  const both = shown.filter(({ id }) => axleOf(was, id) !== undefined)
  return (both.find(axle => !same(axleOf(was, axle.id), axle)) ?? both.at(-1) ?? shown.at(-1)!).id
}

/** The two sides of a sheet, or why there is none. */
export function pairOf({ plan, axle, before, after }: SheetRequest): Pair | { readonly problem: string } {
  const side = (id: string) => {
    const setup = plan.setups.find(each => each.id === id)
    const found = axleOf(setup, axle)
    return setup === undefined || found === undefined ? null : { setup, axle: found }
  }
  const [was, is] = [side(before), side(after)]
  if (was === null || is === null) {
    const id = was === null ? before : after
    const ids = plan.setups.map(each => each.id).join(', ')
    return plan.setups.some(each => each.id === id)
      ? { problem: `The setup “${id}” has no ${axle} axle.` }
      : { problem: `There is no setup “${id}” in this plan. It has ${ids}.` }
  }
  return { before: was, after: is }
}
