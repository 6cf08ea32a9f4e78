import { current } from 'immer'
import type { Axle, Linkage } from '../../core/plan/schema.ts'
import { edit, type Here, type Outcome } from './edit.ts'
import { assumedAfterSprings, assumedUnder, gasOf, linkageOf, type StopKind, stopOf } from './kinds.ts'
import { shownAxle } from './selectors.ts'
import type { Store } from './store.ts'

const markOrClear = (axle: Here['axle'], assumed: string[]): void => {
  if (assumed.length === 0) delete axle.assumed
  else axle.assumed = assumed
}

/** Puts another part in; all its values are assumed until measured. */
function change(store: Store, label: string, path: string, put: (here: Here, axle: Axle) => void): Outcome {
  const { axle } = shownAxle(store.read())
  return edit(store, label, (_, here) => {
    put(here, axle)
    markOrClear(here.axle, assumedUnder(current(here.axle), path))
  })
}

export const putStop = (store: Store, kind: StopKind) =>
  change(store, kind === 'none' ? 'no stop' : `${kind} stop`, 'corner.stop', (here, axle) => {
    here.axle.corner.stop = stopOf(axle, kind)
  })

export const putShockGas = (store: Store, has: boolean) =>
  change(store, has ? 'shock with gas' : 'shock without gas', 'corner.shock.gas', (here, axle) => {
    here.axle.corner.shock.gas = has ? gasOf(axle) : null
  })

export const putLinkage = (store: Store, kind: Linkage['kind']) =>
  change(store, `linkage by ${kind}`, 'corner.linkage', (here, axle) => {
    here.axle.corner.linkage = linkageOf(axle, kind)
  })

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
  edit(store, count === 1 ? 'one spring' : `${count} springs`, (_, { axle }) => {
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
  })
