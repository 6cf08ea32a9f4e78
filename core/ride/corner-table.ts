import type { CornerModel } from '../corner/corner-model.ts'
import { type DamperCurve, damperCurve } from '../forces/damper.ts'
import { circleArea, gasForce } from '../forces/gas.ts'
import { springPack } from '../forces/spring-pack.ts'
import type { Modes } from './modes.ts'

/** What a corner's geometry, springs and dampers are at the wheel position and speed last looked at. */
export interface CornerTable {
  /** Force of springs and gas along the shock, N, and of its dampers. */
  readonly axial: number
  readonly damper: number
  /** Motion ratio of the shock. */
  readonly shockRatio: number
  /** Pad movement from ride height along the stop, m, and motion ratio of the stop. */
  readonly stop: number
  readonly stopRatio: number
  /** The wheel position to look at, m from ride height, and speed, m/s. */
  wheel: number
  speed: number
  /** How far it is beyond the region it was looked at in, m; below 0 inside. */
  readonly beyond: number
  /**
   * Looks at the wheel position and speed; nothing is made anew. What lies beyond the region of the modes, between two places where the rate jumps, is
   * as if the region went on; the dampers are those of the way the modes say the wheel moves. Past the ends of the travel springs and gas stay as
   * they stand there once the modes are past them too; until then their slope goes on.
   */
  look(modes: Modes): void
  /** The region a wheel position is in. */
  regionOf(wheel: number): number
}

/** Widest piece to begin with, m, and how often it may be halved where that is too coarse. */
const WIDEST = 2e-3
const MOST_HALVINGS = 5

/** A table this near the corner itself is good enough: a share of the sprung weight, and a length in m. */
const FORCE_SHARE = 2e-6
const LENGTH = 1e-9

/** A corner with less travel than this is looked at beyond it, m. */
const LEAST = 1e-4

/** Where the rate of springs and gas jumps by more than this share, a region ends. */
const JUMP = 0.02

/** Numbers of a piece: four coefficients of the axial force, four of shock movement, four of stop movement. */
const PIECE = 12

interface Asked {
  readonly axial: number
  readonly shock: number
  readonly stop: number
}

/** The corner at a wheel position: force of springs and gas along the shock, whatever its motion ratio, and where shock and pad stand. */
function asker({ corner, linkage }: CornerModel): (wheel: number) => Asked {
  const { shock: body, springs } = corner
  const pack = springPack(springs)
  const chamber = body.gas && { area: circleArea(body.shaftDiameter), ...body.gas }
  return wheel => {
    const { shock, stop } = linkage.at(wheel)
    const shaft = Math.min(body.stroke, Math.max(0, body.stroke - body.showing + shock))
    const gas = chamber === null ? 0 : gasForce(chamber, shaft, 'fast').value
    return { axial: pack.force(springs.preload + shaft) + gas, shock, stop }
  }
}

/** Slopes at evenly spaced values, per step, by differences over five of them (exact for quartics). */
function slopesOf(f: readonly number[]): number[] {
  const last = f.length - 1
  return f.map((_, i) => {
    const at = Math.min(last - 2, Math.max(2, i))
    const a = f[at - 2]!
    const b = f[at - 1]!
    const c = f[at]!
    const d = f[at + 1]!
    const e = f[at + 2]!
    switch (i - at) {
      case -2:
        return (-25 * a + 48 * b - 36 * c + 16 * d - 3 * e) / 12
      case -1:
        return (-3 * a - 10 * b + 18 * c - 6 * d + e) / 12
      case 1:
        return (-a + 6 * b - 18 * c + 10 * d + 3 * e) / 12
      case 2:
        return (3 * a - 16 * b + 36 * c - 48 * d + 25 * e) / 12
      default:
        return (a - 8 * b + 8 * d - e) / 12
    }
  })
}

function cubicsOf(f: readonly number[], into: number[][]): void {
  const slopes = slopesOf(f)
  for (let i = 0; i < f.length - 1; i += 1) {
    const rise = f[i + 1]! - f[i]!
    const d0 = slopes[i]!
    const d1 = slopes[i + 1]!
    into[i]!.push(f[i]!, d0, 3 * rise - 2 * d0 - d1, d0 + d1 - 2 * rise)
  }
}

const cubicAt = (piece: readonly number[], from: number, t: number): number =>
  piece[from]! + t * (piece[from + 1]! + t * (piece[from + 2]! + t * piece[from + 3]!))

/** One stretch without kinks in even pieces, halved until the middles of the pieces are right. */
function stretch(ask: (wheel: number) => Asked, from: number, to: number, forceError: number): number[][] {
  let count = Math.max(4, Math.ceil((to - from) / WIDEST))
  for (let halving = 0; ; halving += 1) {
    const places = Array.from({ length: count + 1 }, (_, i) => ask(i === count ? to : from + ((to - from) * i) / count))
    const pieces: number[][] = Array.from({ length: count }, () => [])
    for (const part of ['axial', 'shock', 'stop'] as const)
      cubicsOf(
        places.map(place => place[part]),
        pieces,
      )
    if (halving === MOST_HALVINGS) return pieces
    const good = pieces.every((piece, i) => {
      const there = ask(from + ((to - from) * (i + 0.5)) / count)
      return (
        Math.abs(cubicAt(piece, 0, 0.5) - there.axial) <= forceError &&
        Math.abs(cubicAt(piece, 4, 0.5) - there.shock) <= LENGTH &&
        Math.abs(cubicAt(piece, 8, 0.5) - there.stop) <= LENGTH
      )
    })
    if (good) return pieces
    count *= 2
  }
}

