import { numberIn } from './cell.ts'
import { namesTravel } from './choose.ts'
import { clockIn, dateOrder, hasDate, isDate } from './clock.ts'
import { timeUnit } from './column-units.ts'
import type { Column, TimeSource } from './reading.ts'

/** Something that was guessed, as a sentence for whoever knows better. */
export interface Doubt {
  readonly about: 'table' | 'time' | 'time unit' | 'dates'
  readonly says: string
}

/** Whether a cell holds a time of day, with its date or without. */
export const isClock = (cell: string): boolean => !isDate(cell) && !Number.isNaN(clockIn(cell, 'year first'))
/** The same where the order of its date is not known yet. */
const looksLikeClock = (cell: string): boolean => !isDate(cell) && (hasDate(cell) || isClock(cell))

const TIME_NAMES: ReadonlySet<string> = new Set(['time', 't', 'seconds', 'zeit', 'temps', 'timestamp'])
const COUNT_NAMES: ReadonlySet<string> = new Set(['sample', 'samples', 'index', 'row', 'count', 'n', 'no'])
const firstWord = ({ name }: Column): string => name.toLowerCase().split(/[^a-z]+/)[0]!

/** Of a time's steps so few fall that nine times as many rise, whatever its faults. */
const RISING = 9

function rises(values: readonly number[]): boolean {
  let [up, down] = [0, 0]
  for (const [i, value] of values.entries()) {
    if (i > 0 && value > values[i - 1]!) up += 1
    else if (i > 0 && value < values[i - 1]!) down += 1
  }
  return up > RISING * down
}

/** No travel logger is as slow as this, s a row: such times are in a smaller unit. */
const SLOWEST = 0.9

interface TimeUnit {
  readonly size: number
  readonly name: string
}
const SECONDS: TimeUnit = { size: 1, name: 'seconds' }
const MILLISECONDS: TimeUnit = { size: 1e-3, name: 'milliseconds' }
const MICROSECONDS: TimeUnit = { size: 1e-6, name: 'microseconds' }

/** The unit of times that name none: that in which the usual step is one a logger takes. */
function likelyUnit(times: readonly number[]): TimeUnit {
  const steps = times
    .flatMap((at, i) => (i > 0 && at > times[i - 1]! ? [at - times[i - 1]!] : []))
    .sort((a, b) => a - b)
  const usual = steps[Math.floor(steps.length / 2)] ?? 0
  return usual < SLOWEST ? SECONDS : usual < SLOWEST * 1e3 ? MILLISECONDS : MICROSECONDS
}

/** Where the time of a table's rows comes from. @param body its first rows, each as wide as there are columns */
export function timeSourceOf(
  columns: readonly Column[],
  body: readonly (readonly string[])[],
  decimalComma: boolean,
): { readonly time: TimeSource; readonly doubts: readonly Doubt[] } {
  const first = (place: number): string => body[0]?.[place] ?? ''
  const numbers = (place: number): number[] => body.map(row => numberIn(row[place]!, decimalComma))
  const called = columns.findIndex(
    (column, i) => (TIME_NAMES.has(firstWord(column)) || timeUnit(column.unit) !== null) && !isDate(first(i)),
  )
  const clock = columns.findIndex((_, i) => looksLikeClock(first(i)))
  const rising = columns.findIndex(
    (column, i) => !COUNT_NAMES.has(firstWord(column)) && !namesTravel(column) && rises(numbers(i)),
  )
  const column = [called, clock, rising].find(place => place >= 0)
  if (column === undefined) {
    const says = 'No column tells the time: give the rows a second it was recorded at, or choose the column.'
    return { time: { kind: 'rate', rowsPerSecond: 0 }, doubts: [{ about: 'time', says }] }
  }
  const { name, unit } = columns[column]!
  if (looksLikeClock(first(column))) {
    const known = dateOrder(body.map(row => row[column]!))
    const says = `The dates of “${name}” may name the day or the month first; the day is taken.`
    return {
      time: { kind: 'clock', column, dates: known ?? 'day first' },
      doubts: known === null && hasDate(first(column)) ? [{ about: 'dates', says }] : [],
    }
  }
  const stated = timeUnit(unit)
  const likely = likelyUnit(numbers(column))
  const byRise = `No column is named as the time: “${name}” rises from row to row and is taken.`
  const bySteps = `The unit of “${name}” is not in the file: by its steps it is taken as ${likely.name}.`
  return {
    time: { kind: 'numbers', column, unit: stated ?? likely.size },
    doubts: [
      ...(called < 0 ? [{ about: 'time', says: byRise } as const] : []),
      ...(stated === null ? [{ about: 'time unit', says: bySteps } as const] : []),
    ],
  }
}
