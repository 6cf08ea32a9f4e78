import { GENERIC_SHELF } from '../../../core/changes/shelf.ts'
import {
  type KeptOf,
  type PartKind,
  springWords,
  stopOf,
  stopWords,
  tubeWords,
} from '../../../core/changes/shelf-parts.ts'
import type { LooseStop } from '../../../core/changes/stop-rules.ts'
import type { Corner } from '../../../core/plan/schema.ts'
import type { Say } from '../../../core/units/saying.ts'

/** A way to put a part on the shelf. */
export interface NewPart {
  readonly kind: PartKind
  readonly words: string
  readonly make: () => KeptOf<PartKind>
}

const own = <Part>(name: string, part: Part) => ({ id: crypto.randomUUID(), name, generic: false, part })

/** Foam to begin with, m and N: squeezed in a press, it becomes somebody’s own. Assumed. */
const FOAM: LooseStop = {
  kind: 'elastomer',
  curve: [
    { deflection: 0, force: 0 },
    { deflection: 0.02, force: 1000 },
    { deflection: 0.04, force: 5000 },
  ],
}

/** What can be put on the shelf of each kind: the parts of the corner shown, and one of each to begin with. */
export function newParts(corner: Corner, say: Say): NewPart[] {
  const found: NewPart[] = []
  const stop = stopOf(corner)
  const first = GENERIC_SHELF.stops[0]!.part
  const spring = GENERIC_SHELF.springs[0]!.part
  const tube = GENERIC_SHELF.tubes[0]!.part
  if (stop !== null)
    found.push({ kind: 'stops', words: 'This car’s stop', make: () => own(stopWords(stop, say), stop) })
  found.push({ kind: 'stops', words: 'A hydraulic stop', make: () => own('Hydraulic stop', first) })
  found.push({ kind: 'stops', words: 'An elastomer stop', make: () => own('Elastomer stop', FOAM) })
  const main = corner.springs.springs.at(-1)!
  found.push({ kind: 'springs', words: 'This car’s main spring', make: () => own(springWords(main, say), main) })
  found.push({ kind: 'springs', words: 'A spring', make: () => own('Spring', spring) })
  const inside = stop?.kind === 'hydraulic' && corner.stop?.kind === 'hydraulic' ? corner.stop.spacer : undefined
  if (inside !== undefined) {
    const { outerDiameter, wall } = inside
    const part = { outerDiameter, wall }
    found.push({ kind: 'tubes', words: 'The tube of its spacer', make: () => own(tubeWords(part, say), part) })
  }
  found.push({ kind: 'tubes', words: 'A tube', make: () => own('Tube', tube) })
  return found
}

/** A generic size made somebody’s own: it can be measured and changed from then on. */
export const ownCopy = <Kind extends PartKind>(kept: KeptOf<Kind>): KeptOf<Kind> => ({
  ...kept,
  id: crypto.randomUUID(),
  generic: false,
})
