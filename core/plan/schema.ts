import { z } from 'zod'
import { cornerSchema, type pointSchema } from './corner-schema.ts'
import { id, name, number, place, size } from './values.ts'

/**
 * The plan file, version 1: shapes and ranges of single values. SI units throughout: m, kg, N, N/m, Pa (gauge), m³, s.
 * What one value says about another (showing against stroke, and so on) is in sense.ts and corner-sense.ts.
 */

/** Values taken on trust until somebody measures them: paths inside the object that holds the list, such as `corner.unsprungMass`. */
const assumed = z.array(z.string().min(1).max(200)).max(200).optional()

const axleSchema = z.strictObject({
  id: z.enum(['front', 'rear']),
  suspension: z.enum(['independent', 'solid']),
  track: size,
  antiRollRate: number(0, 1e8),
  shockSpacing: size.optional(),
  stopSpacing: size.optional(),
  corner: cornerSchema,
  assumed,
})

/** The setup another was made from, which may have been removed since, and what was done, each change in words. */
const madeFrom = z.strictObject({ setup: id, changes: z.array(z.string().min(1).max(300)).max(100) }).optional()

const setupSchema = z.strictObject({ id, name, axles: z.array(axleSchema).min(1).max(2), madeFrom })

/** What every load has; `assumed`: its size is taken on trust until somebody weighs or measures it. */
const loadHead = { id, name, assumed: z.literal(true).optional() }

const loadSchema = z.discriminatedUnion('kind', [
  z.strictObject({
    ...loadHead,
    kind: z.literal('payload'),
    masses: z.strictObject({ front: number(-50_000, 50_000).optional(), rear: number(-50_000, 50_000).optional() }),
  }),
  z.strictObject({ ...loadHead, kind: z.literal('cornering'), lateral: number(-100, 100) }),
  z.strictObject({ ...loadHead, kind: z.literal('braking'), deceleration: number(-100, 100) }),
  z.strictObject({ ...loadHead, kind: z.literal('terrain'), amplitude: number(0, 20) }),
])

const terrainSchema = z.discriminatedUnion('kind', [
  z.strictObject({
    id,
    name,
    kind: z.literal('whoops'),
    spacing: number(0.01, 1000),
    height: number(0, 20),
    speed: number(0.01, 200),
    count: z.int().min(1).max(1000),
  }),
  z.strictObject({ id, name, kind: z.literal('landing'), drop: number(0, 100) }),
  z.strictObject({
    id,
    name,
    kind: z.literal('rough'),
    isoClass: z.enum(['A', 'B', 'C', 'D', 'E', 'F', 'G', 'H']),
    speed: number(0.01, 200),
    duration: number(0.1, 3600),
    seed: z.int().min(0).max(0xffff_ffff),
  }),
  z.strictObject({
    id,
    name,
    kind: z.literal('ledge'),
    height: number(0, 20),
    length: number(0.001, 1000),
    speed: number(0.01, 200),
  }),
])

const targetsSchema = z.strictObject({
  coiloverShare: number(0, 1).optional(),
  coiloverTravel: number(0, 20).optional(),
  landingDrop: number(0, 100).optional(),
  shockLeft: number(0, 20).optional(),
  stopPressure: number(0, 2e9).optional(),
})

/** Values from one to another by a step, SI. */
const spanSchema = z.strictObject({ from: number(0, 1e9), to: number(0, 1e9), step: number(1e-12, 1e9) })

/**
 * What may be changed on an axle where changes are looked for, as somebody chose it last; null: left as it is. Stops and springs by their ids
 * on the shelf, which is kept apart from plans: one that is not there is passed over.
 */
const rangesSchema = z.strictObject({
  spacers: spanSchema.nullable(),
  charges: spanSchema.nullable(),
  oils: spanSchema.nullable(),
  shims: spanSchema.nullable(),
  stops: z.array(id).max(1000),
  springs: z.array(id).max(1000),
  preload: z.boolean(),
})

