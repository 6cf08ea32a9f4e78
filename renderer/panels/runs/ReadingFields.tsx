import { useState } from 'react'
import type { Encoding } from '../../../core/runs/encoding.ts'
import type { Column, Delimiter, LineEnd, Reading, TimeSource } from '../../../core/runs/reading.ts'

const ENCODINGS: Readonly<Record<Encoding, string>> = {
  'utf-8': 'UTF-8',
  'utf-16le': 'UTF-16, little end first',
  'utf-16be': 'UTF-16, big end first',
  'windows-1252': 'Windows-1252 (Latin)',
}
const LINE_ENDS: Readonly<Record<LineEnd, string>> = {
  lf: 'line feed',
  crlf: 'return and line feed',
  cr: 'return',
}
const DELIMITERS: Readonly<Record<Delimiter, string>> = {
  ',': 'commas',
  ';': 'semicolons',
  '\t': 'tabs',
  '|': 'upright bars',
  ' ': 'spaces',
}
const TIME_UNITS: Readonly<Record<string, string>> = { '1': 's', '0.001': 'ms', '0.000001': 'µs', '60': 'min' }
const DATES = { 'year first': 'year first', 'day first': 'day first', 'month first': 'month first' } as const
const BACKWARD = { 'left out': 'is left out', 'goes on': 'goes on after a gap' } as const

interface ChoiceProps<Name extends string> {
  readonly label: string
  readonly value: Name
  readonly options: Readonly<Record<Name, string>>
  readonly onChoose: (name: Name) => void
}

const Choice = <Name extends string>({ label, value, options, onChoose }: ChoiceProps<Name>) => (
  <label className="reading-row">
    <span>{label}</span>
    <select value={value} onChange={event => onChoose(event.currentTarget.value as Name)}>
      {(Object.entries(options) as [Name, string][]).map(([name, text]) => (
        <option key={name} value={name}>
          {text}
        </option>
      ))}
    </select>
  </label>
)

interface NumberProps {
  readonly label: string
  readonly value: number | null
  readonly unit: string
  /** What stands in an empty field; none where it may not be empty. */
  readonly empty?: string
  readonly right: string
  readonly fits: (value: number) => boolean
  readonly onChange: (value: number | null) => void
}

/** A plain number, taken when Enter is pressed or the field is left. A wrong entry says what would be right and changes nothing. */
function PlainNumber({ label, value, unit, empty, right, fits, onChange }: NumberProps) {
  const [typed, setTyped] = useState<string | null>(null)
  const [wrong, setWrong] = useState(false)
  const commit = (): void => {
    if (typed === null) return
    const text = typed.trim().replace(',', '.')
    if (text === '' && empty !== undefined) {
      setTyped(null)
      setWrong(false)
      if (value !== null) onChange(null)
      return
    }
    const next = Number(text)
    if (text === '' || !Number.isFinite(next) || !fits(next)) {
      setWrong(true)
      return
    }
    setTyped(null)
    setWrong(false)
    if (next !== value) onChange(next)
  }
  return (
    <>
      <label className="reading-row">
        <span>{label}</span>
        <span className="reading-number">
          <input
            type="text"
            inputMode="decimal"
            autoComplete="off"
            placeholder={empty}
            aria-invalid={wrong}
            value={typed ?? (value === null ? '' : String(value))}
            onChange={event => setTyped(event.currentTarget.value)}
            onBlur={commit}
            onKeyDown={event => {
              if (event.key === 'Enter') commit()
              if (event.key !== 'Escape') return
              setTyped(null)
              setWrong(false)
            }}
          />
          {unit}
        </span>
      </label>
      {wrong ? (
        <p className="trouble" role="alert">
          Not changed: {right}
        </p>
      ) : null}
    </>
  )
}

interface Props {
  readonly reading: Reading
  readonly columns: readonly Column[]
  readonly onChange: (reading: Reading) => void
  readonly onEncoding: (encoding: Encoding) => void
}

const RATE = 'rate'

