import type { Point } from '../plan/schema.ts'

/** Vectors of three, in whatever unit both have. */

export const minus = (a: Point, b: Point): Point => [a[0] - b[0], a[1] - b[1], a[2] - b[2]]
export const plus = (a: Point, b: Point): Point => [a[0] + b[0], a[1] + b[1], a[2] + b[2]]
export const times = (a: Point, factor: number): Point => [a[0] * factor, a[1] * factor, a[2] * factor]
export const dot = (a: Point, b: Point): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2]
export const size = (a: Point): number => Math.hypot(a[0], a[1], a[2])
export const cross = (a: Point, b: Point): Point => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
]
