import { QUANTITIES } from '../units/quantity.ts'
import type { RoadProfile } from './measured-road.ts'

export type RoadText =
  | { readonly ok: true; readonly profile: RoadProfile }
  /** What was found where, and what it should be. */
  | { readonly ok: false; readonly why: string }

/** A road no longer and no higher than this, m; longer ones are another unit or a mistake. */
const LONGEST = 1e5
const HIGHEST = 1e3

const UNITS: Readonly<Record<string, number>> = QUANTITIES.length.accepted
const EXAMPLE = '“distance (m),height (m)”'

/** `distance (m)` → the unit's size, m; null when it is another column or unit. */
function unitOf(head: string | undefined, column: 'distance' | 'height'): number | null {
  const match = /^(distance|height) ?\(([a-z"']+)\)$/.exec((head ?? '').trim().toLowerCase())
  if (match === null || match[1] !== column) return null
  const unit = match[2]!
  return Object.hasOwn(UNITS, unit) ? UNITS[unit]! : null
}

const number = (text: string): number | null => {
  const plain = text.trim()
  return /^[+-]?(\d+\.?\d*|\.\d+)(e[+-]?\d+)?$/i.test(plain) ? Number(plain) : null
}

/** The road in the text of a CSV file: a head with units, then one distance and height a line, distances rising. Strict: a line that is not so is named. */
export function readRoad(text: string): RoadText {
  const lines = text.replace(/^\uFEFF/, '').split(/\r?\n/)
  while (lines.at(-1)?.trim() === '') lines.pop()
  const refused = (line: number, found: string, wanted: string) => ({
    ok: false as const,
    why: `line ${line} has ${found}; it should be ${wanted}`,
  })
  const head = lines[0] ?? ''
  const separator = [',', ';', '\t'].find(each => head.includes(each)) ?? ','
  const heads = head.split(separator)
  const [along, up] = [unitOf(heads[0], 'distance'), unitOf(heads[1], 'height')]
  if (along === null || up === null || heads.length !== 2)
    return refused(1, `“${head.slice(0, 60)}”`, `the head, ${EXAMPLE} or with another unit of length`)
  const distance: number[] = []
  const height: number[] = []
  for (const [i, line] of lines.slice(1).entries()) {
    const cells = line.split(separator)
    const [x, z] = [number(cells[0] ?? ''), number(cells[1] ?? '')]
    if (cells.length !== 2 || x === null || z === null)
      return refused(i + 2, `“${line.slice(0, 60)}”`, `two numbers with “${separator}” between`)
    const [at, high] = [x * along, z * up]
    const before = distance.at(-1)
    if (before !== undefined && at <= before)
      return refused(i + 2, `a distance of ${x}`, `more than the ${before / along} before it`)
    if (Math.abs(at) > LONGEST || Math.abs(high) > HIGHEST)
      return refused(i + 2, `“${line.slice(0, 60)}”`, `a road within ${LONGEST} m, no higher than ${HIGHEST} m`)
    distance.push(at)
    height.push(high)
  }
  if (distance.length < 2)
    return { ok: false, why: `it has ${distance.length === 1 ? '1 place' : 'no places'}; a road needs two or more` }
  return { ok: true, profile: { distance, height } }
}
