import { describe, expect, test } from 'vitest'
import { formatPlan } from '../../../core/plan/file-text.ts'
import type { Reply } from '../../../electron/contract/contract.ts'
import type { OpenDocument } from '../../../electron/contract/shapes.ts'
import { unsaved, withDocument, withOpened } from '../../../renderer/state/documents.ts'
import { put, undo } from '../../../renderer/state/edit.ts'
import { firstState } from '../../../renderer/state/first-state.ts'
import { historyText } from '../../../renderer/state/kept-history.ts'
import { createStore } from '../../../renderer/state/store.ts'
import { aPlan } from '../a-plan.ts'
import { aStore, stateOf } from '../some-files.ts'

const text = formatPlan(aPlan())

const aDocument = (change: Partial<OpenDocument> = {}): OpenDocument => ({
  key: 'key-of-a-document',
  token: 'aaaaaaaaaaaaaaaaaaaaaa',
  name: 'Mule',
  text,
  basis: '0'.repeat(64),
  savedText: text,
  savedAt: '2026-01-02T10:42:00.000Z',
  recovered: false,
  ...change,
})

const aStart = (document: OpenDocument): Reply<'start'> => ({
  document,
  recents: [],
  demos: [],
  settings: { theme: 'dark' },
  about: { version: '1', host: 'browser' },
})

const about = (state: { notices: readonly { about: string }[] }) => state.notices.map(notice => notice.about)

describe('a document', () => {
  test('just opened is saved, changed it is not, and undone it is saved again', () => {
    const store = createStore(withDocument(stateOf(aPlan()), aDocument(), undefined))
    expect(unsaved(store.read())).toBe(false)
    put(store, 'gap', 'corner.stop.gap', 0.01)
    expect(unsaved(store.read())).toBe(true)
    undo(store)
    expect(unsaved(store.read())).toBe(false)
  })

  test('written by hand with other spaces and order is saved all the same', () => {
    const shuffled = JSON.stringify({ notes: '', ...(JSON.parse(text) as object) })
    const state = withDocument(stateOf(aPlan()), aDocument({ text: shuffled, savedText: text }), undefined)
    expect(unsaved(state)).toBe(false)
  })

  test('that is in no file yet is not saved', () => {
    expect(unsaved(withDocument(stateOf(aPlan()), aDocument({ token: null, savedText: null }), undefined))).toBe(true)
  })

  test('brought back says so and offers the way back to the file', () => {
    const kept = formatPlan(
      aPlan(plan => {
        plan.title = 'Changed'
      }),
    )
    const state = withDocument(stateOf(aPlan()), aDocument({ text: kept, recovered: true }), undefined)
    expect(state.plan.title).toBe('Changed')
    expect(state.notices).toMatchObject([{ about: 'recovered', severity: 'news' }])
    expect(state.notices[0]!.steps.map(({ remedy }) => remedy.kind)).toEqual(['save', 'backToFile'])
  })

  test('brings its undo history; a history of another plan is told of and left', () => {
    const worked = aStore()
    put(worked, 'gap', 'corner.stop.gap', 0.01)
    const { plan, history } = worked.read()
    const kept = aDocument({ text: formatPlan(plan), history: historyText(history) })
    expect(withDocument(stateOf(aPlan()), kept, undefined).history.past).toEqual(history.past)
    const torn = withDocument(stateOf(aPlan()), { ...kept, history: '{"version":1' }, undefined)
    expect(torn.history.past).toEqual([])
    expect(about(torn)).toEqual(['history'])
  })
})

test('what the host could not open is told, with the last good copy where there is one', () => {
  const state = withOpened(stateOf(aPlan()), {
    kind: 'failed',
    reason: 'It is damaged.',
    rescue: 'bbbbbbbbbbbbbbbbbbbbbb',
  })
  expect(state.notices[0]).toMatchObject({
    text: 'It is damaged.',
    steps: [{ remedy: { kind: 'openFile', token: 'bbbbbbbbbbbbbbbbbbbbbb' } }, { remedy: { kind: 'open' } }],
  })
})

describe('the first state', () => {
  test('shows the document, its last axle, and the second setup beside the first', () => {
    const state = firstState(aStart(aDocument()))
    expect(state.plan.title).toBe('Test mule')
    expect(state.view).toMatchObject({ page: 'travel', axle: 'rear', setup: 'as-found', compared: 'proposed' })
    expect(state.settings.theme).toBe('dark')
  })
})
