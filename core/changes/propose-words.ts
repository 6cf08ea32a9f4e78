import type { Say } from '../units/saying.ts'
import type { ChangeKind } from './change.ts'
import type { CandidateFigures, Worked } from './evaluate.ts'
import { HIGHEST, type LandingHeight } from './landing.ts'
import type { Proposals } from './propose.ts'
import { targetWords } from './targets.ts'
import { changeWords } from './words.ts'

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1)

/** What is done, as a heading: `A 1 in spacer inside the stop + the stop charged to 180 psi`. */
export function candidateName({ changes }: Worked, say: Say): string {
  const done = changes.filter(({ kind }) => kind !== 'settle').map(change => changeWords(change, say))
  return done.length === 0 ? 'As it is' : capital(done.join(' + '))
}

/** Why it is proposed, or what is in the way: each target with what it gets, missed ones first, and new dangers. */
export function candidateReasons({ targets, dangers }: Worked, say: Say): string[] {
  const missed = targets.filter(({ met }) => !met).map(target => `Misses: ${targetWords(target, say)}.`)
  const met = targets.filter(({ met }) => met).map(target => `Meets: ${targetWords(target, say)}.`)
  return [...missed, ...dangers.map(danger => `Danger: ${danger}`), ...met]
}

/** What each kind of change asks for in the shop. Common practice. */
const JOBS: Readonly<Partial<Record<ChangeKind, string>>> = {
  spacer: 'The stop is discharged and opened, a spacer cut, oil left out.',
  'spacer out': 'The stop is discharged and opened, the spacer taken out, oil put back.',
  charge: 'Nitrogen to a new charge.',
  oil: 'The stop is discharged and opened, its oil measured.',
  'pad shim': 'A shim made and bolted under the pad.',
  'move stop': 'The stop’s mount is moved: cutting and welding.',
  stop: 'Another stop, and its mount looked over.',
  spring: 'Another spring; coilover out, preload set anew.',
  springs: 'Other springs; coilover out, preload set anew.',
  preload: 'Preload turned.',
  hold: 'Preload turned until the car sits where it was.',
  'ride height': 'Preload turned.',
  crossover: 'The divider ring set.',
}

/** Smaller differences of landing height are not told, m. */
const TOLD = 2e-3

function less(now: number, then: number, what: string, say: Say): string[] {
  if (now === 0) return []
  const share = then / now - 1
  if (Math.abs(share) < 0.005) return []
  return [`${say(Math.abs(share), 'share')} ${share < 0 ? 'less' : 'more'} ${what}`]
}

/** The work it asks for, in sentences. */
export const candidateWork = ({ changes }: Worked): string[] => [
  ...new Set(changes.flatMap(({ kind }) => JOBS[kind] ?? [])),
]

/** What it costs and gains against the setup as it stands, besides the targets. */
export function candidateCosts({ figures, settles }: Worked, present: CandidateFigures, say: Say): string[] {
  const lands = figures.landing.drop - present.landing.drop
  const differences = [
    ...less(present.energy, figures.energy, 'energy taken from ride height to full bump', say),
    ...less(present.stopForce, figures.stopForce, 'force of the stop there', say),
    ...(Math.abs(lands) < TOLD
      ? []
      : [`${say(Math.abs(lands), 'length')} ${lands < 0 ? 'less' : 'more'} landing height`]),
  ]
  const height =
    settles === 0
      ? []
      : [
          `It then sits ${say(Math.abs(settles), 'length')} ${settles > 0 ? 'lower' : 'higher'}: measure everything again from there.`,
        ]
  return [...(differences.length === 0 ? [] : [`${capital(differences.join(', '))}.`]), ...height]
}

/** How a landing height is known, in a sentence. */
export function landingWords({ drop, by }: LandingHeight, say: Say): string {
  const height = drop >= HIGHEST ? `${say(HIGHEST, 'length')} or more` : say(drop, 'length')
  return by === 'simulation'
    ? `${height}, by driving landings as a quarter car`
    : `${height}, by the energy alone: dampers and tire left out`
}

/** Why so many candidates do not do, the most frequent reason first. */
export function regionWords(
  { order, misses, refused }: Proposals,
  targetName: (id: keyof Proposals['misses']) => string,
): string[] {
  const all = order.length
  const missing = (Object.entries(misses) as [keyof Proposals['misses'], number][])
    .sort((a, b) => b[1] - a[1])
    .map(([id, count]) => `${count} of ${all} miss: ${targetName(id)}.`)
  const reasons = new Map<string, number>()
  for (const { reason } of refused) reasons.set(reason, (reasons.get(reason) ?? 0) + 1)
  const cannot = [...reasons]
    .sort((a, b) => b[1] - a[1])
    .map(([reason, count]) => `${count} cannot be built: ${reason}`)
  return [...missing, ...cannot]
}
