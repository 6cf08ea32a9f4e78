import type { Corner, Springs, Stop } from '../plan/schema.ts'

export type Spring = Springs['springs'][number]

/** A spacer as it goes in: finished tube, and the oil left out for it, m and m³. */
export interface Spacer {
  readonly length: number
  readonly outerDiameter: number
  readonly wall: number
}

/**
 * One thing done to a corner. Lengths in m along the part, pressures gauge in Pa, volumes in m³.
 * Changes of the stop leave the measured ride height alone; changes of springs say where the car then sits, and all is measured from there.
 */
export type Change =
  /** Inside a hydraulic stop, over its shaft. `oilLeftOut` more than before; as much as the metal takes up where it is not given. */
  | ({ readonly kind: 'spacer'; readonly oilLeftOut?: number } & Spacer)
  /** The same taken out again, or part of it, with oil put back likewise. */
  | ({ readonly kind: 'spacer out'; readonly oilPutBack?: number } & Spacer)
  /** On the pad; negative: taken off it. */
  | { readonly kind: 'pad shim'; readonly thickness: number }
  /** The whole stop along its own axis, positive away from the pad. */
  | { readonly kind: 'move stop'; readonly away: number }
  /** Another stop, none, or one where there was none; its gap as it will be. */
  | { readonly kind: 'stop'; readonly stop: Stop | null }
  | { readonly kind: 'charge'; readonly charge: number }
  /** Oil put into a hydraulic stop, negative taken out: the gas has that much less room. */
  | { readonly kind: 'oil'; readonly added: number }
  /** Another spring in the place of one, counted from the chassis end, from 0; preload set anew for the same ride height, or left. */
  | {
      readonly kind: 'spring'
      readonly place: number
      readonly spring: Spring
      readonly keep: 'ride height' | 'preload'
    }
  /** Of the pack, at full extension; the divider ring left where it is, or moved so that its gap at full extension is `gap`. */
  | { readonly kind: 'preload'; readonly preload: number; readonly gap?: number }
  /** Divider to stop ring at full extension; null takes the ring off. */
  | { readonly kind: 'crossover'; readonly gap: number | null }
  /** The chassis this much higher, wheel travel, by preload. */
  | { readonly kind: 'ride height'; readonly rise: number }
  /** The whole pack as it is to be, at the same ride height. */
  | { readonly kind: 'springs'; readonly springs: Springs }
  /** The preload with which the corner carries a weight, N, slow, at its measured ride height. */
  | { readonly kind: 'hold'; readonly weight: number }
  /** Ride height measured anew at this wheel position; where the corner rests under its sprung weight when not given. */
  | { readonly kind: 'settle'; readonly at?: number }

export type ChangeKind = Change['kind']

/** The corner with a change made, or why it cannot be made, in a sentence. */
export type Changed =
  | {
      readonly ok: true
      readonly corner: Corner
      /** Sentences: what else moves with it, what to look after. */
      readonly notes: readonly string[]
      /** The change that takes this one back. */
      readonly back: Change
    }
  | { readonly ok: false; readonly reason: string }

export const refused = (reason: string): Extract<Changed, { ok: false }> => ({ ok: false, reason })
