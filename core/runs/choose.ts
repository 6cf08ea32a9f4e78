import type { AxleId } from '../plan/schema.ts'
import type { ChannelChoice } from './channel.ts'
import { lengthUnit, timeUnit } from './column-units.ts'
import type { Column, TimeSource } from './reading.ts'

/** Words by which a head names an axle, and a side of the car. */
const AXLE_WORDS: Readonly<Record<AxleId, readonly string[]>> = {
  front: ['front', 'fl', 'fr', 'lf', 'rf'],
  rear: ['rear', 'rl', 'rr', 'lr'],
}
const SIDE_WORDS = { left: ['left', 'fl', 'lf', 'rl', 'lr'], right: ['right', 'fr', 'rf', 'rr'] } as const

/** Units of a sensor's own reading. */
const READINGS: ReadonlySet<string> = new Set(['v', 'mv', 'volt', 'volts', 'counts', '%', '-'])

const words = ({ name }: Column): string[] => name.toLowerCase().split(/[^a-z]+/)
const hasWord = (column: Column, list: readonly string[]): boolean => words(column).some(word => list.includes(word))

/** Whether a head names an axle or a travel: then it is no time, however it rises. */
export const namesTravel = (column: Column): boolean =>
  hasWord(column, [...AXLE_WORDS.front, ...AXLE_WORDS.rear, 'wheel', 'shock', 'travel']) ||
  lengthUnit(column.unit) !== null

/** The column a person means by its name, or by its place from 1; from 0, null when there is none. */
export function columnNamed(columns: readonly Column[], name: string): number | null {
  const wanted = name.trim().toLowerCase()
  const exact = columns.findIndex(column => column.name.toLowerCase() === wanted)
  if (exact >= 0) return exact
  const place = /^\d+$/.test(wanted) ? Number(wanted) - 1 : -1
  return place >= 0 && place < columns.length ? place : null
}

/** Whether a column can hold a travel: by its unit, where it names one. */
const mayBeTravel = ({ unit }: Column): boolean => unit === null || lengthUnit(unit) !== null || READINGS.has(unit)

/** Columns named for an axle; where none is named for any, the only column besides the time. */
function axleColumns(columns: readonly Column[], axle: AxleId, time: TimeSource): number[] {
  const others = columns.flatMap((column, i) =>
    (time.kind !== 'rate' && time.column === i) || timeUnit(column.unit) !== null || !mayBeTravel(column) ? [] : [i],
  )
  const namedFor = (id: AxleId) => others.filter(i => hasWord(columns[i]!, AXLE_WORDS[id]))
  const mine = namedFor(axle)
  if (mine.length > 0) return mine
  return others.length === 1 && namedFor(axle === 'front' ? 'rear' : 'front').length === 0 ? others : []
}

/** What a head says it measures: the wheel where it says so, else the shaft. */
export const measuredBy = (column: Column): 'shaft' | 'wheel' => (words(column).includes('wheel') ? 'wheel' : 'shaft')

/** The side a head names; `both` where it names none. */
const sideOf = (column: Column): ChannelChoice['side'] =>
  hasWord(column, SIDE_WORDS.left) ? 'left' : hasWord(column, SIDE_WORDS.right) ? 'right' : 'both'

/** Before a reading's meaning is known its scale is 0: such a channel cannot be laid. */
export const UNKNOWN_SCALE = 0

/** Channels by what the heads say, for the axles of a plan in their order. Each column is taken once. */
export function guessChannels(
  columns: readonly Column[],
  time: TimeSource,
  axles: readonly AxleId[],
): readonly ChannelChoice[] {
  const taken = new Set<number>()
  return axles.flatMap(axle =>
    axleColumns(columns, axle, time).flatMap((place): ChannelChoice[] => {
      if (taken.has(place)) return []
      taken.add(place)
      const column = columns[place]!
      return [
        {
          column: place,
          axle,
          side: sideOf(column),
          measures: measuredBy(column),
          calibration: { scale: lengthUnit(column.unit) ?? UNKNOWN_SCALE, offset: 0 },
          rideHeightAt: null,
          fullDroopAt: null,
          lowPass: null,
        },
      ]
    }),
  )
}
