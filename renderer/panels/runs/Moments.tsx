import type { Plan } from '../../../core/plan/schema.ts'
import type { ChannelChoice } from '../../../core/runs/channel.ts'
import { shownTime } from '../../charts/terrain/time-axis.ts'
import type { Recording } from '../../state/recording.ts'
import type { Recordings } from '../../state/recordings.ts'

interface Props {
  readonly recordings: Recordings
  readonly run: Recording
  /** Place of the channel shown. */
  readonly at: number
  readonly plan: Plan
  /** The moment shown, s of the run's own time. */
  readonly time: number
}

type Moment = 'rideHeightAt' | 'fullDroopAt'

const SCALED: Readonly<Record<string, string>> = {
  'nothing at ride height': 'Nothing was recorded at the moment picked as ride height.',
  'nothing at full droop': 'Nothing was recorded at the moment picked as full droop.',
  'no difference': 'The reading is the same at both moments: pick others.',
}

/** Zero and sign: the moments at which the car stood at ride height and hung at full droop, picked where the trace is looked at. */
export function Moments({ recordings, run, at, plan, time }: Props) {
  const channel = run.channels[at]
  if (channel === undefined) return null
  const { rideHeightAt, fullDroopAt } = channel
  const put = (part: Partial<Pick<ChannelChoice, Moment>>): void =>
    recordings.setChannels(
      run.id,
      run.channels.map(each => ({ ...each, ...part })),
    )
  const scale = async (): Promise<void> => {
    if (rideHeightAt === null || fullDroopAt === null) return
    const asked = recordings.client.ask<'scale'>({
      kind: 'scale',
      run: run.id,
      place: run.taken.indexOf(channel.column),
      measures: channel.measures,
      rideHeightAt,
      fullDroopAt,
      over: { plan, setup: run.driven, axle: channel.axle },
    })
    const end = await asked.done
    if (end.kind !== 'answer') return
    const { answer } = end
    if (!answer.ok) return recordings.change(run.id, { trouble: SCALED[answer.why] ?? answer.why })
    recordings.setChannels(
      run.id,
      run.channels.map((each, i) => (i === at ? { ...each, calibration: answer.calibration } : each)),
    )
  }
  const pick = (moment: Moment, words: string, picked: number | null) => (
    <span className="moment">
      <button type="button" className="step" onClick={() => put({ [moment]: time })}>
        {words} here
      </button>
      {picked === null ? null : (
        <>
          {' '}
          now {shownTime(picked)} s{' '}
          <button
            type="button"
            className="step"
            aria-label={`Pick no ${words.toLowerCase()}`}
            onClick={() => put({ [moment]: null })}
          >
            not
          </button>
        </>
      )}
    </span>
  )
  return (
    <div className="moments">
      <span>
        {rideHeightAt !== null
          ? 'Zero where it stood.'
          : channel.calibration.offset === 0
            ? 'Zero as recorded.'
            : 'Zero as entered or remembered.'}
      </span>
      {pick('rideHeightAt', 'Ride height', rideHeightAt)}
      {rideHeightAt === null ? null : pick('fullDroopAt', 'Full droop', fullDroopAt)}
      {rideHeightAt === null || fullDroopAt === null ? null : (
        <button
          type="button"
          className="step"
          title="So that both are as far apart as the plan has them"
          onClick={() => void scale()}
        >
          take the scale from both
        </button>
      )}
    </div>
  )
}
