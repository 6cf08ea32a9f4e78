import type { UnitSystem } from '../../core/plan/schema.ts'
import { type MeasuredCourse, measuredTime } from '../../core/ride/measured-road.ts'
import { readRoad } from '../../core/ride/road-text.ts'
import { MILE_PER_HOUR } from '../../core/units/constants.ts'
import { formatMeasure } from '../../core/units/format.ts'
import { onceFor } from './once-for.ts'
import type { Store } from './store.ts'
import { type Watched, watched } from './watched.ts'

/** A road somebody brought from a file, for as long as the window is open: a plan does not hold one. */
export type OwnRoad = Watched<MeasuredCourse | null>

/** The one road of a window. */
export const ownRoadOf: (store: Store) => OwnRoad = onceFor(() => watched<MeasuredCourse | null>(null))

/** Of the view's name for it: no terrain of a plan is called so. */
export const OWN_ROAD = 'road from a file'

/** How fast a road is driven until somebody says so, m/s. */
const USUAL_SPEED = 25 * MILE_PER_HOUR
/** Slowest and fastest a road is driven, m/s, and the longest drive of one, s: as in a plan, and as a window can follow. */
const SPEEDS = { least: 0.01, most: 200 } as const
const LONGEST_TIME = 600
/** Largest file, bytes, and most places of a road. */
const LARGEST = 8e6
const MOST_PLACES = 200_000

type Brought = { readonly ok: true; readonly road: MeasuredCourse } | { readonly ok: false; readonly why: string }

/** Why a road cannot be driven at a speed; null when it can. */
export function whyNotDriven(
  profile: MeasuredCourse['profile'],
  speed: number,
  units: UnitSystem = 'metric',
): string | null {
  if (!(speed >= SPEEDS.least && speed <= SPEEDS.most))
    return `a road is driven faster than nothing and no faster than ${formatMeasure(SPEEDS.most, 'speed', units, { unit: true })}`
  const time = measuredTime({ profile, speed })
  return time > LONGEST_TIME
    ? `it would take ${Math.round(time)} s at that speed; right would be no more than ${LONGEST_TIME} s: faster, or a shorter road`
    : null
}

/** The road in a file, or why it cannot be used. @param before the road it takes the place of, whose speed it keeps */
export async function bringRoad(file: File, before: MeasuredCourse | null): Promise<Brought> {
  if (file.size > LARGEST) return { ok: false, why: `it is larger than ${LARGEST / 1e6} MB` }
  let text: string
  try {
    text = new TextDecoder('utf-8', { fatal: true }).decode(await file.arrayBuffer())
  } catch (error) {
    return { ok: false, why: error instanceof TypeError ? 'it is not text' : 'it cannot be read' }
  }
  const read = readRoad(text)
  if (!read.ok) return read
  const { profile } = read
  const places = profile.distance.length
  if (places > MOST_PLACES)
    return { ok: false, why: `it has ${places} places; right would be no more than ${MOST_PLACES}` }
  const length = profile.distance.at(-1)! - profile.distance[0]!
  const speed = Math.min(SPEEDS.most, Math.max(before?.speed ?? USUAL_SPEED, length / (LONGEST_TIME / 2)))
  const why = whyNotDriven(profile, speed)
  return why === null
    ? { ok: true, road: { id: OWN_ROAD, name: file.name, kind: 'measured', profile, speed } }
    : { ok: false, why }
}
