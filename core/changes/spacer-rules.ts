import { circleArea } from '../forces/gas.ts'
import type { Corner, HydraulicStop } from '../plan/schema.ts'
import { metalVolume, tubeSection } from '../spacer/tube.ts'
import type { Say } from '../units/saying.ts'
import { type Change, type Changed, refused, type Spacer } from './change.ts'
import { closedGasVolume, isHydraulic, notHydraulic, stopNotes } from './stop-in-corner.ts'

type Of<Kind extends Change['kind']> = Extract<Change, { kind: Kind }>

/** Lengths nearer than this are one, m. */
const SAME = 1e-9

/** The shortest length a plan can say, m. */
const LEAST = 1e-5

const sameTube = (a: Spacer, b: Spacer): boolean =>
  Math.abs(a.outerDiameter - b.outerDiameter) < SAME && Math.abs(a.wall - b.wall) < SAME

/** Why a tube cannot go over the shaft and into the body; null when it can. */
function doesNotGoIn(stop: HydraulicStop, { outerDiameter, wall }: Spacer, say: Say): string | null {
  const size = (value: number): string => say(value, 'length', { decimal: true, digits: 3 })
  const { bore } = tubeSection({ outerDiameter, wall })
  if (wall <= 0 || bore <= 0)
    return 'The spacer is not a tube: its wall must be more than 0 and less than half its diameter.'
  if (bore <= stop.shaftDiameter)
    return `The spacer’s bore of ${size(bore)} does not slide over a shaft of ${size(stop.shaftDiameter)}: bore it out.`
  if (stop.body !== undefined && outerDiameter >= stop.body.bore)
    return `The spacer, ${size(outerDiameter)} outside, does not go into a body of ${size(stop.body.bore)} bore.`
  return null
}

/** Why the oil is too much for the stroke; null when it is not. */
function locks(stop: HydraulicStop, say: Say): string | null {
  const closed = closedGasVolume(stop)
  if (closed > 0) return null
  return `Too much oil: the shaft pushes aside ${say(-closed, 'volume', { digits: 3 })} more than there is room for, and the stop locks before it closes. Leave out more than that.`
}

/**
 * A spacer inside a hydraulic stop, over its shaft: it extends L less. Stroke −L, gap +L, gas volume − A·L − metal + oil left out; the closed
 * position does not move. One put in above another of the same tube counts as one of both lengths.
 */
export function spacerIn(corner: Corner, change: Of<'spacer'>, say: Say): Changed {
  const { length, outerDiameter, wall } = change
  if (!isHydraulic(corner)) return refused(notHydraulic(corner, 'A spacer goes inside a hydraulic stop'))
  const { stop } = corner
  if (!(length >= LEAST)) return refused('A spacer has a length of more than 0.')
  if (length > stop.stroke - LEAST)
    return refused(
      `A spacer of ${say(length, 'length')} leaves nothing of the stroke of ${say(stop.stroke, 'length')}.`,
    )
  const { spacer } = stop
  if (spacer !== undefined && !sameTube(spacer, change))
    return refused(
      'There is a spacer of another tube inside already: take it out first, then put in one of the whole length.',
    )
  const reason = doesNotGoIn(stop, change, say)
  if (reason !== null) return refused(reason)
  const metal = metalVolume(change, length)
  const oil = change.oilLeftOut ?? metal
  const after: HydraulicStop = {
    ...stop,
    stroke: stop.stroke - length,
    gap: stop.gap + length,
    gasVolume: stop.gasVolume - circleArea(stop.shaftDiameter) * length - metal + oil,
    spacer: { length: (spacer?.length ?? 0) + length, outerDiameter, wall },
  }
  const locked = locks(after, say)
  if (locked !== null) return refused(locked)
  return {
    ok: true,
    corner: { ...corner, stop: after },
    notes: [
      `Its stroke becomes ${say(after.stroke, 'length')}, its gap ${say(after.gap, 'length')}; the closed position does not move.`,
      oil >= 0
        ? `Leave out ${say(oil, 'volume')} of oil; the metal takes up ${say(metal, 'volume')}.`
        : `Put in ${say(-oil, 'volume')} more oil; the metal takes up another ${say(metal, 'volume')}.`,
      ...(stop.body === undefined ? ['Nobody has measured the bore of its body: see that the spacer goes in.'] : []),
      ...stopNotes(after, say),
    ],
    back: { kind: 'spacer out', length, outerDiameter, wall, oilPutBack: oil },
  }
}

/** The spacer inside taken out, or part of it: the same rule backwards. */
export function spacerOut(corner: Corner, change: Of<'spacer out'>, say: Say): Changed {
  const { length, outerDiameter, wall } = change
  if (!isHydraulic(corner)) return refused(notHydraulic(corner, 'A spacer goes inside a hydraulic stop'))
  const { stop } = corner
  const inside = stop.spacer
  if (inside === undefined) return refused('No spacer is inside.')
  if (!(length >= LEAST)) return refused('A spacer has a length of more than 0.')
  if (!sameTube(inside, change) || length > inside.length + SAME)
    return refused(`The spacer inside is another one, ${say(inside.length, 'length')} long.`)
  const metal = metalVolume(change, length)
  const oil = change.oilPutBack ?? metal
  const { spacer: _, ...bare } = stop
  const left = inside.length - length
  const after: HydraulicStop = {
    ...bare,
    stroke: stop.stroke + length,
    gap: stop.gap - length,
    gasVolume: stop.gasVolume + circleArea(stop.shaftDiameter) * length + metal - oil,
    ...(left >= LEAST ? { spacer: { length: left, outerDiameter, wall } } : {}),
  }
  const locked = locks(after, say)
  if (locked !== null) return refused(locked)
  return {
    ok: true,
    corner: { ...corner, stop: after },
    notes: [
      `Its stroke becomes ${say(after.stroke, 'length')}, its gap ${say(after.gap, 'length')}; the closed position does not move.`,
      `Put back ${say(oil, 'volume')} of oil.`,
      ...stopNotes(after, say),
    ],
    back: { kind: 'spacer', length, outerDiameter, wall, oilLeftOut: oil },
  }
}
