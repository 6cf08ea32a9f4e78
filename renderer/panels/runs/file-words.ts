import type { TableFaults } from '../../../core/runs/table-import.ts'
import type { Found } from '../../state/recording.ts'

const FAULTS: Readonly<Record<keyof TableFaults, string>> = {
  unreadable: 'unreadable',
  repeated: 'at the time of the row before',
  backward: 'earlier than the row before',
  missing: 'values missing',
}

/** A count a person can read: 600 000. */
const counted = (count: number): string => String(count).replace(/\B(?=(\d{3})+$)/g, '\u00a0')

/** What was not as it should be in a file, with the line each first came on; empty where all was. */
const faultWords = ({ faults, firstLines }: Pick<Found, 'faults' | 'firstLines'>): string =>
  (Object.keys(FAULTS) as (keyof TableFaults)[])
    .flatMap(kind => {
      const line = firstLines[kind]
      return faults[kind] === 0
        ? []
        : [`${counted(faults[kind])} ${FAULTS[kind]}${line === null ? '' : `, first on line ${counted(line)}`}`]
    })
    .join('; ')

/** What a file came to once it was read. */
export function foundWords(found: Found): string {
  const faults = faultWords(found)
  const clock = found.startedAt === null ? '' : ` It begins at ${found.startedAt}.`
  return `${counted(found.rows)} rows, from ${found.start.toFixed(2)} to ${found.end.toFixed(2)} s.${clock} ${faults === '' ? 'All of them were taken.' : `Not as they should be: ${faults}.`}`
}
