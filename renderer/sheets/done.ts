import type { Axle, Plan } from '../../core/plan/schema.ts'
import { type Row, same } from './differences.ts'
import { sayer } from './figures.ts'

/** What a spacer, and another stop, bring with them: not said again beside them. */
const BROUGHT = ['corner.stop.gap', 'corner.stop.stroke', 'corner.stop.gasVolume', 'corner.stop.shaftDiameter']
const SPACER = 'corner.stop.spacer.length'

export const upper = (text: string): string => `${text.charAt(0).toUpperCase()}${text.slice(1)}`

/** Values that change, for somebody who knows no names of parts; `more`: it becomes larger. */
const PLAIN: Readonly<Record<string, (from: string, to: string, more: boolean) => string>> = {
  'corner.stop.charge': (from, to) => `The stops are filled with nitrogen to ${to} instead of ${from}.`,
  'corner.stop.gap': (from, to) => `The stop meets its pad after ${to} instead of ${from}: stop or pad is moved.`,
  'corner.stop.gasVolume': (_, __, more) =>
    `There is ${more ? 'less' : 'more'} oil in the stops, so ${more ? 'more' : 'less'} room for gas.`,
  'corner.springs.preload': (from, to, more) =>
    `The springs are wound ${more ? 'tighter' : 'looser'}: ${to} instead of ${from}.`,
  'corner.springs.crossover.gap': (from, to, more) =>
    `The upper springs stop working ${more ? 'later' : 'sooner'}: their ring is set to ${to} instead of ${from}.`,
}

function sentence(row: Row, plan: Plan): string {
  const { path, name, before, after, quantity } = row
  const say = sayer(plan)
  if (before === null) return `${upper(name)}: ${say(after!, quantity)}, new.`
  if (after === null) return `${upper(name)}: taken out.`
  const [from, to] = [say(before, quantity), say(after, quantity)]
  return PLAIN[path]?.(from, to, after > before) ?? `${upper(name)}: ${from} becomes ${to}.`
}

/** What is done to the stop as a whole, or nothing when only its settings change. */
function stopWork(plan: Plan, before: Axle, after: Axle, changed: readonly Row[]): string | null {
  const say = sayer(plan)
  const [was, is] = [before.corner.stop, after.corner.stop]
  const place = after.id
  const spacer = changed.find(({ path }) => path === SPACER)
  if (was === null && is !== null) return `A bump stop is fitted at each ${place} wheel.`
  if (was !== null && is === null) return `The bump stop at each ${place} wheel is taken out.`
  if (was === null || is === null) return null
  if (was.kind !== is.kind)
    return is.kind === 'hydraulic'
      ? `Each ${place} stop is replaced by one with nitrogen and oil, ${say(is.stroke, 'length')} long in its stroke.`
      : `Each ${place} stop is replaced by one of foam or rubber.`
  if (was.kind !== 'hydraulic' || is.kind !== 'hydraulic') return null
  if (spacer !== undefined)
    return spacer.after === null
      ? `The spacer is taken out of each ${place} stop, which is filled and charged again.`
      : spacer.before === null
        ? `A ${say(spacer.after, 'length')} spacer goes inside each ${place} stop, which is filled and charged again.`
        : `The spacer inside each ${place} stop is changed for one of ${say(spacer.after, 'length')}, was ${say(spacer.before, 'length')}.`
  if (was.stroke !== is.stroke || !same(was.body, is.body) || was.shaftDiameter !== is.shaftDiameter)
    return was.stroke === is.stroke
      ? `Each ${place} stop is replaced by another of the same stroke.`
      : `Each ${place} stop is replaced by one with ${say(is.stroke, 'length')} of stroke instead of ${say(was.stroke, 'length')}.`
  return null
}

/** The work, in sentences for the owner. A stop that is changed as a whole is one thing done. @param elsewhere the other axle is changed */
export function done(
  plan: Plan,
  before: Axle,
  after: Axle,
  changed: readonly Row[],
  others: readonly string[],
  elsewhere: boolean,
): string[] {
  if (changed.length + others.length === 0)
    return elsewhere
      ? [`Nothing is changed at the ${after.id}: the work is at the ${after.id === 'rear' ? 'front' : 'rear'}.`]
      : ['Nothing is changed: this is the car as it is.']
  const stop = stopWork(plan, before, after, changed)
  const kinds = before.corner.stop?.kind !== after.corner.stop?.kind
  const said = changed.filter(
    ({ path }) =>
      stop === null ||
      !(
        path === SPACER ||
        BROUGHT.includes(path) ||
        path.startsWith('corner.stop.body.') ||
        (kinds && path.startsWith('corner.stop.'))
      ),
  )
  return [
    ...(stop === null ? [] : [stop]),
    ...said.map(row => sentence(row, plan)),
    ...others.filter(name => !(kinds && /\bstop\b/.test(name))).map(name => `Also changed: ${name}.`),
    'The same on both sides.',
  ]
}
