import { numberIn } from './cell.ts'
import { clockIn, hasDate } from './clock.ts'
import type { Reading } from './reading.ts'

export type RowFault = 'cells' | 'time' | 'repeated' | 'backward'

const HALF_DAY = 43_200
const DAY = 86_400
/** Where a clock was set back the run goes on after so many of its steps: more than a pause that still joins rows. */
const APART = 10
/** A step before there was any, s. */
const FIRST_STEP = 0.1

/** Times below this, s, are rounded to the billionth: far below what any logger tells, and what a file said in decimals stays that. */
const ROUNDED = 4e6
const rounded = (time: number): number => (Math.abs(time) < ROUNDED ? Math.round(time * 1e9) / 1e9 : time)

/** How many of a unit make a second, where that is a whole number: dividing by it keeps decimals what they are. Else null. */
function wholePerSecond(unit: number): number | null {
  const whole = Math.round(1 / unit)
  return whole > 0 && Math.abs(whole * unit - 1) < 1e-9 ? whole : null
}

/** Gives each row its time, and says which rows have none that can be used. Takes them in the order of the file. */
export class RowReader {
  /** Of the row last taken, s; where it is not after the one before, its own time all the same. */
  time = 0
  /** Places where the clock was set back and the run went on. */
  setBack = 0
  /** The first time of day in the file, as it stands there. */
  startedAt: string | null = null
  private last = -Infinity
  private step = 0
  private shift = 0
  private base: number | null = null
  private index = -1
  private readonly perSecond: number | null

  constructor(
    private readonly reading: Reading,
    private readonly width: number,
  ) {
    this.perSecond = reading.time.kind === 'numbers' ? wholePerSecond(reading.time.unit) : null
  }

  number(cell: string): number {
    return numberIn(cell, this.reading.decimalComma)
  }

  /** null: the row is taken, and `time` is its time. */
  take(cells: readonly string[]): RowFault | null {
    this.index += 1
    if (cells.length !== this.width) return 'cells'
    const time = this.timeIn(cells)
    if (!Number.isFinite(time)) return 'time'
    this.time = rounded(time + this.shift)
    if (this.time <= this.last) {
      if (this.time === this.last) return 'repeated'
      if (this.reading.backward === 'left out') return 'backward'
      this.setBack += 1
      const pause = Math.max(APART * (this.step > 0 ? this.step : FIRST_STEP), 2 * (this.reading.longestPause ?? 0))
      this.shift += this.last - this.time + pause
      this.time = rounded(this.last + pause)
    } else if (this.last > -Infinity) this.step = this.time - this.last
    this.last = this.time
    return null
  }

  private timeIn(cells: readonly string[]): number {
    const { time } = this.reading
    if (time.kind === 'rate') return this.index / time.rowsPerSecond
    const cell = cells[time.column]
    if (cell === undefined) return Number.NaN
    if (time.kind === 'numbers') {
      const value = this.number(cell)
      return this.perSecond === null ? value * time.unit : value / this.perSecond
    }
    const clock = clockIn(cell, time.dates)
    if (Number.isNaN(clock)) return clock
    if (this.base === null) {
      this.base = clock
      this.startedAt = cell.trim()
    }
    const since = clock - this.base
    // Past midnight a time of day without its date begins anew.
    if (!hasDate(cell) && since + this.shift < this.last - HALF_DAY) {
      this.base -= DAY
      return since + DAY
    }
    return since
  }
}