class Table implements CornerTable {
  wheel = 0
  speed = 0
  beyond = 0
  axial = 0
  damper = 0
  shockRatio = 0
  stop = 0
  stopRatio = 0
  /** Ends of the stretches; the first piece of each, and of what would follow them; its pieces per metre. */
  private readonly edges: Float64Array
  private readonly firsts: Int32Array
  private readonly perMetre: Float64Array
  private readonly pieces: Float64Array
  /** Ends of the regions, and the first stretch of each and of what would follow them. */
  private readonly ends: Float64Array
  private readonly regions: Int32Array
  private here = 0

  constructor(
    model: CornerModel,
    sprungWeight: number,
    private readonly compression: DamperCurve,
    private readonly rebound: DamperCurve,
  ) {
    const { droop, bump, kinks } = model
    const edges = bump - droop < LEAST ? [droop - LEAST, bump + LEAST] : [droop, ...kinks, bump]
    const ask = asker(model)
    const stretches = edges.slice(1).map((to, i) => {
      // A hair inside, so that each stretch sees its own side of a kink.
      const [from, hair] = [edges[i]!, (to - edges[i]!) * 1e-9]
      return stretch(ask, from + hair, to - hair, FORCE_SHARE * sprungWeight)
    })
    this.edges = Float64Array.from(edges)
    this.firsts = new Int32Array(edges.length)
    for (let i = 0; i < stretches.length; i += 1) this.firsts[i + 1] = this.firsts[i]! + stretches[i]!.length
    this.perMetre = Float64Array.from(stretches, ({ length }, i) => length / (edges[i + 1]! - edges[i]!))
    this.pieces = Float64Array.from(stretches.flat(2))
    const jumps = edges.flatMap((_, s) => (s > 0 && s < stretches.length && this.jumps(s) ? [s] : []))
    this.ends = Float64Array.from([-Infinity, ...jumps.map(s => edges[s]!), Infinity])
    this.regions = Int32Array.from([0, ...jumps, stretches.length])
  }

  /** Whether the rate jumps where a stretch begins. */
  private jumps(s: number): boolean {
    const { pieces, firsts, perMetre } = this
    const after = PIECE * firsts[s]!
    const before = after - PIECE
    const rise = (c: number, t: number): number => pieces[c + 1]! + t * (2 * pieces[c + 2]! + 3 * t * pieces[c + 3]!)
    const below = rise(before, 1) * perMetre[s - 1]!
    const above = rise(after, 0) * perMetre[s]!
    return Math.abs(above - below) > JUMP * Math.max(Math.abs(above), Math.abs(below))
  }

  regionOf(wheel: number): number {
    const { ends } = this
    let region = 0
    while (wheel >= ends[region + 1]!) region += 1
    return region
  }

  look(modes: Modes): void {
    const { wheel, edges, pieces, regions, ends } = this
    const { region } = modes
    this.beyond = Math.max(wheel - ends[region + 1]!, ends[region]! - wheel)
    const first = regions[region]!
    const last = regions[region + 1]! - 1
    let s = Math.min(last, Math.max(first, this.here))
    while (s < last && wheel >= edges[s + 1]!) s += 1
    while (s > first && wheel < edges[s]!) s -= 1
    this.here = s
    const perMetre = this.perMetre[s]!
    const count = this.firsts[s + 1]! - this.firsts[s]!
    const place = (wheel - edges[s]!) * perMetre
    const i = place <= 0 ? 0 : place >= count ? count - 1 : place | 0
    const t = place <= 0 ? 0 : place >= count ? 1 : place - i
    const past = place - i - t
    const c = PIECE * (this.firsts[s]! + i)
    const goesOn =
      past === 0 || modes.end !== 'none'
        ? 0
        : past * (pieces[c + 1]! + t * (2 * pieces[c + 2]! + 3 * t * pieces[c + 3]!))
    this.axial = pieces[c]! + t * (pieces[c + 1]! + t * (pieces[c + 2]! + t * pieces[c + 3]!)) + goesOn
    const shockRatio = (pieces[c + 5]! + t * (2 * pieces[c + 6]! + 3 * t * pieces[c + 7]!)) * perMetre
    const stopSlope = pieces[c + 9]! + t * (2 * pieces[c + 10]! + 3 * t * pieces[c + 11]!)
    // Past the ends the pad goes on as it moved there.
    this.stop = pieces[c + 8]! + t * (pieces[c + 9]! + t * (pieces[c + 10]! + t * pieces[c + 11]!)) + past * stopSlope
    this.shockRatio = shockRatio
    this.stopRatio = stopSlope * perMetre
    const inward = modes.bumping === shockRatio >= 0
    const curve = inward ? this.compression : this.rebound
    const at = inward ? this.speed * shockRatio : -this.speed * shockRatio
    let held: number
    if (at <= 0) held = curve.firstSlope * at
    else if (at >= curve.fastest) held = curve.most + curve.lastSlope * (at - curve.fastest)
    else {
      const { places, perWidth, cubics } = curve.shape
      let k = 0
      while (at >= places[k + 1]!) k += 1
      const u = (at - places[k]!) * perWidth[k]!
      const d = 4 * k
      held = cubics[d]! + u * (cubics[d + 1]! + u * (cubics[d + 2]! + u * cubics[d + 3]!))
    }
    this.damper = inward ? held : -held
  }
}

/**
 * A corner's springs and geometry as cubic pieces between its kinks, with its dampers, for the loops of a ride: a dozen multiplications a look instead
 * of the corner's own trigonometry, powers and searches. Checked against the corner in the middle of every piece as it is built.
 */
export const cornerTable = (
  model: CornerModel,
  sprungWeight: number,
  compression = damperCurve([]),
  rebound = damperCurve([]),
): CornerTable => new Table(model, sprungWeight, compression, rebound)
