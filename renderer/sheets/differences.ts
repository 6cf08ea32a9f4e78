import type { Axle } from '../../core/plan/schema.ts'
import { measuredOf, valueAt } from '../../core/tolerance/measured.ts'
import { measurementName } from '../../core/tolerance/measurement-names.ts'
import type { Quantity } from '../../core/units/quantity.ts'

/** Whether two values of a plan are the same throughout. */
export const same = (one: unknown, other: unknown): boolean => JSON.stringify(one) === JSON.stringify(other)

/** One measurement in two setups; null where a setup has none. SI. */
export interface Row {
  /** Inside the axle: `corner.stop.gap`. */
  readonly path: string
  readonly name: string
  readonly quantity: Quantity
  readonly before: number | null
  readonly after: number | null
  readonly changed: boolean
  /** How far off the value done may be, either way. */
  readonly tolerance: number
}

/** What a shop measures or sets on a corner, in the order it is worked through; the rest is on the sheet only where it changes. */
const ALWAYS = [
  'corner.shock.showing',
  'corner.stop.gap',
  'corner.stop.stroke',
  'corner.stop.charge',
  'corner.stop.gasVolume',
  'corner.springs.preload',
  'corner.springs.crossover.gap',
  'corner.shock.gas.charge',
]

const QUANTITIES: readonly (readonly [RegExp, Quantity])[] = [
  [/(charge|ratedPressure)$/, 'pressure'],
  [/(gasVolume|gas\.volume)$/, 'volume'],
  [/springs\.\d+\.rate$|tire\.rate$/, 'rate'],
  [/[mM]ass$/, 'mass'],
  [/antiRollRate$/, 'rollRate'],
  [/tire\.damping$/, 'damping'],
  [/linkage\.(shock|stop)$/, 'ratio'],
]

/** Names of values the travel budget does not rest on. */
const MORE_NAMES: Readonly<Record<string, string>> = {
  'corner.stop.spacer.length': 'spacer inside the stop',
  'corner.stop.body.bore': 'bore of the stop body',
  'corner.stop.body.ratedPressure': 'rating of the stop body',
  'corner.tire.radius': 'tire radius',
  'corner.tire.damping': 'tire damping',
  antiRollRate: 'anti-roll bar',
  track: 'track',
  shockSpacing: 'shock to shock',
  stopSpacing: 'stop to stop',
}

/** Not measured with a tape, and said where the tube is. */
const ON_THE_CUT_LIST = ['corner.stop.spacer.outerDiameter', 'corner.stop.spacer.wall']

const quantityOf = (path: string): Quantity => QUANTITIES.find(([shape]) => shape.test(path))?.[1] ?? 'length'

function paths(value: unknown, path: string, into: Set<string>): Set<string> {
  if (typeof value === 'number') into.add(path)
  else if (typeof value === 'object' && value !== null && !Array.isArray(value))
    for (const [key, inner] of Object.entries(value)) paths(inner, path === '' ? key : `${path}.${key}`, into)
  return into
}

/** Single values of an axle, springs by their place in the pack. */
function singles(axle: Axle): Set<string> {
  const found = paths(axle, '', new Set())
  axle.corner.springs.springs.forEach((spring, i) => {
    paths(spring, `corner.springs.springs.${i}`, found)
  })
  return found
}

/** What a shop looks at first, then everything else that differs. Tables, points and curves are named by `othersChanged`. */
export function rows(before: Axle, after: Axle): Row[] {
  const tolerances = new Map(measuredOf({ ...after, assumed: [] }).map(({ path, halfWidth }) => [path, halfWidth]))
  const springs = after.corner.springs.springs.map(({ name }) => name)
  const all = new Set([...ALWAYS, ...singles(after), ...singles(before)])
  return [...all].flatMap(path => {
    const [was, is] = [before, after].map(axle => valueAt(axle, path))
    const [from, to] = [was, is].map(value => (typeof value === 'number' ? value : null))
    const changed = from !== to
    if ((from === null && to === null) || ON_THE_CUT_LIST.includes(path) || (!changed && !ALWAYS.includes(path)))
      return []
    return [
      {
        path,
        name: MORE_NAMES[path] ?? measurementName(path, springs),
        quantity: quantityOf(path),
        before: from ?? null,
        after: to ?? null,
        changed,
        tolerance: tolerances.get(path) ?? 0,
      },
    ]
  })
}

/** Parts that differ in more than single values. */
export function othersChanged(before: Axle, after: Axle): string[] {
  const [was, is] = [before.corner, after.corner]
  const named: readonly (readonly [string, unknown, unknown])[] = [
    ['shock compression damping', was.shock.compression, is.shock.compression],
    ['shock rebound damping', was.shock.rebound, is.shock.rebound],
    ['the linkage', was.linkage, is.linkage],
    [
      'stop damping',
      was.stop?.kind === 'hydraulic' ? [was.stop.compression, was.stop.rebound] : null,
      is.stop?.kind === 'hydraulic' ? [is.stop.compression, is.stop.rebound] : null,
    ],
    [
      'the stop’s own curve',
      was.stop?.kind === 'elastomer' ? was.stop.curve : null,
      is.stop?.kind === 'elastomer' ? is.stop.curve : null,
    ],
  ]
  return named.filter(([, from, to]) => !same(from, to)).map(([name]) => name)
}
