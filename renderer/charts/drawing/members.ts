import { directionOf, type Flat, minus, nearestOn, size } from './flat.ts'

/** The nearest place on a set of members, each a line through joints, and the member's direction there. */
export function nearestMember(
  members: readonly (readonly Flat[])[],
  to: Flat,
): { readonly point: Flat; readonly direction: Flat } {
  let best: { point: Flat; direction: Flat } = { point: to, direction: [1, 0] }
  let least = Infinity
  for (const joints of members)
    for (let i = 1; i < joints.length; i += 1) {
      const [a, b] = [joints[i - 1]!, joints[i]!]
      const point = nearestOn(a, b, to)
      const distance = size(minus(point, to))
      if (distance >= least) continue
      least = distance
      best = { point, direction: directionOf(minus(b, a), [1, 0]) }
    }
  return best
}
