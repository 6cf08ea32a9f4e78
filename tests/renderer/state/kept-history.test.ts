import { expect, test } from 'vitest'
import { put, undo } from '../../../renderer/state/edit.ts'
import { historyText, readHistory } from '../../../renderer/state/kept-history.ts'
import { isPlan } from '../../../renderer/state/plan-checks.ts'
import { aPlan } from '../a-plan.ts'
import { aStore } from '../some-files.ts'

function worked() {
  const store = aStore()
  put(store, 'gap 1', 'corner.stop.gap', 0.01)
  put(store, 'gap 2', 'corner.stop.gap', 0.02)
  put(store, 'charge', 'corner.stop.charge', 9e5)
  undo(store)
  return store.read()
}

test('undo outlives the window: the history kept as text is the same history', () => {
  const { history, plan } = worked()
  expect(readHistory(historyText(history), plan, isPlan)).toEqual(history)
})

test('a history that does not fit the plan is not taken', () => {
  const text = historyText(worked().history)
  const other = aPlan(plan => {
    plan.setups = [{ ...plan.setups[0]!, axles: [plan.setups[0]!.axles[0]!] }]
  })
  expect(readHistory(text, other, isPlan)).toBeNull()
})

test.each([
  ['text that is not JSON', '{'],
  ['another version', '{"version":2,"past":[],"future":[]}'],
  ['entries without patches', '{"version":1,"past":[{"label":"x"}],"future":[]}'],
  [
    'a patch that reaches for the prototype',
    JSON.stringify({
      version: 1,
      past: [
        {
          label: 'x',
          where: { setup: 'as-found', axle: 'rear' },
          patches: [],
          inverse: [{ op: 'replace', path: ['__proto__', 'title'], value: '' }],
        },
      ],
      future: [],
    }),
  ],
  [
    'a step to something that is no plan',
    JSON.stringify({
      version: 1,
      past: [
        {
          label: 'x',
          where: { setup: 'as-found', axle: 'rear' },
          patches: [],
          inverse: [{ op: 'replace', path: ['units'], value: 'cubits' }],
        },
      ],
      future: [],
    }),
  ],
])('%s is not taken', (_, text) => {
  expect(readHistory(text, aPlan(), isPlan)).toBeNull()
})
