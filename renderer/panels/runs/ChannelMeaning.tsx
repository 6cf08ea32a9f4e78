import { useState } from 'react'
import { type Calibration, readingOf, twoPoint } from '../../../core/runs/calibration.ts'
import type { ChannelChoice } from '../../../core/runs/channel.ts'
import { fieldText, formatMeasure } from '../../../core/units/format.ts'
import { parseMeasure } from '../../../core/units/parse.ts'
import { fromUnit, type System, unitOf } from '../../../core/units/quantity.ts'

const UNITS = { mm: 1e-3, cm: 1e-2, m: 1, in: 0.0254 } as const
type Unit = keyof typeof UNITS
type Mode = Unit | 'unknown' | 'points'

const modeOf = ({ scale, offset }: Calibration): Mode => {
  if (scale === 0) return 'unknown'
  const unit = (Object.keys(UNITS) as Unit[]).find(each => UNITS[each] === Math.abs(scale))
  return unit !== undefined && offset === 0 ? unit : 'points'
}

/** Readings as a person writes them, in the decimal mark of either kind. */
const numberOf = (text: string): number => (text.trim() === '' ? Number.NaN : Number(text.trim().replace(',', '.')))

interface Props {
  readonly channel: ChannelChoice
  /** Of the column, for the names of the fields. */
  readonly name: string
  readonly system: System
  readonly onChange: (calibration: Calibration) => void
}

/** What a reading means: a unit of length, or two readings and their travel. */
export function ChannelMeaning({ channel, name, system, onChange }: Props) {
  const { calibration } = channel
  const [asked, ask] = useState<Mode | null>(null)
  const mode = asked ?? modeOf(calibration)
  const reversed = calibration.scale < 0
  const choose = (next: Mode): void => {
    ask(next === 'points' ? 'points' : null)
    if (next === 'unknown') onChange({ scale: 0, offset: 0 })
    else if (next !== 'points') onChange({ scale: (reversed ? -1 : 1) * UNITS[next], offset: 0 })
  }
  return (
    <div className="meaning">
      <select
        aria-label={`What ${name} means`}
        value={mode}
        onChange={event => choose(event.currentTarget.value as Mode)}
      >
        <option value="unknown">not said yet</option>
        {Object.keys(UNITS).map(unit => (
          <option key={unit} value={unit}>
            {unit}
          </option>
        ))}
        <option value="points">by two points</option>
      </select>
      {mode === 'points' ? (
        <TwoPoints calibration={calibration} name={name} system={system} onChange={onChange} />
      ) : mode === 'unknown' ? null : (
        <label className="reversed">
          <input
            type="checkbox"
            checked={reversed}
            onChange={() => onChange({ scale: -calibration.scale, offset: 0 })}
          />{' '}
          rises in droop
        </label>
      )}
    </div>
  )
}

interface PointsProps {
  readonly calibration: Calibration
  readonly name: string
  readonly system: System
  readonly onChange: (calibration: Calibration) => void
}

/** Travel of the second point where a line is known and its points are not. */
const SECOND: Readonly<Record<System, number>> = {
  inch: fromUnit(4, 'length', 'inch'),
  metric: 0.1,
}

/** The line through a reading and its travel, and another reading and its; else what would be right. */
function lineThrough(texts: readonly string[], system: System): Calibration | string {
  const readings = [numberOf(texts[0]!), numberOf(texts[2]!)]
  if (readings.some(each => !Number.isFinite(each))) return 'a reading should be a number, such as 2.48.'
  const travels: number[] = []
  for (const text of [texts[1]!, texts[3]!]) {
    const length = parseMeasure(text, 'length', system)
    if (!length.ok) return length.problem
    travels.push(length.value)
  }
  return (
    twoPoint({ reading: readings[0]!, travel: travels[0]! }, { reading: readings[1]!, travel: travels[1]! }) ??
    'two different readings at two different travels are needed.'
  )
}

function TwoPoints({ calibration, name, system, onChange }: PointsProps) {
  const known = calibration.scale !== 0
  const reading = (travel: number): string =>
    known ? Number(readingOf(calibration, travel).toPrecision(6)).toString() : ''
  const travel = (value: number): string => (known ? fieldText(value, 'length', system) : '')
  const [texts, setTexts] = useState<readonly string[]>(() => [
    reading(0),
    travel(0),
    reading(SECOND[system]),
    travel(SECOND[system]),
  ])
  const [wrong, setWrong] = useState<string | null>(null)
  const commit = (): void => {
    if (texts.some(text => text.trim() === '')) return
    const line = lineThrough(texts, system)
    setWrong(typeof line === 'string' ? line : null)
    if (typeof line !== 'string' && (line.scale !== calibration.scale || line.offset !== calibration.offset))
      onChange(line)
  }
  const field = (i: number, label: string) => (
    <input
      type="text"
      inputMode="decimal"
      autoComplete="off"
      aria-label={`${name}, ${label}`}
      aria-invalid={wrong !== null}
      value={texts[i]}
      onChange={event => {
        const { value } = event.currentTarget
        setTexts(before => before.map((text, at) => (at === i ? value : text)))
      }}
      onBlur={commit}
      onKeyDown={event => event.key === 'Enter' && commit()}
    />
  )
  const unit = unitOf('length', system).label
  return (
    <div className="two-points">
      <span>
        {field(0, 'first reading')} is {field(1, 'first travel')} {unit}
      </span>
      <span>
        {field(2, 'second reading')} is {field(3, 'second travel')} {unit}
      </span>
      {wrong === null ? (
        known ? (
          <span className="quiet">
            {' '}
            1 is{' '}
            {formatMeasure(Math.abs(calibration.scale), 'length', system, { unit: true, decimal: true, digits: 3 })}
            {calibration.scale < 0 ? ', rising in droop' : ''}
          </span>
        ) : null
      ) : (
        <p className="trouble" role="alert">
          Not changed: {wrong}
        </p>
      )}
    </div>
  )
}
