import { z } from 'zod'
import type { Kept, Shelf } from '../changes/shelf.ts'
import { type Bound, boundWords } from './bound.ts'
import { readable, readJson, unbearable } from './json-text.ts'
import { problemsOf } from './parse.ts'
import type { Problem } from './problem.ts'
import { type Corner, type Plan, planSchema } from './schema.ts'
import { nonsense } from './sense.ts'

/** The shelf file, version 1: stops, springs and tubes somebody keeps to hand. SI units, as in the plan file; a part reads as it does there. */

const cornerShape = planSchema.shape.setups.element.shape.axles.element.shape.corner.shape
const [hydraulic, elastomer] = cornerShape.stop.unwrap().options
const id = planSchema.shape.setups.element.shape.id
const name = planSchema.shape.setups.element.shape.name

const kept = <Part extends z.ZodType>(part: Part) =>
  z.array(z.strictObject({ id, name, generic: z.boolean(), part })).max(1000)

const shelfSchema = z.strictObject({
  format: z.literal('stopgap-shelf'),
  version: z.literal(1),
  stops: kept(
    z.discriminatedUnion('kind', [hydraulic.omit({ gap: true, spacer: true }), elastomer.omit({ gap: true })]),
  ),
  springs: kept(cornerShape.springs.shape.springs.element),
  tubes: kept(z.strictObject({ outerDiameter: z.number().min(1e-4).max(1), wall: z.number().min(1e-5).max(0.5) })),
})

/** A corner nothing is wrong with, to put parts into. */
const NEUTRAL: Corner = {
  cornerMass: 400,
  unsprungMass: 50,
  linkage: { kind: 'ratio', shock: 1, stop: 1 },
  shock: { stroke: 0.3, showing: 0.15, shaftDiameter: 0.02, gas: null, compression: [], rebound: [] },
  springs: {
    springs: [{ name: '', rate: 30_000, freeLength: 0.5, solidLength: 0.1 }],
    preload: 0,
    crossover: null,
  },
  stop: null,
  tire: { radius: 0.4, rate: 200_000, damping: 400 },
  clearance: { bump: null, droop: null },
}

const planOf = (corner: Corner): Plan => ({
  format: 'stopgap-plan',
  version: 1,
  title: '',
  notes: '',
  units: 'inch',
  vehicle: { name: '', wheelbase: 2.5, cgHeight: 0.7, rollAxisHeight: 0.2 },
  setups: [
    { id: 'part', name: '', axles: [{ id: 'front', suspension: 'independent', track: 1.5, antiRollRate: 0, corner }] },
  ],
  loads: [],
  terrains: [],
})

/** What a plan with this part would be refused for, at the part's own path; the corner around it has nothing of its own to be refused for. */
function partProblems(corner: Corner, inPlan: string, path: string): Problem[] {
  const at = `setups[0].axles[0].corner.${inPlan}`
  return nonsense(planOf(corner))
    .filter(problem => problem.path.startsWith(at))
    .map(problem => ({ ...problem, path: `${path}${problem.path.slice(at.length)}` }))
}

function repeated(list: keyof Shelf, parts: readonly Kept<unknown>[]): Problem[] {
  return parts.flatMap((part, i) =>
    parts.findIndex(other => other.id === part.id) < i
      ? [{ path: `${list}[${i}].id`, found: `“${part.id}” again`, wanted: 'an id no other entry has' }]
      : [],
  )
}

const half = (outerDiameter: number): Bound => ({
  side: 'below',
  limit: outerDiameter / 2,
  of: 'half the outer diameter',
})

function contradictions({ stops, springs, tubes }: Shelf): Problem[] {
  return [
    ...repeated('stops', stops),
    ...repeated('springs', springs),
    ...repeated('tubes', tubes),
    ...stops.flatMap(({ part }, i) =>
      partProblems({ ...NEUTRAL, stop: { ...part, gap: 0.05 } }, 'stop', `stops[${i}].part`),
    ),
    ...springs.flatMap(({ part }, i) =>
      partProblems(
        { ...NEUTRAL, springs: { ...NEUTRAL.springs, springs: [part] } },
        'springs.springs[0]',
        `springs[${i}].part`,
      ),
    ),
    ...tubes.flatMap(({ part: { outerDiameter, wall } }, i) =>
      wall * 2 >= outerDiameter
        ? [
            {
              path: `tubes[${i}].part.wall`,
              found: `${wall} m`,
              wanted: boundWords(half(outerDiameter), limit => `${Number(limit.toPrecision(6))} m`),
              bound: half(outerDiameter),
            },
          ]
        : [],
    ),
  ]
}

export type ParsedShelf =
  | { readonly ok: true; readonly shelf: Shelf }
  | { readonly ok: false; readonly problems: readonly Problem[] }

/** From anything to a shelf, or to the list of what is wrong with it, each at its path. Never throws. */
export function parseShelf(value: unknown): ParsedShelf {
  const hopeless = unbearable(value)
  if (hopeless !== null) return { ok: false, problems: [hopeless] }
  const checked = shelfSchema.safeParse(value)
  if (!checked.success)
    return {
      ok: false,
      problems: readable(checked.error.issues.flatMap(issue => problemsOf(issue, value, 'the shelf file'))),
    }
  const { stops, springs, tubes } = checked.data
  const shelf: Shelf = { stops, springs, tubes }
  const problems = contradictions(shelf)
  return problems.length === 0 ? { ok: true, shelf } : { ok: false, problems: readable(problems) }
}

/** As `parseShelf`, from the text of a file. */
export function readShelf(text: string): ParsedShelf {
  const read = readJson(text, 'a shelf saved by Stopgap')
  return read.ok ? parseShelf(read.value) : { ok: false, problems: [read.problem] }
}

/** The text of a shelf's file; `readShelf` of it gives the shelf back. */
export const formatShelf = (shelf: Shelf): string =>
  `${JSON.stringify({ format: 'stopgap-shelf', version: 1, ...shelf }, null, 2)}\n`
