import type { Plan } from '../../core/plan/schema.ts'
import { onceFor } from './once-for.ts'

/**
 * Fields are named by where they are: inside the axle shown (`corner.stop.gap`), or from the top of the plan (`vehicle.wheelbase`,
 * `loads.0.lateral`). A place is the same from the top of the plan: `setups.0.axles.1.corner.stop.gap`.
 */

const atTop = new Set(['title', 'notes', 'units', 'vehicle', 'loads', 'terrains', 'targets', 'setups'])

const known = new Map<string, { readonly steps: readonly string[]; readonly normal: string }>()

/** A plan has a few hundred paths and they are asked for at every keystroke: each is taken apart once. */
function taken(path: string) {
  const before = known.get(path)
  if (before !== undefined) return before
  const normal = path.replace(/\[(\d+)\]/g, '.$1')
  const made = { steps: normal.split('.'), normal }
  known.set(path, made)
  return made
}

/** `springs[0].rate` and `springs.0.rate` alike. */
const segments = (path: string): readonly string[] => taken(path).steps

export const normal = (path: string): string => taken(path).normal

export const isAtTop = (field: string): boolean => atTop.has(segments(field)[0]!)

export const placeIn = (field: string, setup: number, axle: number): string =>
  isAtTop(field) ? normal(field) : `setups.${setup}.axles.${axle}.${normal(field)}`

/** The value at a path; undefined where there is none. */
export const valueAt = (within: unknown, path: string): unknown =>
  segments(path).reduce<unknown>(
    (value, step) =>
      typeof value === 'object' && value !== null ? (value as Record<string, unknown>)[step] : undefined,
    within,
  )

/** Puts a value into a draft; undefined takes the key away. Groups on the way that are missing are made. */
export function putAt(draft: object, path: string, value: unknown): void {
  const steps = segments(path)
  const last = steps.at(-1)!
  let group = draft as Record<string, unknown>
  for (const step of steps.slice(0, -1)) {
    if (typeof group[step] !== 'object' || group[step] === null) group[step] = {}
    group = group[step] as Record<string, unknown>
  }
  if (value === undefined) delete group[last]
  else group[last] = value
}

interface Naming {
  readonly holder: string
  /** Its own path inside the holder, then those of the groups it belongs to. */
  readonly names: readonly string[]
}

const namings = new Map<string, Naming | null>()

/** Where a place may be marked as assumed: in the vehicle, or in its axle. */
function namingOf(place: string): Naming | null {
  const before = namings.get(place)
  if (before !== undefined) return before
  const steps = segments(place)
  const depth = steps[0] === 'vehicle' ? 1 : 4
  const found = steps.length > depth && (depth === 1 || steps[0] === 'setups')
  const own = steps.slice(depth)
  const made = found
    ? { holder: steps.slice(0, depth).join('.'), names: own.map((_, i) => own.slice(0, own.length - i).join('.')) }
    : null
  namings.set(place, made)
  return made
}

/** The list that says what is assumed, and the path by which it names the field. */
export function assumedList(plan: Plan, place: string): { holder: string; name: string } | null {
  const naming = namingOf(place)
  if (naming === null || (naming.holder !== 'vehicle' && valueAt(plan, naming.holder) === undefined)) return null
  return { holder: naming.holder, name: naming.names[0]! }
}

const setOf = onceFor((list: readonly string[]): ReadonlySet<string> => new Set(list.map(normal)))

/** The path that marks a field as assumed: its own, or that of a group it belongs to. */
export function assumedEntry(plan: Plan, place: string): string | null {
  const naming = namingOf(place)
  if (naming === null) return null
  const holder = valueAt(plan, naming.holder) as { readonly assumed?: readonly string[] } | undefined
  if (holder?.assumed === undefined) return null
  const marked = setOf(holder.assumed)
  return naming.names.find(name => marked.has(name)) ?? null
}

/** The load a place is a size of; null elsewhere. A load is assumed as a whole. */
export function loadSized(plan: Plan, place: string): number | null {
  const [list, at, name] = segments(place)
  const index = Number(at)
  return list === 'loads' && name !== undefined && name !== 'name' && plan.loads[index] !== undefined ? index : null
}

export function isAssumed(plan: Plan, place: string): boolean {
  const load = loadSized(plan, place)
  return load === null ? assumedEntry(plan, place) !== null : plan.loads[load]!.assumed === true
}
