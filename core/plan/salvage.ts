import { LOST, readLeniently } from './lenient-json.ts'
import { measurementPaths } from './measurements.ts'
import { migrate } from './migrate.ts'
import { readPlan } from './parse.ts'
import { type Loss, type Path, shape } from './salvage-shape.ts'
import { type Axle, type Plan, planSchema } from './schema.ts'
import { nonsense } from './sense.ts'
import { blankPlan } from './starting.ts'

export interface Salvaged {
  /** A plan that can be used. What was lost of its measurements is marked as assumed. */
  readonly plan: Plan
  readonly losses: readonly Loss[]
}

type Group = Record<string, unknown>
const isGroup = (value: unknown): value is Group => typeof value === 'object' && value !== null && !Array.isArray(value)

/**
 * What can be read of the text of a damaged plan file, the usual values in place of what is lost. null when it holds nothing of a plan,
 * when it comes from a newer version, and when nothing is wrong with it. Never throws.
 */
export function salvage(text: string): Salvaged | null {
  if (readPlan(text).ok) return null
  const found = readLeniently(text)
  if (found === LOST || !isGroup(found) || !Array.isArray(found.setups)) return null
  const { version } = found
  const known = Number.isInteger(version) ? version : planSchema.shape.version.value
  const current = migrate({ ...found, format: 'stopgap-plan', version: known })
  if (!current.ok || !isGroup(current.plan)) return null
  const blank = blankPlan()
  const { value, losses, numbers } = shape(planSchema, named(current.plan), usualFor(current.plan, blank), 'setups')
  if (value === LOST || numbers === 0 || !planSchema.safeParse(value).success) return null
  const told = [...losses]
  const mended = mend(value as Plan, blank, told)
  if (mended === null) return null
  const plan = withMarks(mended, told)
  return planSchema.safeParse(plan).success && nonsense(plan).length === 0 ? { plan, losses: told } : null
}

/** Entries of lists that lost their id get one, so that they need not be lost with it. */
function named(plan: Group): Group {
  const lists = ['setups', 'loads', 'terrains'].filter(key => Array.isArray(plan[key]))
  const withIds = lists.map(key => {
    const entries = plan[key] as unknown[]
    const taken = new Set<unknown>()
    const fresh = (n: number): string => (taken.has(`found-${n}`) ? fresh(n + 1) : `found-${n}`)
    return entries.map((entry, i) => {
      if (!isGroup(entry)) return entry
      const id = typeof entry.id === 'string' && !taken.has(entry.id) ? entry.id : fresh(i + 1)
      taken.add(id)
      return { name: '', ...entry, id }
    })
  })
  return { ...plan, ...Object.fromEntries(lists.map((key, i) => [key, withIds[i]])) }
}

/** What stands in for losses, in the shape of what was found: the same end of the car in another setup where that is whole, else usual values. */
function usualFor(found: Group, blank: Plan): unknown {
  const [setup] = blank.setups
  const [axle] = setup!.axles
  const axlesOf = (each: unknown): unknown[] => (isGroup(each) && Array.isArray(each.axles) ? each.axles : [])
  const setups = found.setups as unknown[]
  const whole = setups.flatMap(each => axlesOf(each).filter(isWholeAxle))
  return {
    ...blank,
    setups: setups.map(each => {
      const ids = axlesOf(each).map(one => (isGroup(one) ? one.id : undefined))
      const other = (id: unknown) => (id === 'front' ? 'rear' : id === 'rear' ? 'front' : undefined)
      const usual = ids.map((own, i) => {
        const id = isEnd(own) ? own : (other(ids[1 - i]) ?? (ids.length > 1 && i === 0 ? 'front' : 'rear'))
        return { ...(whole.find(one => one.id === id) ?? axle), id }
      })
      return { ...setup, axles: usual.length === 0 ? [axle] : usual }
    }),
  }
}

const axleSchema = planSchema.shape.setups.element.shape.axles.element
const isWholeAxle = (value: unknown): value is Axle => axleSchema.safeParse(value).success
const isEnd = (value: unknown): value is Axle['id'] => value === 'front' || value === 'rear'

