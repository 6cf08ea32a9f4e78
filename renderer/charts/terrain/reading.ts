import { formatMeasure } from '../../../core/units/format.ts'
import { onTape, spokenPosition } from '../text/length-spans.ts'
import { momentAt, type RideMoment } from './moment.ts'
import { hasStop, type RiddenSetup, type TerrainView } from './terrain-scene.ts'
import { shownTime } from './time-axis.ts'

/** A wheel this close to an end of its travel is at it, m. */
const AT_END = 5e-4

/** What holds the car up just then, in words. */
export function momentWords({ wheel, stopForce, inAir }: RideMoment, { model }: RiddenSetup): string {
  const words =
    wheel >= model.bump - AT_END
      ? ['at full bump']
      : stopForce > 0
        ? ['on the stop']
        : wheel <= model.droop + AT_END
          ? ['at full droop']
          : []
  if (inAir) words.push('off the ground')
  return words.length === 0 ? 'on its springs' : words.join(', ')
}

/** The moment of a setup, where there is a ride to look at. */
export const momentOf = (setup: RiddenSetup | null, time: number): RideMoment | null =>
  setup?.ride?.trace == null ? null : momentAt(setup.ride.trace, time)

export interface ReadingRow {
  readonly name: string
  readonly shown: string
  readonly other: string | null
}

/** What the trace reads at a time: one row for each kind of number. */
export function readingRows({ shown, other, system }: TerrainView, time: number): ReadingRow[] {
  const here = momentOf(shown, time)
  if (here === null) return []
  const there = momentOf(other, time)
  const row = (name: string, say: (moment: RideMoment, setup: RiddenSetup) => string): ReadingRow => ({
    name,
    shown: say(here, shown),
    other: there === null || other === null ? null : say(there, other),
  })
  return [
    row('wheel', ({ wheel }, { model }) =>
      formatMeasure(onTape(Math.min(model.bump, Math.max(model.droop, wheel)), system), 'length', system, {
        sign: true,
        unit: true,
        digits: system === 'metric' ? 0 : undefined,
      }),
    ),
    row('force', ({ suspensionForce }) => force(suspensionForce, system)),
    ...(hasStop({ shown, other }) ? [row('stop', ({ stopForce }) => force(stopForce, system))] : []),
  ]
}

/** To the ten pounds or newtons it can be trusted to. */
const force = (value: number, system: TerrainView['system']): string => {
  const text = formatMeasure(value, 'force', system, { unit: true })
  return text.replace(/\d(?=\D*$)/, '0')
}

/** A moment in one sentence, for someone who hears the page. */
export function spokenMoment({ shown, system }: TerrainView, time: number): string {
  const moment = momentOf(shown, time)
  const at = `${shownTime(time)} seconds`
  return moment === null ? at : `${at}: wheel ${spokenPosition(moment.wheel, system)}, ${momentWords(moment, shown)}`
}
