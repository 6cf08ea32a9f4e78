import { expect, test } from 'vitest'
import { formatPlan } from '../../../core/plan/file-text.ts'
import { readPlan } from '../../../core/plan/parse.ts'
import { HostGone, HostRefused } from '../../../renderer/host.ts'
import { unsaved, withShared } from '../../../renderer/state/documents.ts'
import { put } from '../../../renderer/state/edit.ts'
import { openDropped, openToken, startPlan, takeTheirs } from '../../../renderer/state/opening.ts'
import { take } from '../../../renderer/state/remedies.ts'
import { save, saveAs, saveIn } from '../../../renderer/state/saving.ts'
import { aPlan } from '../a-plan.ts'
import { type Answers, someFiles } from '../some-files.ts'

const saved = {
  kind: 'saved',
  key: 'key-of-the-file',
  token: 'cccccccccccccccccccccc',
  name: 'Mule',
  basis: '1'.repeat(64),
  savedAt: '2026-01-02T10:42:00.000Z',
} as const

/** Files with a document that is in a file, changed once. */
function changed(answers: Answers) {
  const files = someFiles(aPlan(), answers)
  const { store } = files
  store.write({ ...store.read(), document: { ...store.read().document, token: saved.token, basis: '0'.repeat(64) } })
  put(store, 'gap', 'corner.stop.gap', 0.01)
  return files
}

test('saving sends the plan on screen, and from then on the document goes by what came back', async () => {
  const files = changed({ save: () => saved })
  await save(files)
  const sent = files.host.asked.find(({ name }) => name === 'save')!.request as { text: string; replace: boolean }
  const read = readPlan(sent.text)
  expect(read.ok && read.plan).toEqual(files.store.read().plan)
  expect(sent.replace).toBe(false)
  expect(files.store.read().document).toMatchObject({ key: saved.key, basis: saved.basis, saving: false })
  expect(unsaved(files.store.read())).toBe(false)
})

test('what is typed while it is being saved is not taken for saved', async () => {
  const files = changed({
    save: () => {
      put(files.store, 'gap', 'corner.stop.gap', 0.02)
      return saved
    },
  })
  await save(files)
  expect(unsaved(files.store.read())).toBe(true)
})

test('a plan in no file asks where; a host without a dialog gets the window’s own chooser', async () => {
  const files = someFiles(aPlan(), { saveAs: () => ({ kind: 'choose' }) })
  await save(files)
  expect(files.store.read().view.dialog).toEqual({ kind: 'choose', purpose: 'save' })
  files.host.answer({ saveIn: ({ replace }) => (replace ? saved : { kind: 'exists', name: 'Mule' }) })
  const where = { folder: 'dddddddddddddddddddddd', name: 'Mule', replace: false }
  expect(await saveIn(files, where)).toBe('exists')
  expect(await saveIn(files, { ...where, replace: true })).toBe('saved')
  expect(files.store.read().view.dialog).toBeNull()
  expect(files.store.read().document.token).toBe(saved.token)
})

test('a file somebody else changed is not replaced before the person says so', async () => {
  const files = changed({
    save: ({ replace }) => (replace ? saved : { kind: 'changed', savedAt: saved.savedAt, savedText: '' }),
  })
  await save(files)
  expect(files.store.read().view.dialog).toEqual({ kind: 'changed', savedAt: saved.savedAt })
  expect(unsaved(files.store.read())).toBe(true)
  await save(files, true)
  expect(files.store.read().view.dialog).toBeNull()
  expect(unsaved(files.store.read())).toBe(false)
})

test('theirs is opened from the file, and mine is kept for the host to put aside', async () => {
  const files = changed({ openFile: () => ({ kind: 'failed', reason: 'Gone.' }) })
  await takeTheirs(files)
  expect(files.host.asked.map(({ name }) => name)).toEqual(['keep', 'openFile'])
})

test('a save that fails says why, offers another place, and that place is asked for', async () => {
  const files = changed({
    save: () => ({ kind: 'failed', reason: 'The stick is full.' }),
    saveAs: () => ({ kind: 'cancelled' }),
  })
  await save(files)
  const notice = files.store.read().notices[0]!
  expect(notice).toMatchObject({ about: 'save', text: 'The stick is full.', steps: [{ remedy: { kind: 'saveAs' } }] })
  await take(files, notice.about, notice.steps[0]!.remedy)
  expect(files.host.asked.at(-1)!.name).toBe('saveAs')
  expect(files.store.read().notices).toEqual([])
  expect(files.store.read().document.saving).toBe(false)
})

