import type { Say } from '../units/saying.ts'
import type { CutList } from './cut-list.ts'
import type { Fit } from './fit.ts'
import { SAFETY } from './strength.ts'

/** A length as a micrometer reads it, in either system. */
const fine = (value: number, say: Say, digits = 3): string => say(value, 'length', { decimal: true, digits })

function boringWords({ verdict, boring, onShaft }: Fit, say: Say): string {
  if (boring === null)
    return `It slides on as it is, with ${fine(onShaft!.least, say)} to ${fine(onShaft!.most, say)} of room on the shaft.`
  const most = fine(boring.most, say)
  return verdict === 'may need boring'
    ? `At its nominal bore it slides on as it is. If it comes smaller, bore it to ${fine(boring.to, say, 4)}: up to ${most} comes out.`
    : `Bore it to ${fine(boring.to, say, 4)}: ${fine(boring.nominal, say)} comes out of a bore of nominal size, up to ${most} out of the smallest.`
}

/** How to make the spacer of a cut list, step by step, in sentences for the shop. */
export function makingWords({ length, tolerance, squareness, tube, mass, oilLeftOut }: CutList, say: Say): string[] {
  const { size, inBody } = tube
  return [
    `Tube ${fine(size.outerDiameter, say)} outside, ${fine(size.wall, say)} wall, drawn over mandrel. Measure what was delivered: outside and bore may be off by their tolerance.`,
    boringWords(tube, say),
    `Cut it to ${fine(length, say)}, ${fine(tolerance, say)} either way, both ends square within ${fine(squareness, say)}: an end that is not square cocks the tube and scores the shaft.`,
    'Break every edge inside and out, and wash it until a white rag stays white: a chip left in is in a seal at the first stroke.',
    `It must slide over the whole shaft by its own weight and turn freely${inBody === null ? '. Nobody has measured the bore of the body: do that first' : ''}.`,
    `It weighs ${say(mass, 'mass', { digits: 2 })}. Leave out ${say(oilLeftOut, 'volume')} of oil, as much as its metal takes up.`,
  ]
}

/** What the strength of a cut list comes to, in a sentence. */
export function strengthWords({ strength, steel }: CutList, say: Say): string {
  const { load, yieldFactor, bucklingFactor, enough, speed, buckling } = strength
  const factor = (value: number): string => (value > 99 ? 'over 99' : say(value, 'ratio', { digits: 1 }))
  const arriving =
    speed === null
      ? 'with no rebound curve to say how fast the shaft arrives'
      : `the shaft arriving at ${say(speed, 'shaftSpeed')}`
  return `${enough ? 'Topping' : 'Not strong enough: topping'} out it takes ${say(load, 'force')}, ${arriving}: a factor of ${factor(yieldFactor)} against yield of ${steel} steel and ${factor(bucklingFactor)} against buckling (${buckling.by}); ${enough ? `${SAFETY} is asked for` : `that is less than the ${SAFETY} asked for: more wall, or more rebound damping`}.`
}
