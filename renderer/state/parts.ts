import { current } from 'immer'
import type { Axle, Corner, Linkage } from '../../core/plan/schema.ts'
import { axleWhen } from './earlier.ts'
import { edit, type Here, type Outcome } from './edit.ts'
import { assumedAfterSprings, assumedAs, assumedUnder, gasOf, linkageOf, type StopKind, stopOf } from './kinds.ts'
import { shownAxle } from './selectors.ts'
import type { Store } from './store.ts'
import { springsMoved } from './tolerances.ts'

const markOrClear = (axle: Here['axle'], assumed: string[]): void => {
  if (assumed.length === 0) delete axle.assumed
  else axle.assumed = assumed
}

/**
 * Puts another kind of part in. One the axle had before comes back as it was, with what was measured of it; the values of a new one are
 * all assumed until measured.
 */
function swap(store: Store, label: string, path: string, had: (axle: Axle) => boolean, put: (part: Part) => void) {
  const { axle } = shownAxle(store.read())
  const before = axleWhen(store.read(), had)
  return edit(store, label, (_, here) => {
    put({ to: here.axle.corner, before: before?.corner ?? null, axle })
    markOrClear(here.axle, before === null ? assumedUnder(current(here.axle), path) : assumedAs(axle, before, path))
  })
}

interface Part {
  readonly to: Here['axle']['corner']
  /** The corner when it last had the part; null if it never had. */
  readonly before: Corner | null
  readonly axle: Axle
}

/** Puts another part in; all its values are assumed until measured. */
function change(store: Store, label: string, path: string, put: (here: Here, axle: Axle) => void): Outcome {
  const { axle } = shownAxle(store.read())
  return edit(store, label, (_, here) => {
    put(here, axle)
    markOrClear(here.axle, assumedUnder(current(here.axle), path))
  })
}

const stopNames: Readonly<Record<StopKind, string>> = {
  hydraulic: 'hydraulic stop',
  elastomer: 'foam stop',
  none: 'no stop',
}

export const putStop = (store: Store, kind: StopKind) =>
  swap(
    store,
    stopNames[kind],
    'corner.stop',
    ({ corner }) => (corner.stop?.kind ?? 'none') === kind,
    ({ to, before, axle }) => {
      to.stop = before === null ? stopOf(axle, kind) : before.stop
    },
  )

export const putShockGas = (store: Store, has: boolean) =>
  change(store, has ? 'shock with gas' : 'shock without gas', 'corner.shock.gas', (here, axle) => {
    here.axle.corner.shock.gas = has ? gasOf(axle) : null
  })

export const putLinkage = (store: Store, kind: Linkage['kind']) =>
  swap(
    store,
    `linkage by ${kind}`,
    'corner.linkage',
    ({ corner }) => corner.linkage.kind === kind,
    ({ to, before, axle }) => {
      to.linkage = before === null ? linkageOf(axle, kind) : before.linkage
    },
  )

/** A spacer inside the stop: 3/4 in over a shaft, 1/8 in thick. */
export const putSpacer = (store: Store, has: boolean) =>
  change(store, has ? 'spacer inside' : 'no spacer', 'corner.stop.spacer', here => {
    const { stop } = here.axle.corner
    if (stop?.kind !== 'hydraulic') return
    const inner = stop.shaftDiameter + 0.001
    if (has) stop.spacer = { length: 0.01905, outerDiameter: inner + 2 * 0.003175, wall: 0.003175 }
    else delete stop.spacer
  })

export const putSuspension = (store: Store, suspension: Axle['suspension']) =>
  edit(store, suspension === 'solid' ? 'solid axle' : 'independent', (_, { axle }) => {
    axle.suspension = suspension
    if (suspension === 'independent') return
    for (const spacing of ['shockSpacing', 'stopSpacing'] as const)
      if (axle[spacing] === undefined) {
        axle[spacing] = axle.track * 0.6
        axle.assumed = [...(axle.assumed ?? []), spacing]
      }
  })

/** A spring more, above the others, or the topmost one less; the main stays. */
export const putSprings = (store: Store, count: number): Outcome =>
  edit(store, count === 1 ? 'one spring' : `${count} springs`, (plan, { axle }) => {
    const { springs } = axle.corner
    const more = count - springs.springs.length
    const assumed = assumedAfterSprings(current(axle), more)
    while (springs.springs.length > count) springs.springs.shift()
    const names = ['tender', 'helper']
    while (springs.springs.length < count)
      springs.springs.unshift({
        name: names[springs.springs.length - 1] ?? 'spring',
        rate: springs.springs[0]!.rate,
        freeLength: 0.2032,
        solidLength: 0.0762,
      })
    if (count === 1) springs.crossover = null
    markOrClear(axle, assumed)
    springsMoved(plan, axle.id, more)
  })
