import type { DateOrder } from './reading.ts'

const DATE = /^(\d{1,4})([-./])(\d{1,2})\2(\d{1,4})(?:[T ,]+|$)/i
const TIME = /^(?:(\d{1,2}):)?(\d{1,2}):(\d{1,2})(?:[.,:](\d*))?$/
const ZONE = /\s*(?:z|utc|[+-]\d{2}:?\d{2})$/i
const HALF = /\s*([ap])\.?m\.?$/i

/** Julian day number of 1 January 2000, so that seconds keep all their digits. */
const DAY_NOUGHT = 2_451_545

/** Days of a date from that one: its Julian day number (H. F. Fliegel and T. C. Van Flandern, Communications of the ACM 11 (1968), 657, from memory). */
function dayNumber(year: number, month: number, day: number): number {
  const early = Math.trunc((month - 14) / 12)
  return (
    day -
    DAY_NOUGHT -
    32075 +
    Math.trunc((1461 * (year + 4800 + early)) / 4) +
    Math.trunc((367 * (month - 2 - 12 * early)) / 12) -
    Math.trunc((3 * Math.trunc((year + 4900 + early) / 100)) / 4)
  )
}

function days(match: RegExpExecArray, order: DateOrder): number {
  const [a, b, c] = [match[1]!, match[3]!, match[4]!].map(Number) as [number, number, number]
  const [year, month, day] = order === 'year first' ? [a, b, c] : order === 'day first' ? [c, b, a] : [c, a, b]
  return month >= 1 && month <= 12 && day >= 1 && day <= 31 ? dayNumber(year, month, day) : Number.NaN
}

/** Whether a cell holds a calendar date and nothing else. */
export const isDate = (cell: string): boolean => {
  const plain = cell.trim()
  return DATE.exec(plain)?.[0].length === plain.length
}

/** Whether a cell that holds a time of day names its date as well. */
export const hasDate = (cell: string): boolean => DATE.test(cell.trim())

/**
 * A time of day in s, `7:05:12.25`, `19:05:12,25` or `05:12.25` in minutes and seconds, with the days since 1 January 2000 before it where there is
 * a date; NaN where there is none. Zones are passed over: they are the same all through a run.
 */
export function clockIn(cell: string, order: DateOrder): number {
  let text = cell.trim()
  const date = DATE.exec(text)
  if (date !== null) text = text.slice(date[0].length)
  const half = HALF.exec(text)
  text = text.slice(0, half?.index ?? text.length).replace(ZONE, '')
  const time = TIME.exec(text)
  if (time === null) return Number.NaN
  const [, hours = '0', minutes, seconds, part = ''] = time
  if (Number(minutes) > 59 || Number(seconds) > 59 || Number(hours) > 24) return Number.NaN
  const hour = half === null ? Number(hours) : (Number(hours) % 12) + (half[1]!.toLowerCase() === 'p' ? 12 : 0)
  const ofDay = hour * 3600 + Number(minutes) * 60 + Number(`${Number(seconds)}.${part === '' ? 0 : part}`)
  return date === null ? ofDay : days(date, order) * 86_400 + ofDay
}

/** In which order dates stand, from some of them: null when they leave it open, or there are none. */
export function dateOrder(cells: readonly string[]): DateOrder | null {
  let order: DateOrder | null = null
  for (const cell of cells) {
    const date = DATE.exec(cell.trim())
    if (date === null) continue
    if (date[1]!.length === 4) return 'year first'
    if (Number(date[1]) > 12) order = 'day first'
    else if (Number(date[3]) > 12) order = 'month first'
    else if (date[2] === '.') order ??= 'day first'
  }
  return order
}
