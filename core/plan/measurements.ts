import type { Axle } from './schema.ts'

/** Lists that are taken as one measurement, by the key that holds them. */
const ONE_MEASUREMENT = new Set(['rows', 'pivot', 'curve', 'compression', 'rebound'])

function collect(value: unknown, path: string, into: string[]): void {
  if (typeof value === 'number') into.push(path)
  else if (
    Array.isArray(value) &&
    (ONE_MEASUREMENT.has(path.split('.').at(-1)!) || value.every(item => typeof item === 'number'))
  ) {
    if (value.length > 0) into.push(path)
  } else if (typeof value === 'object' && value !== null)
    for (const [key, inner] of Object.entries(value)) collect(inner, path === '' ? key : `${path}.${key}`, into)
}

/**
 * The path of every measured value of an axle, relative to it: `track`, `corner.stop.gap`, `corner.springs.springs.0.rate`.
 * A point, a table and a curve are one measurement each. The paths of `axle.assumed` are among these.
 */
export function measurementPaths(axle: Axle): string[] {
  const { assumed: _, ...measured } = axle
  const paths: string[] = []
  collect(measured, '', paths)
  return paths
}