const MEASURED_PATH = new RegExp(
  '^((front|rear)(\\.[A-Za-z0-9]+)+|vehicle\\.(wheelbase|cgHeight|rollAxisHeight)|' +
    'loads\\.[A-Za-z0-9][A-Za-z0-9_-]*\\.(masses\\.(front|rear)|lateral|deceleration|amplitude))$',
)

/**
 * How far off measured values may be, where somebody knows better than the usual: the half-width either side of the value, in its own SI
 * unit, by its path behind the axle's id: `front.corner.stop.gap`; of the car and its loads `vehicle.cgHeight`, `loads.turn.lateral`. It
 * holds for that measurement in every setup.
 */
const tolerancesSchema = z.strictObject({
  version: z.literal(1),
  values: z.record(
    z.string().max(200).regex(MEASURED_PATH, 'the path of a measured value, such as front.corner.stop.gap'),
    number(0, 1e9),
  ),
})

/** A part of a path that every system can have: no sign that means something to one, no point or space at its ends, none that leads up. */
const RUN_PART = '[^\\\\/:*?"<>|\\u0000-\\u001f .](?:[^\\\\/:*?"<>|\\u0000-\\u001f]*[^\\\\/:*?"<>|\\u0000-\\u001f .])?'
const RUN_PATH = new RegExp(`^${RUN_PART}(?:/${RUN_PART})*$`)

/**
 * A recorded run kept beside the plan, in a file of its own: its path from the plan's folder, folders parted by /, never out of that folder;
 * and the SHA-256 of what the file held.
 */
const runSchema = z.strictObject({
  id,
  name,
  /** The setup that was driven, which may have been removed since. */
  setup: id,
  file: z.string().max(1000).regex(RUN_PATH, 'a path from the plan’s folder, such as before.stopgap-run'),
  digest: z.string().regex(/^[0-9a-f]{64}$/, '64 digits of a SHA-256'),
})

export const planSchema = z.strictObject({
  format: z.literal('stopgap-plan'),
  version: z.literal(1),
  title: name,
  notes: z.string().max(100_000),
  units: z.enum(['inch', 'metric']),
  vehicle: z.strictObject({
    name,
    wheelbase: size,
    cgHeight: number(0, 20),
    rollAxisHeight: place,
    assumed,
  }),
  setups: z.array(setupSchema).min(1).max(50),
  loads: z.array(loadSchema).max(100),
  terrains: z.array(terrainSchema).max(100),
  targets: targetsSchema.optional(),
  ranges: z.strictObject({ front: rangesSchema.optional(), rear: rangesSchema.optional() }).optional(),
  tolerances: tolerancesSchema.optional(),
  runs: z.array(runSchema).max(200).optional(),
})

export type Plan = z.infer<typeof planSchema>
export type Vehicle = Plan['vehicle']
export type Setup = Plan['setups'][number]
export type Axle = Setup['axles'][number]
export type AxleId = Axle['id']
export type Corner = Axle['corner']
export type Linkage = Corner['linkage']
export type ArmLinkage = Extract<Linkage, { kind: 'arm' }>
export type AxleLinkage = Extract<Linkage, { kind: 'axle' }>
export type TableLinkage = Extract<Linkage, { kind: 'table' }>
export type RatioLinkage = Extract<Linkage, { kind: 'ratio' }>
export type Point = z.infer<typeof pointSchema>
export type Shock = Corner['shock']
export type Springs = Corner['springs']
export type Stop = NonNullable<Corner['stop']>
export type HydraulicStop = Extract<Stop, { kind: 'hydraulic' }>
export type Curve = Shock['compression']
export type Load = Plan['loads'][number]
export type Terrain = Plan['terrains'][number]
export type Tolerances = NonNullable<Plan['tolerances']>
/** Values from one to another by a step, SI. */
export type Span = z.infer<typeof spanSchema>
/** What may be changed on an axle where changes are looked for. */
export type ChosenRanges = z.infer<typeof rangesSchema>
export type PlanRun = NonNullable<Plan['runs']>[number]
export type Targets = NonNullable<Plan['targets']>
export type UnitSystem = Plan['units']
