import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { apply, changeBetween } from '../../../renderer/state/change.ts'
import { closeGesture, edit, put, redo, undo } from '../../../renderer/state/edit.ts'
import { emptyHistory, record } from '../../../renderer/state/history.ts'
import { putLinkage, putSprings, putStop } from '../../../renderer/state/parts.ts'
import { addAxle, addSetup, removeAxle, removeSetup } from '../../../renderer/state/setups.ts'
import type { Store } from '../../../renderer/state/store.ts'
import { showUnits } from '../../../renderer/state/units.ts'
import { showAxle, showSetup } from '../../../renderer/state/view.ts'
import { aPlan } from '../a-plan.ts'
import { aStore } from '../some-files.ts'

/** Anything a person can do to a plan, some of it refused by the plan. */
const deeds: Readonly<Record<string, (store: Store, n: number) => void>> = {
  gap: (store, n) => put(store, `gap ${n}`, 'corner.stop.gap', n / 1000),
  showing: (store, n) => put(store, `showing ${n}`, 'corner.shock.showing', n / 200),
  charge: (store, n) => put(store, `charge ${n}`, 'corner.stop.charge', n * 1e4),
  typing: (store, n) => put(store, `typing ${n}`, 'corner.cornerMass', 300 + n, 'one gesture'),
  rest: store => closeGesture(store),
  notes: (store, n) => put(store, 'notes', 'notes', `written ${n}`),
  target: (store, n) => put(store, 'target', 'targets.coiloverShare', n % 2 === 0 ? undefined : n / 200),
  stop: (store, n) => putStop(store, n % 3 === 0 ? 'none' : n % 3 === 1 ? 'elastomer' : 'hydraulic'),
  linkage: (store, n) => putLinkage(store, (['ratio', 'table', 'arm', 'axle'] as const)[n % 4]!),
  springs: (store, n) => putSprings(store, 1 + (n % 3)),
  setup: store => addSetup(store),
  noSetup: (store, n) => removeSetup(store, n % 2 === 0 ? 'proposed' : 'as-found'),
  oneAxle: store => removeAxle(store, 'front'),
  twoAxles: store => addAxle(store, 'front'),
  units: (store, n) => showUnits(store, n % 2 === 0 ? 'inch' : 'metric'),
  lookFront: store => showAxle(store, 'front'),
  lookProposed: store => showSetup(store, 'proposed'),
}

const doing = fc.array(fc.tuple(fc.constantFrom(...Object.keys(deeds)), fc.integer({ min: 1, max: 99 })), {
  maxLength: 25,
})

describe('undo', () => {
  test('undone to the beginning it is the plan opened, redone to the end it is the plan left', () => {
    fc.assert(
      fc.property(doing, done => {
        const start = aPlan()
        const store = aStore(start)
        for (const [deed, n] of done) deeds[deed]!(store, n)
        const end = store.read().plan
        const entries = store.read().history.past.length
        let undone = 0
        while (undo(store) !== null) undone += 1
        expect(undone).toBe(entries)
        expect(store.read().plan).toEqual(start)
        let redone = 0
        while (redo(store) !== null) redone += 1
        expect(redone).toBe(entries)
        expect(store.read().plan).toEqual(end)
      }),
      { seed: 20, numRuns: 60 },
    )
  })

  test('every entry changes something, and back again', () => {
    fc.assert(
      fc.property(doing, done => {
        const store = aStore()
        for (const [deed, n] of done) deeds[deed]!(store, n)
        for (const entry of store.read().history.past) {
          expect(entry.patches.length).toBeGreaterThan(0)
          expect(entry.label).not.toBe('')
        }
      }),
      { seed: 21, numRuns: 30 },
    )
  })

  test('all of one typing is one entry with the last label', () => {
    const store = aStore()
    for (const [n, text] of [
      [0.02, 'a'],
      [0.03, 'b'],
      [0.04, 'c'],
    ] as const)
      put(store, `gap ${text}`, 'corner.stop.gap', n, 'typing')
    expect(store.read().history.past.map(({ label }) => label)).toEqual(['gap c'])
    expect(undo(store)).toBe('gap c')
    expect(store.read().plan).toEqual(aPlan())
  })

  test('an edit that ends where it began is none, and what could be redone still can', () => {
    const store = aStore()
    const { gap } = store.read().plan.setups[0]!.axles[1]!.corner.stop!
    put(store, 'charge', 'corner.stop.charge', 9e5)
    undo(store)
    put(store, 'gap', 'corner.stop.gap', 0.01, 'typing')
    expect(store.read().history.future).toHaveLength(0)
    put(store, 'gap', 'corner.stop.gap', gap, 'typing')
    expect(store.read().history.past).toHaveLength(0)
    expect(store.read().history.future.map(({ label }) => label)).toEqual(['charge'])
  })

  test('two typings with a rest between are two entries', () => {
    const store = aStore()
    put(store, 'gap 1', 'corner.stop.gap', 0.01, 'typing')
    closeGesture(store)
    put(store, 'gap 2', 'corner.stop.gap', 0.02, 'typing')
    expect(store.read().history.past.map(({ label }) => label)).toEqual(['gap 1', 'gap 2'])
  })

  test('it shows the axle and the setup where the edit was made', () => {
    const store = aStore()
    showAxle(store, 'front')
    put(store, 'gap', 'corner.stop.gap', 0.01)
    showAxle(store, 'rear')
    showSetup(store, 'proposed')
    undo(store)
    expect(store.read().view).toMatchObject({ axle: 'front', setup: 'as-found' })
  })

  test('the oldest entries are forgotten, never the plan', () => {
    let history = emptyHistory
    let plan = aPlan()
    for (let n = 1; n <= 310; n++) {
      const next = { ...plan, title: `Title ${n}` }
      history = record(history, plan, next, {
        label: `title ${n}`,
        where: { setup: 'as-found', axle: 'rear' },
        gesture: null,
      })
      plan = next
    }
    expect(history.past).toHaveLength(300)
    expect(history.past[0]!.label).toBe('title 11')
  })
})

describe('changes', () => {
  const json = fc.jsonValue({ maxDepth: 4 })
  const group = fc.dictionary(
    fc.string({ minLength: 1 }).filter(key => key !== '__proto__'),
    json,
  )

  test('lead from one value to the other and back, whatever they are', () => {
    fc.assert(
      fc.property(group, group, (from, to) => {
        const { patches, inverse } = changeBetween(from, to)
        expect(apply(from, patches)).toEqual(to)
        expect(apply(to, inverse)).toEqual(from)
      }),
      { seed: 3, numRuns: 300 },
    )
  })

  test('name only what differs', () => {
    const plan = aPlan()
    const store = aStore(plan)
    edit(store, 'two values', (_, { axle }) => {
      axle.track += 0.01
      axle.corner.shock.stroke += 0.01
    })
    const { patches } = changeBetween(plan, store.read().plan)
    expect(patches.map(({ path }) => path.join('.'))).toEqual([
      'setups.0.axles.1.track',
      'setups.0.axles.1.corner.shock.stroke',
    ])
  })
})
