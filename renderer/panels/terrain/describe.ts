import type { Terrain } from '../../../core/plan/schema.ts'
import type { Course } from '../../../core/ride/terrain.ts'
import { FOOT } from '../../../core/units/constants.ts'
import { formatMeasure } from '../../../core/units/format.ts'
import type { System } from '../../../core/units/quantity.ts'

/** What a terrain is called on the page. */
export const terrainName = ({ name }: Course): string =>
  name === undefined || name === '' ? 'Terrain without a name' : name

/** Lengths of ground: feet or metres once they are long. */
function ground(length: number, system: System): string {
  const long = (value: number, digits: number): string =>
    value.toLocaleString('en-US', { maximumFractionDigits: value < 1000 ? digits : 0 })
  if (system === 'metric') return length < 1 ? `${Math.round(length * 1000)} mm` : `${long(length, 2)} m`
  return length < 4 * FOOT ? formatMeasure(length, 'length', system, { unit: true }) : `${long(length / FOOT, 1)} ft`
}

/** A terrain in a few words: `20 ft apart, 10 in high, 35 mph, 8 in a row`. */
export function describeTerrain(terrain: Course, system: System): string {
  const speed = (value: number): string => formatMeasure(value, 'speed', system, { unit: true, digits: 0 })
  switch (terrain.kind) {
    case 'whoops':
      return `${ground(terrain.spacing, system)} apart, ${ground(terrain.height, system)} high, ${speed(terrain.speed)}, ${terrain.count} in a row`
    case 'landing':
      return `a drop of ${ground(terrain.drop, system)}`
    case 'ledge':
      return `${ground(terrain.height, system)} high, ${ground(terrain.length, system)} long, ${speed(terrain.speed)}`
    case 'rough':
      return `class ${terrain.isoClass}, ${speed(terrain.speed)}, ${Number(terrain.duration.toFixed(1))} s`
    case 'measured': {
      const { distance, height } = terrain.profile
      const most = height.reduce((a, b) => Math.max(a, b))
      const least = height.reduce((a, b) => Math.min(a, b))
      return `${ground(distance.at(-1)! - distance[0]!, system)} long, ${ground(most - least, system)} from lowest to highest`
    }
  }
}

/** What each kind is for, where somebody adds the first one. */
export const TERRAIN_KINDS: readonly {
  readonly kind: Terrain['kind']
  readonly name: string
  readonly says: string
}[] = [
  { kind: 'whoops', name: 'Whoops', says: 'a row of waves: how often it is on the stop, and whether it packs down' },
  { kind: 'landing', name: 'Landing', says: 'a drop onto level ground: how high is too high' },
  { kind: 'ledge', name: 'Ledge', says: 'one step up and down again: a square hit' },
  { kind: 'rough', name: 'Rough road', says: 'a road of a stated class: a long day at speed' },
]