test('a host that refuses is told of; a host that is gone is told of for good', async () => {
  const files = changed({
    save: () => {
      throw new HostRefused('There is no room left on the disk.')
    },
  })
  await save(files)
  expect(files.store.read().notices).toMatchObject([{ about: 'save', text: 'There is no room left on the disk.' }])
  files.host.answer({
    save: () => {
      throw new HostGone()
    },
  })
  await save(files)
  expect(files.store.read().hostGone).toBe(true)
})

test('a second save while one is under way is not sent', async () => {
  let release: () => void = () => undefined
  const files = changed({
    save: async () => {
      await new Promise<void>(resolve => {
        release = resolve
      })
      return saved
    },
  })
  const first = save(files)
  await save(files)
  release()
  await first
  expect(files.host.asked.filter(({ name }) => name === 'save')).toHaveLength(1)
})

test('saving as, cancelled, changes nothing', async () => {
  const files = changed({ saveAs: () => ({ kind: 'cancelled' }) })
  const before = files.store.read()
  await saveAs(files)
  expect(files.store.read()).toEqual({ ...before, history: { ...before.history, gesture: null } })
})

test('opening something else keeps what is on screen first', async () => {
  const files = changed({ openFile: () => ({ kind: 'failed', reason: 'Gone.' }) })
  await openToken(files, saved.token)
  expect(files.host.asked.map(({ name }) => name)).toEqual(['keep', 'openFile'])
})

test('a dropped file that is no plan leaves the plan and says why', async () => {
  const files = changed({})
  const { plan } = files.store.read()
  await openDropped(files, new File(['x'], 'photo.jpg'))
  expect(files.store.read().plan).toBe(plan)
  expect(files.store.read().notices[0]!.text).toBe('Nothing was dropped.')
})

test('what can be read of a dropped file is shown when it is asked for, and kept', async () => {
  const files = changed({})
  const text = formatPlan(
    aPlan(plan => {
      plan.title = 'Torn'
    }),
  )
  const document = {
    key: 'k'.repeat(8),
    token: null,
    name: 'Torn',
    text,
    basis: null,
    savedText: null,
    savedAt: null,
    recovered: false,
  }
  files.host.dropped.answer = {
    kind: 'failed',
    reason: 'It is torn.',
    instead: { kind: 'document', document, report: 'A load was lost.' },
  }
  await openDropped(files, new File(['x'], 'Torn.stopgap'))
  expect(files.store.read().plan.title).not.toBe('Torn')
  const [notice] = files.store.read().notices
  expect(notice?.steps.map(({ label }) => label)).toEqual(['Open what can be read of it', 'Open another plan'])
  await take(files, notice!.about, notice!.steps[0]!.remedy)
  expect(files.store.read().plan.title).toBe('Torn')
  expect(files.store.read().notices).toMatchObject([{ about: 'report', text: 'A load was lost.' }])
  await files.keeper.flush()
  expect(files.host.asked.at(-1)).toMatchObject({ name: 'keep', request: { name: 'Torn', token: null } })
})

test('a plan just started is in no file and is kept although nobody changed it yet', async () => {
  const files = someFiles()
  await startPlan(
    files,
    aPlan(plan => {
      plan.title = 'Fresh'
    }),
  )
  await files.keeper.flush()
  const kept = files.host.asked.filter(({ name }) => name === 'keep')
  expect(kept).toHaveLength(1)
  expect(kept[0]!.request).toMatchObject({ name: 'Fresh', token: null, basis: null })
})

test('a window is told that another one has its plan, until it goes on under another name; not of a plan it left', async () => {
  const files = changed({ save: () => saved, saveAs: () => ({ ...saved, key: 'another-key' }) })
  const { store } = files
  const about = () => store.read().notices.map(notice => notice.about)
  store.write(withShared(store.read(), 'a-plan-it-left'))
  expect(about()).toEqual([])
  store.write({ ...store.read(), document: { ...store.read().document, key: saved.key } })
  store.write(withShared(store.read(), saved.key))
  expect(store.read().notices).toMatchObject([
    {
      severity: 'news',
      text: expect.stringContaining('in another window too'),
      steps: [{ remedy: { kind: 'saveAs' } }],
    },
  ])
  await save(files)
  expect(about()).toEqual(['shared'])
  await saveAs(files)
  expect(about()).toEqual([])
})
