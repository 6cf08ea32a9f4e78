import { boundWords } from './bound.ts'
import { cornerSense, type Path, type Report, short, travelEnds } from './corner-sense.ts'
import { type Problem, pathText } from './problem.ts'
import type { Axle, AxleId, ChosenRanges, Corner, Plan } from './schema.ts'

function axle(path: Path, given: Axle, report: Report): void {
  if (given.suspension === 'solid')
    for (const spacing of ['shockSpacing', 'stopSpacing'] as const)
      if (given[spacing] === undefined)
        report([...path, spacing], 'nothing', 'the distance from left to right: a solid axle needs it')
}

function unique(path: Path, key: 'id', items: readonly { readonly id: string }[], report: Report): void {
  items.forEach((item, i) => {
    if (items.findIndex(other => other.id === item.id) < i)
      report([...path, i, key], `“${item.id}” again`, 'an id no other entry has')
  })
}

/** What may be changed on an axle: nothing from more to less. */
function ranges(id: AxleId, given: ChosenRanges, report: Report): void {
  for (const key of ['spacers', 'charges', 'oils', 'shims'] as const) {
    const span = given[key]
    if (span !== null && span.to < span.from)
      report(['ranges', id, key, 'to'], String(span.to), { side: 'least', limit: span.from, of: 'where it begins' })
  }
}

/**
 * What is wrong with a plan whose single values are all in range: values that contradict each other or no car can have.
 * Empty when it makes sense; then every model built from it gives finite results.
 * @param known whether a corner, being the same object as one that made sense, need not be looked at again
 */
export function nonsense(plan: Plan, known: (corner: Corner) => boolean = () => false): Problem[] {
  const problems: Problem[] = []
  const report: Report = (path, found, wanted, unit = '') =>
    problems.push(
      typeof wanted === 'string'
        ? { path: pathText(path), found, wanted }
        : {
            path: pathText(path),
            found,
            wanted: boundWords(wanted, limit => `${short(limit)}${unit}`),
            bound: wanted,
          },
    )
  unique(['setups'], 'id', plan.setups, report)
  unique(['loads'], 'id', plan.loads, report)
  unique(['terrains'], 'id', plan.terrains, report)
  unique(['runs'], 'id', plan.runs ?? [], report)
  for (const id of ['front', 'rear'] as const) {
    const chosen = plan.ranges?.[id]
    if (chosen !== undefined) ranges(id, chosen, report)
  }
  plan.setups.forEach((setup, i) => {
    unique(['setups', i, 'axles'], 'id', setup.axles, report)
    setup.axles.forEach((given, j) => {
      const path = ['setups', i, 'axles', j]
      axle(path, given, report)
      if (known(given.corner)) return
      const before = problems.length
      cornerSense([...path, 'corner'], given.corner, report)
      if (problems.length === before) travelEnds([...path, 'corner'], given.corner, report)
    })
  })
  return problems
}
