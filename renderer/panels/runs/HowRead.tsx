import type { AxleId } from '../../../core/plan/schema.ts'
import type { System } from '../../../core/units/quantity.ts'
import { isRead, type Recording, wantedColumns, whyNotRead } from '../../state/recording.ts'
import type { Recordings } from '../../state/recordings.ts'
import { ChannelTable } from './ChannelTable.tsx'
import { foundWords } from './file-words.ts'
import { PreviewTable } from './PreviewTable.tsx'
import { ReadingFields } from './ReadingFields.tsx'
import { RunNames } from './RunNames.tsx'

interface Props {
  readonly recordings: Recordings
  readonly run: Recording
  readonly axles: readonly AxleId[]
  readonly system: System
  /** The file was asked to be read to its end. */
  readonly onRead: () => void
}

/** How a recording is read: what was told from it, what that comes to, and all of it to be put right. */
export function HowRead({ recordings, run, axles, system, onRead }: Props) {
  const { id, looked, reading, columns, channels, found, work, recipe, file } = run
  const timeColumn = reading === null || reading.time.kind === 'rate' ? null : reading.time.column
  const why = file === null ? null : whyNotRead(run)
  const read = isRead(run)
  const doubts = looked?.detected.doubts ?? []
  return (
    <div className="how-read">
      <section className="reading-fields" aria-label="How the table is written">
        <h3>How the table is written</h3>
        {looked === null || reading === null ? (
          <p>
            {file === null
              ? 'This run was kept beside the plan: its readings are as they were in the file, and what they mean can still be put right.'
              : 'Looking at its beginning.'}
          </p>
        ) : (
          <>
            <p className="quiet">
              {recipe === null
                ? 'Told from the file. Put right what is not so: it is remembered for files of this kind.'
                : `Read as “${recipe}” was, a file of the same kind.`}{' '}
              <button type="button" className="step" onClick={() => void recordings.tellAgain(id, null, axles)}>
                Tell it from the file {recipe === null ? 'again' : 'instead'}
              </button>
            </p>
            <ReadingFields
              // Another way of reading may leave what was typed without its meaning.
              key={`${reading.delimiter} ${reading.time.kind} ${reading.headerRows}`}
              reading={reading}
              columns={columns}
              onChange={next => void recordings.correct(id, next, axles)}
              onEncoding={encoding => void recordings.tellAgain(id, encoding, axles)}
            />
          </>
        )}
      </section>
      <div className="what-read">
        <RunNames recordings={recordings} run={run} />
        {(looked?.size === 0 ? [] : doubts).map(({ about, says }) => (
          <p key={about} className="doubt">
            <b>Look here</b> {says}
          </p>
        ))}
        <h3>Which wheel is which column</h3>
        {columns.length === 0 ? null : (
          <ChannelTable
            // A two-point calibration belongs to its file.
            key={`${id} ${columns.length} ${system}`}
            columns={columns}
            timeColumn={timeColumn}
            channels={channels}
            axles={axles}
            system={system}
            onChange={next => recordings.setChannels(id, next)}
          />
        )}
        {file === null ? null : (
          <p className="read-now">
            <button
              type="button"
              className="chief"
              disabled={why !== null || work !== null}
              onClick={() => {
                onRead()
                void recordings.readWhole(id)
              }}
            >
              {read ? 'Read it again' : 'Read the run'}
            </button>{' '}
            <span role="status">
              {why ?? (read && found !== null ? foundWords(found) : 'The file is only read, never written to.')}
            </span>
          </p>
        )}
        {looked === null || reading === null ? null : (
          <PreviewTable looked={looked} reading={reading} taken={wantedColumns(channels)} />
        )}
      </div>
    </div>
  )
}
