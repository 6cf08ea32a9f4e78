import { unitSymbol } from '../../../core/runs/column-units.ts'
import type { PreviewRow } from '../../../core/runs/preview.ts'
import type { Reading } from '../../../core/runs/reading.ts'
import type { Looked } from '../../workers/run-messages.ts'

const FAULTS: Readonly<Record<NonNullable<PreviewRow['fault']>, string>> = {
  cells: 'not taken: another number of cells',
  time: 'not taken: no time',
  repeated: 'not taken: the time of the row before',
  backward: 'earlier than the row before',
}

const shownTime = (time: number): string => Number(time.toFixed(6)).toString()

interface Props {
  readonly looked: Looked
  readonly reading: Reading
  /** Columns that are taken, from 0. */
  readonly taken: readonly number[]
}

/** The beginning of a file as it is read now: heads, first rows, and which of them cannot be taken. */
export function PreviewTable({ looked: { preview, size }, reading, taken }: Props) {
  const { head, columns, rows } = preview
  const timeColumn = reading.time.kind === 'rate' ? null : reading.time.column
  const kind = (place: number): string | undefined =>
    place === timeColumn ? 'time' : taken.includes(place) ? 'taken' : undefined
  // Nobody has said yet how fast they follow each other: that is no fault of theirs.
  const untimed = reading.time.kind === 'rate' && rows.length > 0 && rows.every(({ fault }) => fault === 'time')
  const wrong = rows.filter(({ fault }) => fault !== null).length
  if (rows.length + head.length === 0) return null
  return (
    <>
      <p className="quiet">
        The first {rows.length} rows of {size < 1e6 ? `${Math.ceil(size / 1e3)} kB` : `${(size / 1e6).toFixed(1)} MB`},{' '}
        {untimed
          ? 'none of them with a time yet'
          : wrong === 0
            ? 'all of them taken'
            : `${wrong} of them not as they should be`}
        .
      </p>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must scroll by the keys as well */}
      <section className="preview-scroll" aria-label="First rows of the file" tabIndex={0}>
        <table className="preview">
          <thead>
            {head.slice(-8).map((cells, i) => (
              // biome-ignore lint/suspicious/noArrayIndexKey: lines have no other name than their place
              <tr key={i} className="head-line">
                <th scope="row">{head.length - Math.min(8, head.length) + i + 1}</th>
                <td colSpan={columns.length + 2}>{cells.join(' · ')}</td>
              </tr>
            ))}
            <tr>
              <th scope="col">line</th>
              <th scope="col" className="time">
                time, s
              </th>
              {columns.map(({ name, unit }, place) => (
                // biome-ignore lint/suspicious/noArrayIndexKey: two columns may have one name
                <th key={place} scope="col" className={kind(place)}>
                  {name}
                  {unit === null ? null : <span> {unitSymbol(unit)}</span>}
                </th>
              ))}
              <th scope="col">
                <span className="spoken">what is wrong</span>
              </th>
            </tr>
          </thead>
          <tbody>
            {rows.map(({ line, cells, time, numbers, fault }) => (
              <tr key={line} className={fault === null || untimed ? undefined : 'bad'}>
                <th scope="row">{line}</th>
                <td className="time">{time === null ? '' : shownTime(time)}</td>
                {columns.map((_, place) => (
                  <td
                    // biome-ignore lint/suspicious/noArrayIndexKey: two columns may have one name
                    key={place}
                    className={
                      numbers[place] == null && taken.includes(place) && fault === null ? 'missing' : kind(place)
                    }
                  >
                    {cells[place] === undefined || cells[place].trim() === '' ? '–' : cells[place]}
                  </td>
                ))}
                <td className="why">{fault === null || untimed ? '' : FAULTS[fault]}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </section>
    </>
  )
}
