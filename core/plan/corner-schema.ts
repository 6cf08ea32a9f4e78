import { z } from 'zod'
import { force, mass, name, number, place, pressure, rate, size, volume } from './values.ts'

/** One corner of the plan file. SI units throughout: m, kg, N, N/m, Pa (gauge), m³, s. */

export const pointSchema = z.tuple([place, place, place])

const curveSchema = z.array(z.strictObject({ velocity: number(0, 100), force })).max(200)

const linkageSchema = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('ratio'), shock: number(1e-3, 20), stop: number(1e-3, 20) }),
  z.strictObject({
    kind: z.literal('table'),
    rows: z
      .array(z.strictObject({ wheel: place, shock: place, stop: place }))
      .min(3)
      .max(500),
  }),
  z.strictObject({
    kind: z.literal('arm'),
    pivot: z.tuple([pointSchema, pointSchema]),
    wheel: pointSchema,
    shockLower: pointSchema,
    shockUpper: pointSchema,
    stopPad: pointSchema,
    stopAxis: pointSchema,
  }),
  z.strictObject({
    kind: z.literal('axle'),
    shockLower: pointSchema,
    shockUpper: pointSchema,
    stopPad: pointSchema,
    stopAxis: pointSchema,
  }),
])

const shockSchema = z.strictObject({
  stroke: size,
  showing: number(0, 20),
  shaftDiameter: number(1e-4, 1),
  gas: z.strictObject({ charge: pressure, volume }).nullable(),
  compression: curveSchema,
  rebound: curveSchema,
})

const springsSchema = z.strictObject({
  springs: z
    .array(z.strictObject({ name, rate, freeLength: size, solidLength: size }))
    .min(1)
    .max(3),
  preload: place,
  crossover: z.strictObject({ gap: number(0, 20) }).nullable(),
})

const hydraulicSchema = z.strictObject({
  kind: z.literal('hydraulic'),
  stroke: size,
  gap: place,
  shaftDiameter: number(1e-4, 1),
  charge: pressure,
  gasVolume: volume,
  compression: curveSchema.optional(),
  rebound: curveSchema.optional(),
  body: z.strictObject({ bore: number(1e-4, 2), ratedPressure: number(1, 2e9).optional() }).optional(),
  spacer: z.strictObject({ length: size, outerDiameter: number(1e-4, 1), wall: number(1e-5, 0.5) }).optional(),
})

const elastomerSchema = z.strictObject({
  kind: z.literal('elastomer'),
  gap: place,
  curve: z
    .array(z.strictObject({ deflection: number(0, 20), force }))
    .min(2)
    .max(200),
})

export const cornerSchema = z.strictObject({
  cornerMass: number(0.1, 50_000),
  unsprungMass: mass,
  linkage: linkageSchema,
  shock: shockSchema,
  springs: springsSchema,
  stop: z.discriminatedUnion('kind', [hydraulicSchema, elastomerSchema]).nullable(),
  tire: z.strictObject({ radius: number(1e-3, 5), rate, damping: number(0, 1e7) }),
  clearance: z.strictObject({ bump: number(0, 20).nullable(), droop: number(0, 20).nullable() }),
})
