import { INCH } from '../units/constants.ts'
import { type Band, boreBand, outerBand } from './tolerance.ts'
import { boredOut, type TubeSize, tubeSection } from './tube.ts'

/**
 * Room a spacer runs with, on diameter, m. On the shaft: no less than 0.005 in, the least of a loose running fit at these sizes (ANSI B4.1, RC 8,
 * from memory), bored to 0.0065 in where it must be bored, and no more than 1/16 in, so that its wall stays under piston and gland. In the
 * body no less than 0.010 in, for oil to pass and nothing to scuff. The last two are common practice.
 */
const RUNNING = {
  onShaft: { least: 0.005 * INCH, aim: 0.0065 * INCH, most: INCH / 16 },
  inBody: { least: 0.01 * INCH },
} as const

/** Thinnest wall left by boring, m: common practice, so that it is still round when it comes out of the lathe. */
const LEAST_WALL = 0.06 * INCH

/** `may need boring`: at its nominal bore it slides on, at the smallest it may be delivered with it does not. */
export type Verdict =
  | 'fits'
  | 'may need boring'
  | 'bore it'
  | 'too loose on the shaft'
  | 'too large for the body'
  | 'too thin once bored'
  | 'not in the tables'

/** One size of tube against one stop. All lengths in m, clearances on diameter. */
export interface Fit {
  readonly size: TubeSize
  readonly verdict: Verdict
  /** Bore as delivered, and outer diameter; null outside the tables. */
  readonly bore: Band | null
  readonly outer: Band | null
  /** As delivered; negative: it does not go on. Null outside the tables. */
  readonly onShaft: Band | null
  /** Null too when the body's bore is not known. */
  readonly inBody: Band | null
  /** Bore to finish it to, and how much that takes out of the nominal bore (less than nothing where that is large enough) and of the smallest; null when it is left as it is. */
  readonly boring: { readonly to: number; readonly nominal: number; readonly most: number } | null
  /** The tube as it goes in: bored where it must be. */
  readonly finished: TubeSize
}

/** Sizes nearer than this are one size, m: far below what anybody measures. */
const SAME = 1e-9

const less = (band: Band, from: number): Band => ({ least: from - band.most, most: from - band.least })

/**
 * Whether a tube goes over a stop's shaft and into its body, over the whole band of its tolerances.
 * @param shaft diameter of the stop's shaft, m
 * @param body bore of its body, m, or null when nobody measured it: then only the shaft is judged
 */
export function fitOf(size: TubeSize, shaft: number, body: number | null): Fit {
  const [bore, outer] = [boreBand(size), outerBand(size)]
  const as = (verdict: Verdict, rest: Partial<Fit> = {}): Fit => ({
    size,
    verdict,
    bore,
    outer,
    onShaft: bore && { least: bore.least - shaft, most: bore.most - shaft },
    inBody: outer && body !== null ? less(outer, body) : null,
    boring: null,
    finished: size,
    ...rest,
  })
  if (bore === null || outer === null) return as('not in the tables')
  if (body !== null && body - outer.most < RUNNING.inBody.least - SAME) return as('too large for the body')
  if (bore.most - shaft > RUNNING.onShaft.most + SAME) return as('too loose on the shaft')
  const room = RUNNING.onShaft.least - SAME
  if (bore.least - shaft >= room) return as('fits')
  const to = shaft + RUNNING.onShaft.aim
  const nominal = tubeSection(size).bore
  const boring = { to, nominal: to - nominal, most: to - bore.least }
  if (nominal - shaft >= room) return as('may need boring', { boring })
  const finished = boredOut(size, to)
  return as(finished.wall < LEAST_WALL ? 'too thin once bored' : 'bore it', { boring, finished })
}

const ORDER: Readonly<Record<Verdict, number>> = {
  fits: 0,
  'may need boring': 1,
  'bore it': 2,
  'too thin once bored': 3,
  'too loose on the shaft': 4,
  'too large for the body': 5,
  'not in the tables': 6,
}

/** How much metal must come out at most, m on diameter: 0 where it fits. */
const work = ({ boring }: Fit): number => boring?.most ?? 0

/** Whether a tube of this verdict can be used. */
export const usable = ({ verdict }: Fit): boolean => ORDER[verdict] <= ORDER['bore it']

/** Every size against one stop, the best first: as it is before bored, little boring before much, more wall before less. */
export const fits = (sizes: readonly TubeSize[], shaft: number, body: number | null): Fit[] =>
  sizes
    .map(size => fitOf(size, shaft, body))
    .sort((a, b) => ORDER[a.verdict] - ORDER[b.verdict] || work(a) - work(b) || b.finished.wall - a.finished.wall)
