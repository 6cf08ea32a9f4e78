import { type ReactNode, useId, useState } from 'react'
import { Switch } from '../../fields/Switch.tsx'
import type { Recording } from '../../state/recording.ts'
import type { Recordings } from '../../state/recordings.ts'
import type { Pace, Playback } from '../terrain/use-playback.ts'
import type { Beside } from './use-beside.ts'
import type { WheelOf } from './wheels.ts'

const PACES = [
  { value: 'real', label: 'Real time' },
  { value: 'slow', label: 'Slow' },
] as const satisfies readonly { value: Pace; label: string }[]

const SIDES = { left: 'Left', right: 'Right', both: 'Both' } as const

interface Props {
  readonly recordings: Recordings
  readonly run: Recording
  /** Channels of the axle shown. */
  readonly wheels: readonly WheelOf[]
  readonly at: number
  readonly onWheel: (at: number) => void
  readonly beside: Beside
  readonly playback: Playback
  /** Highest cutoff there is for this run, Hz; null while that is not known. */
  readonly highest: number | null
  /** There is nothing to play. */
  readonly still: boolean
  /** Moments of the run that are picked. */
  readonly children: ReactNode
}

/** Which wheel, beside what, filtered how; and going through the run in time. */
export function WheelStrip(props: Props) {
  const { recordings, run, wheels, at, onWheel, beside, playback, highest, still, children } = props
  return (
    <div className="terrain-strip wheel-strip">
      {wheels.length > 1 ? (
        <Switch
          label="Side"
          options={wheels.map(({ at: value, channel }) => ({ value: String(value), label: SIDES[channel.side] }))}
          value={String(at)}
          onChange={value => onWheel(Number(value))}
        />
      ) : null}
      <label>
        beside{' '}
        <select
          className="words terrain-list"
          aria-label="Compared with"
          value={beside.value}
          onChange={event => beside.choose(event.currentTarget.value)}
        >
          {beside.options.map(({ value, label }) => (
            <option key={value} value={value}>
              {label}
            </option>
          ))}
        </select>
      </label>
      <Cutoff recordings={recordings} run={run} highest={highest} />
      {children}
      <div className="terrain-play">
        <Switch label="Pace" options={PACES} value={playback.pace} onChange={playback.setPace} />
        <button type="button" className="chief" disabled={still} onClick={playback.toggle}>
          {playback.playing ? 'Pause' : 'Play'}
        </button>
      </div>
    </div>
  )
}

/** The filter: nothing is taken away unless somebody says from where on. */
function Cutoff({ recordings, run, highest }: Pick<Props, 'recordings' | 'run' | 'highest'>) {
  const id = useId()
  const [typed, setTyped] = useState<string | null>(null)
  const [wrong, setWrong] = useState<string | null>(null)
  const cutoff = run.channels[0]?.lowPass ?? null
  const commit = (): void => {
    if (typed === null) return
    const text = typed
      .trim()
      .replace(',', '.')
      .replace(/\s*hz$/i, '')
    const value = text === '' ? null : Number(text)
    if (value !== null && !(value >= 0.01 && value <= (highest ?? 1e6))) {
      setWrong(
        `a cutoff should be a number of Hz, such as 20${highest === null ? '' : `, and no more than ${highest.toPrecision(3)} for so many rows a second`}; or empty, for no filter`,
      )
      return
    }
    setTyped(null)
    setWrong(null)
    if (value === cutoff) return
    recordings.setChannels(
      run.id,
      run.channels.map(channel => ({ ...channel, lowPass: value })),
    )
  }
  return (
    <span className="cutoff">
      <label htmlFor={id} title="Takes away what is faster and shifts nothing in time">
        low-pass{' '}
      </label>
      <input
        id={id}
        type="text"
        inputMode="decimal"
        autoComplete="off"
        placeholder="none"
        aria-label="Low-pass cutoff, Hz"
        aria-invalid={wrong !== null}
        value={typed ?? (cutoff === null ? '' : String(cutoff))}
        onChange={event => setTyped(event.currentTarget.value)}
        onBlur={commit}
        onKeyDown={event => {
          if (event.key === 'Enter') commit()
          if (event.key !== 'Escape') return
          setTyped(null)
          setWrong(null)
        }}
      />{' '}
      Hz
      {wrong === null ? null : (
        <span className="trouble" role="alert">
          Not changed: {wrong}.
        </span>
      )}
    </span>
  )
}
