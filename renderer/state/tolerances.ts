import type { Draft } from 'immer'
import type { AxleId, Plan } from '../../core/plan/schema.ts'
import { edit, type Outcome } from './edit.ts'
import { problemsOf } from './plan-checks.ts'
import type { Store } from './store.ts'

/** Every tolerance of the plan put where its measurement now is; null takes it out with the measurement. */
function moved(plan: Draft<Plan>, to: (path: string) => string | null): void {
  const kept = Object.entries(plan.tolerances?.values ?? {}).flatMap(([path, value]) => {
    const at = to(path)
    return at === null ? [] : [[at, value] as const]
  })
  if (kept.length === 0) delete plan.tolerances
  else plan.tolerances = { version: 1, values: Object.fromEntries(kept) }
}

/** How far off a measurement may be; null goes back to what is usual. @param name what undo will call it */
export const putTolerance = (store: Store, name: string, path: string, value: number | null): Outcome =>
  edit(store, `tolerance of ${name}`, plan => {
    moved(plan, each => (each === path ? null : each))
    if (value !== null) plan.tolerances = { version: 1, values: { ...plan.tolerances?.values, [path]: value } }
  })

/** What the plan would say to it. */
export const toleranceProblems = (plan: Plan, path: string, value: number): Outcome =>
  problemsOf({ ...plan, tolerances: { version: 1, values: { ...plan.tolerances?.values, [path]: value } } })

/** Those of a load that goes go with it: another that gets its id is another load. */
export const loadGone = (plan: Draft<Plan>, id: string): void =>
  moved(plan, path => (path.startsWith(`loads.${id}.`) ? null : path))

/** Those of an axle go where no setup has it any more. */
export const axlesGone = (plan: Draft<Plan>): void =>
  moved(plan, path => {
    const [whose] = path.split('.')
    const ofAxle = whose === 'front' || whose === 'rear'
    return ofAxle && plan.setups.every(({ axles }) => axles.every(({ id }) => id !== whose)) ? null : path
  })

/**
 * Springs are counted from the top: one more or less above moves the places of the others. Where another setup has that axle too, a place
 * means its springs as well, and stays.
 * @param more how many came in at the top, negative: went
 */
export function springsMoved(plan: Draft<Plan>, axle: AxleId, more: number): void {
  if (plan.setups.filter(({ axles }) => axles.some(({ id }) => id === axle)).length > 1) return
  const spring = new RegExp(`^${axle}\\.corner\\.springs\\.springs\\.(\\d+)\\.(.*)$`)
  moved(plan, path => {
    const [, place, what] = spring.exec(path) ?? []
    if (place === undefined) return path
    const at = Number(place) + more
    return at < 0 ? null : `${axle}.corner.springs.springs.${at}.${what}`
  })
}
