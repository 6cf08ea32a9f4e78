import type { AxleId } from '../plan/schema.ts'
import { type Column, RUN_UNITS, type TableShape } from './shape.ts'

/** Words by which a head names an axle. */
const AXLE_WORDS: Readonly<Record<AxleId, readonly string[]>> = {
  front: ['front', 'fl', 'fr', 'lf', 'rf'],
  rear: ['rear', 'rl', 'rr', 'lr'],
}

const words = (name: string): string[] => name.toLowerCase().split(/[^a-z]+/)

/** The column a person means by its name, from 0; null when there is none. */
export function columnNamed({ columns }: TableShape, name: string): number | null {
  const wanted = name.trim().toLowerCase()
  const exact = columns.findIndex(column => column.name.toLowerCase() === wanted)
  if (exact >= 0) return exact
  const place = /^\d+$/.test(wanted) ? Number(wanted) - 1 : -1
  return place >= 0 && place < columns.length ? place : null
}

const isTime = ({ name, unit }: Column): boolean =>
  ['time', 't', 'seconds', 'zeit', 'temps'].includes(words(name)[0]!) || unit === 's' || unit === 'ms'

/** The column that holds the time: by its name or unit, else the first of a table without a head; null when none says so. */
export function timeColumn({ columns, headerRows }: TableShape): number | null {
  const found = columns.findIndex(isTime)
  return found >= 0 ? found : headerRows === 0 ? 0 : null
}

/** Columns named for an axle; where none is named for any, the only column besides the time. */
export function axleColumns({ columns }: TableShape, axle: AxleId, time: number): number[] {
  const others = columns.flatMap((_, i) => (i === time ? [] : [i]))
  const namedFor = (id: AxleId) =>
    others.filter(i => words(columns[i]!.name).some(word => AXLE_WORDS[id].includes(word)))
  const mine = namedFor(axle)
  if (mine.length > 0) return mine
  return others.length === 1 && namedFor(axle === 'front' ? 'rear' : 'front').length === 0 ? others : []
}

/** What a head says it measures: the wheel where it says so, else the shaft. */
export const measuredBy = ({ name }: Column): 'shaft' | 'wheel' => (words(name).includes('wheel') ? 'wheel' : 'shaft')

const LENGTHS = new Set(['m', 'cm', 'mm', 'in', 'inch'])
const TIMES = new Set(['s', 'sec', 'ms', 'us', 'µs', 'min'])

/** Size of a unit of length, m, or of time, s; null for another. */
export const lengthUnit = (unit: string | null): number | null =>
  unit !== null && LENGTHS.has(unit) ? RUN_UNITS[unit]! : null
export const timeUnit = (unit: string | null): number | null =>
  unit !== null && TIMES.has(unit) ? RUN_UNITS[unit]! : null
