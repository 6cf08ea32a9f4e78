import type { ValueAndSlope } from './roots.ts'

/** Straight lines between points. */
export interface Polyline {
  readonly x: readonly number[]
  readonly y: readonly number[]
  /** Value and slope at x: at a point the slope of the piece on the side asked for; outside the points the nearer end's value and slope 0. */
  at(x: number, side?: 'below' | 'above'): ValueAndSlope
  /** ∫ from the first point to x, exact. */
  integral(x: number): number
}

/** @param x strictly rising, at least one; @param y values there */
export function polyline(x: readonly number[], y: readonly number[]): Polyline {
  const last = x.length - 1
  const at = (place: number, side: 'below' | 'above' = 'above'): ValueAndSlope => {
    if (place < x[0]! || (place === x[0]! && side === 'below')) return { value: y[0]!, slope: 0 }
    if (place > x[last]! || (place === x[last]! && side === 'above')) return { value: y[last]!, slope: 0 }
    let i = 0
    while (side === 'above' ? place >= x[i + 1]! : place > x[i + 1]!) i += 1
    const slope = (y[i + 1]! - y[i]!) / (x[i + 1]! - x[i]!)
    return { value: y[i]! + slope * (place - x[i]!), slope }
  }
  const integral = (place: number): number => {
    let sum = 0
    let i = 0
    for (; i < last && x[i + 1]! <= place; i += 1) sum += ((y[i]! + y[i + 1]!) / 2) * (x[i + 1]! - x[i]!)
    return sum + ((y[i]! + at(place).value) / 2) * (place - x[i]!)
  }
  return { x, y, at, integral }
}
