import { measurementName } from '../tolerance/measurement-names.ts'
import type { Salvaged } from './salvage.ts'
import type { Loss, Path } from './salvage-shape.ts'
import type { Plan } from './schema.ts'

const PARTS: Readonly<Record<string, string>> = {
  corner: 'all of the corner',
  'corner.linkage': 'the linkage',
  'corner.shock': 'the shock',
  'corner.shock.gas': 'the gas of the shock',
  'corner.shock.compression': 'the compression curve of the shock',
  'corner.shock.rebound': 'the rebound curve of the shock',
  'corner.springs': 'the springs',
  'corner.springs.springs': 'the springs',
  'corner.springs.crossover': 'the crossover',
  'corner.stop': 'the stop',
  'corner.tire': 'the tire',
  'corner.tire.radius': 'tire radius',
  'corner.tire.damping': 'tire damping',
  'corner.clearance': 'the clearances',
  antiRollRate: 'anti-roll rate',
  shockSpacing: 'shock spacing',
  stopSpacing: 'stop spacing',
}

const TOP: Readonly<Record<string, string>> = {
  units: 'the units',
  setups: 'the setups',
  loads: 'loads',
  terrains: 'courses',
  targets: 'the targets',
  ranges: 'what may be changed',
  tolerances: 'the tolerances',
  runs: 'recorded runs',
  'vehicle.cgHeight': 'height of the center of gravity',
  'vehicle.rollAxisHeight': 'height of the roll axis',
}
const ONE: Readonly<Record<string, string>> = { loads: 'a load', terrains: 'a course', runs: 'a recorded run' }

/** What was lost, as people call it. */
function nameOf(path: Path, plan: Plan): string {
  const [top, setupAt, , axleAt] = path
  if (top !== 'setups') {
    const single = path.length > 1 ? ONE[String(top)] : undefined
    return single ?? TOP[path.join('.')] ?? TOP[String(top)] ?? path.join(', ')
  }
  const setup = plan.setups[Number(setupAt)]
  const called = setup === undefined || setup.name.trim() === '' ? 'a setup' : `“${setup.name}”`
  if (path.length < 3) return 'a setup, or the rest of one'
  if (path.length === 3) return `${String(path[2])} of ${called}`
  const axle = setup?.axles[Number(axleAt)]
  const inside = path.slice(4).join('.')
  const springs = axle?.corner.springs.springs.map(({ name }) => name) ?? []
  if (inside === '' || axle === undefined) return `an axle of ${called}, or the rest of one`
  const what = partName(inside, springs)
  return `${what} (${called}, ${axle.id})`
}

/** A part by its own name, or by that of the part it is in. */
function partName(inside: string, springs: readonly string[]): string {
  const known = PARTS[inside] ?? measurementName(inside, springs)
  if (known !== inside) return known
  const around = inside.split('.').slice(0, -1).join('.')
  if (around === '') return 'something'
  const outer = partName(around, springs)
  return outer.startsWith('something') ? outer : `something of ${outer}`
}

const counted = (losses: readonly Loss[], plan: Plan): string[] => [
  ...new Set(losses.map(({ path }) => nameOf(path, plan))),
]

/** At most so many, the others counted. */
const most = 12
const listed = (names: readonly string[]): string =>
  names.length <= most ? names.join('; ') : `${names.slice(0, most).join('; ')}; and ${names.length - most} more`

/** What became of a damaged plan, in sentences: what stands in for what was lost, and what was left out. */
export function salvageWords({ plan, losses }: Salvaged): readonly string[] {
  if (losses.length === 0) return ['As far as can be told, nothing was lost.']
  const usual = counted(
    losses.filter(loss => loss.usual),
    plan,
  )
  const gone = counted(
    losses.filter(loss => !loss.usual),
    plan,
  )
  return [
    ...(usual.length === 0
      ? []
      : [
          `Other values stand in for what was lost, those of another setup or usual ones, marked as assumed: ${listed(usual)}.`,
        ]),
    ...(gone.length === 0 ? [] : [`Left out, as it could not be read: ${listed(gone)}.`]),
  ]
}