function TimeFields({ reading, columns, onChange }: Omit<Props, 'onEncoding'>) {
  const { time } = reading
  const put = (next: TimeSource): void => onChange({ ...reading, time: next })
  const columnsNamed = Object.fromEntries(columns.map(({ name }, i) => [String(i), name]))
  const place = time.kind === 'rate' ? RATE : String(time.column)
  return (
    <>
      <Choice
        label="Time is in"
        value={place}
        options={{ ...columnsNamed, [RATE]: 'no column: even rows' }}
        onChoose={chosen => {
          if (chosen === RATE) put({ kind: 'rate', rowsPerSecond: 0 })
          else if (time.kind === 'clock') put({ ...time, column: Number(chosen) })
          else put({ kind: 'numbers', column: Number(chosen), unit: time.kind === 'numbers' ? time.unit : 1 })
        }}
      />
      {time.kind === 'rate' ? (
        <PlainNumber
          label="Recorded at"
          value={time.rowsPerSecond === 0 ? null : time.rowsPerSecond}
          unit="rows/s"
          right="rows a second, such as 500."
          fits={rate => rate >= 0.1 && rate <= 1e6}
          onChange={rate => rate !== null && put({ kind: 'rate', rowsPerSecond: rate })}
        />
      ) : (
        <Choice
          label="written as"
          value={time.kind === 'clock' ? 'clock' : String(time.unit)}
          options={{
            ...TIME_UNITS,
            ...(time.kind === 'numbers' && TIME_UNITS[String(time.unit)] === undefined
              ? { [String(time.unit)]: `${time.unit} s` }
              : {}),
            clock: 'time of day',
          }}
          onChoose={chosen =>
            put(
              chosen === 'clock'
                ? { kind: 'clock', column: time.column, dates: 'day first' }
                : { kind: 'numbers', column: time.column, unit: Number(chosen) },
            )
          }
        />
      )}
      {time.kind === 'clock' ? (
        <Choice label="Dates have the" value={time.dates} options={DATES} onChoose={dates => put({ ...time, dates })} />
      ) : null}
    </>
  )
}

/** How a table is written, as it was told from the file; each of it can be put right. */
export function ReadingFields({ reading, columns, onChange, onEncoding }: Props) {
  const { headerRows, unitsRow, longestPause } = reading
  const lines = Object.fromEntries(Array.from({ length: headerRows }, (_, i) => [String(i), `line ${i + 1}`]))
  return (
    <>
      <Choice label="Letters are" value={reading.encoding} options={ENCODINGS} onChoose={onEncoding} />
      <Choice
        label="Lines end with"
        value={reading.lineEnd}
        options={LINE_ENDS}
        onChoose={lineEnd => onChange({ ...reading, lineEnd })}
      />
      <Choice
        label="Cells are parted by"
        value={reading.delimiter}
        options={DELIMITERS}
        onChoose={delimiter => onChange({ ...reading, delimiter })}
      />
      <Choice
        label="Decimal mark"
        value={reading.decimalComma ? 'comma' : 'point'}
        options={{ point: 'point', comma: 'comma' }}
        onChoose={mark => onChange({ ...reading, decimalComma: mark === 'comma' })}
      />
      <PlainNumber
        label="Lines before the rows"
        value={headerRows}
        unit=""
        right="a whole number, 0 to 250."
        fits={count => Number.isInteger(count) && count >= 0 && count <= 250}
        onChange={count =>
          count !== null &&
          onChange({ ...reading, headerRows: count, unitsRow: unitsRow !== null && unitsRow < count ? unitsRow : null })
        }
      />
      <Choice
        label="Units are in"
        value={unitsRow === null ? 'none' : String(unitsRow)}
        options={{ none: 'the heads, or nowhere', ...lines }}
        onChoose={line => onChange({ ...reading, unitsRow: line === 'none' ? null : Number(line) })}
      />
      <TimeFields reading={reading} columns={columns} onChange={onChange} />
      <Choice
        label="An earlier time"
        value={reading.backward}
        options={BACKWARD}
        onChoose={backward => onChange({ ...reading, backward })}
      />
      <PlainNumber
        label="A gap is longer than"
        value={longestPause}
        unit="s"
        empty="5 steps"
        right="seconds, more than 0; or empty, for five of the usual steps."
        fits={pause => pause > 0}
        onChange={pause => onChange({ ...reading, longestPause: pause })}
      />
    </>
  )
}