const copyOf = <T>(value: T): T => JSON.parse(JSON.stringify(value)) as T

/** Parts of a corner that can be put right by the usual part in their place. */
const PARTS = ['linkage', 'shock', 'springs', 'stop', 'tire', 'clearance'] as const
const ROUNDS = 12

/** Takes out what contradicts itself, part by part, then corner by corner. null when that does not help. */
function mend(given: Plan, blank: Plan, told: Loss[]): Plan | null {
  const plan = copyOf(given)
  const usual = blank.setups[0]!.axles[0]!
  for (let round = 0; round < ROUNDS; round += 1) {
    const problems = nonsense(plan)
    if (problems.length === 0) return plan
    for (const { path } of problems) {
      const at = /^setups\[(\d+)\]\.axles\[(\d+)\](?:\.(\w+))?(?:\.(\w+))?/.exec(path)
      if (at === null) dropTop(plan, path, told)
      else mendAxle(plan.setups[Number(at[1])]!.axles[Number(at[2])], at, usual, round, told)
    }
  }
  return null
}

function mendAxle(axle: Axle | undefined, at: RegExpExecArray, usual: Axle, round: number, told: Loss[]): void {
  if (axle === undefined) return
  const path: Path = ['setups', Number(at[1]), 'axles', Number(at[2])]
  const [field, inner] = [at[3], at[4]]
  if (field === 'shockSpacing' || field === 'stopSpacing') axle[field] = axle.track * 0.6
  else if (field === 'id') axle.id = axle.id === 'front' ? 'rear' : 'front'
  const part = PARTS.find(each => each === inner)
  if (field !== 'corner') told.push({ path: [...path, field ?? ''], usual: true })
  else if (part !== undefined && round < ROUNDS / 2) {
    told.push({ path: [...path, 'corner', part], usual: true })
    Object.assign(axle.corner, { [part]: copyOf(usual.corner[part]) })
  } else {
    told.push({ path: [...path, 'corner'], usual: true })
    axle.corner = copyOf(usual.corner)
  }
}

/** What stands beside the setups and makes no sense is left out. */
function dropTop(plan: Plan, path: string, told: Loss[]): void {
  const key = /^\w+/.exec(path)?.[0]
  const at = /^\w+\[(\d+)\]/.exec(path)?.[1]
  const list = key === 'setups' || key === 'loads' || key === 'terrains' || key === 'runs' ? plan[key] : undefined
  if (list !== undefined && at !== undefined) list.splice(Number(at), 1)
  else if (key === 'ranges' || key === 'targets' || key === 'tolerances') delete plan[key]
  told.push({ path: [key ?? '', ...(at === undefined ? [] : [Number(at)])], usual: false })
}

/** The plan with everything assumed that was lost. */
function withMarks(plan: Plan, losses: readonly Loss[]): Plan {
  const lost = losses.map(({ path }) => path)
  const under = (head: Path): string[] =>
    lost
      .filter(path => path.length >= head.length && head.every((step, i) => step === path[i]))
      .map(path => path.slice(head.length).join('.'))
  const reaches = (one: string, other: string) => one === '' || other === one || other.startsWith(`${one}.`)
  const marks = (known: readonly string[] | undefined, all: readonly string[], gone: readonly string[]) => {
    const before = known?.filter(path => all.includes(path)) ?? []
    const more = all.filter(
      path => !before.includes(path) && gone.some(each => reaches(each, path) || reaches(path, each)),
    )
    const assumed = [...before, ...more]
    return assumed.length === 0 ? {} : { assumed }
  }
  const { assumed: ofVehicle, ...vehicle } = plan.vehicle
  return {
    ...plan,
    vehicle: { ...vehicle, ...marks(ofVehicle, ['wheelbase', 'cgHeight', 'rollAxisHeight'], under(['vehicle'])) },
    setups: plan.setups.map((setup, i) => ({
      ...setup,
      axles: setup.axles.map((axle, j) => {
        const { assumed, ...measured } = axle
        return { ...measured, ...marks(assumed, measurementPaths(axle), under(['setups', i, 'axles', j])) }
      }),
    })),
  }
}
