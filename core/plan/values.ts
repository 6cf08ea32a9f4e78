import { z } from 'zod'

/** Single values of a plan, with the ranges they may have. These keep out what no car has and what arithmetic cannot carry, not what is unusual. */

export const number = (least: number, most: number) => z.number().min(least).max(most)
export const id = z
  .string()
  .min(1)
  .max(64)
  .regex(/^[A-Za-z0-9][A-Za-z0-9_-]*$/, 'letters, digits, - and _')
export const name = z.string().max(200)

/** A length that must be there, m. */
export const size = number(1e-5, 20)
/** A place or a signed distance, m. */
export const place = number(-20, 20)
export const mass = number(0, 50_000)
export const force = number(0, 1e8)
/** Gauge pressure, Pa. */
export const pressure = number(0, 2e8)
export const volume = number(1e-9, 1)
export const rate = number(1, 1e9)
