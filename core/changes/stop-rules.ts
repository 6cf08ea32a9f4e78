import type { Corner, HydraulicStop, Stop } from '../plan/schema.ts'
import type { Say } from '../units/saying.ts'
import { type Change, type Changed, refused } from './change.ts'
import { closedGasVolume, closesAt, isHydraulic, notHydraulic, stopNotes, strokeOf } from './stop-in-corner.ts'

type Of<Kind extends Change['kind']> = Extract<Change, { kind: Kind }>

/** The stop met sooner or later by as much, and closed so; what it is stays. */
function shifted(corner: Corner, by: number, back: Change, say: Say): Changed {
  const { stop } = corner
  if (stop === null) return refused('There is no stop.')
  const gap = stop.gap + by
  if (gap < -strokeOf(stop))
    return refused(
      `The stop would be closed ${say(-gap - strokeOf(stop), 'length')} before ride height is reached: the car could not come down that far.`,
    )
  return {
    ok: true,
    corner: { ...corner, stop: { ...stop, gap } },
    notes: [
      `The gap becomes ${say(gap, 'length')}, and the stop closes ${say(Math.abs(by), 'length')} ${by < 0 ? 'sooner' : 'later'} along its axis.`,
    ],
    back,
  }
}

/** A shim on the pad: gap −t, closed position −t. */
export const padShim = (corner: Corner, { thickness }: Of<'pad shim'>, say: Say): Changed =>
  shifted(corner, -thickness, { kind: 'pad shim', thickness: -thickness }, say)

/** The stop moved along its own axis, positive away from the pad: gap and closed position move with it. */
export const moveStop = (corner: Corner, { away }: Of<'move stop'>, say: Say): Changed =>
  shifted(corner, away, { kind: 'move stop', away: -away }, say)

/** A stop without the gap it is mounted at. */
export type LooseStop = Stop extends infer Each ? (Each extends Stop ? Omit<Each, 'gap'> : never) : never

/**
 * Another stop in the place of the one there, mounted so that it closes where that one did; null where there is none to go by.
 * A longer one is then met sooner.
 */
export function anotherStop({ stop }: Corner, other: LooseStop): Of<'stop'> | null {
  if (stop === null) return null
  const loose = { ...other, gap: 0 }
  return { kind: 'stop', stop: { ...loose, gap: closesAt(stop) - strokeOf(loose) } }
}

/** Another stop, or none; refused where it would be closed below ride height, or its oil leaves its stroke no room. */
export function changeStop(corner: Corner, { stop }: Of<'stop'>, say: Say): Changed {
  if (stop !== null && stop.gap < -strokeOf(stop))
    return refused('The stop would be closed before ride height is reached: the car could not come down that far.')
  if (stop?.kind === 'hydraulic' && closedGasVolume(stop) <= 0)
    return refused('Its shaft pushes aside more than its gas volume: it locks before it closes.')
  const before = corner.stop
  const moves = before === null || stop === null ? 0 : closesAt(stop) - closesAt(before)
  return {
    ok: true,
    corner: { ...corner, stop },
    notes: [
      ...(stop === null ? ['Nothing but metal ends the travel then.'] : []),
      ...(before === null || stop === null
        ? []
        : Math.abs(moves) < 1e-9
          ? ['It closes where the other did.']
          : [`It closes ${say(Math.abs(moves), 'length')} ${moves < 0 ? 'sooner' : 'later'} along its axis.`]),
      ...(stop?.kind === 'hydraulic' ? stopNotes(stop, say) : []),
    ],
    back: { kind: 'stop', stop: before },
  }
}

const withStop = (corner: Corner, stop: HydraulicStop, notes: string[], back: Change, say: Say): Changed => ({
  ok: true,
  corner: { ...corner, stop },
  notes: [...notes, ...stopNotes(stop, say)],
  back,
})

/** Nitrogen at full length, gauge. */
export function changeCharge(corner: Corner, { charge }: Of<'charge'>, say: Say): Changed {
  if (!isHydraulic(corner)) return refused(notHydraulic(corner, 'Only a hydraulic stop has a charge'))
  const { stop } = corner
  if (!(charge >= 0)) return refused('A charge is 0 or more, gauge: a stop is never drawn below the atmosphere.')
  const rated = stop.body?.ratedPressure
  if (rated !== undefined && charge > rated)
    return refused(
      `A charge of ${say(charge, 'pressure')} is above what its body is rated for, ${say(rated, 'pressure')}.`,
    )
  return withStop(corner, { ...stop, charge }, [], { kind: 'charge', charge: stop.charge }, say)
}

/** Oil level: oil put in takes room from the gas, closed and open alike. */
export function changeOil(corner: Corner, { added }: Of<'oil'>, say: Say): Changed {
  if (!isHydraulic(corner)) return refused(notHydraulic(corner, 'Only a hydraulic stop has oil'))
  const { stop } = corner
  const after = { ...stop, gasVolume: stop.gasVolume - added }
  const closed = closedGasVolume(after)
  if (closed <= 0)
    return refused(
      `There is room for less than ${say(closedGasVolume(stop), 'volume')} more oil: beyond that the stop locks before it closes.`,
    )
  const note = `The gas has ${say(after.gasVolume, 'volume')} at full length and ${say(closed, 'volume')} closed.`
  return withStop(corner, after, [note], { kind: 'oil', added: -added }, say)
}
