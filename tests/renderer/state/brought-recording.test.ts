// @vitest-environment happy-dom
import { beforeEach, expect, test, vi } from 'vitest'
import { askForRecording, looksLikeRecording, takeRecordings } from '../../../renderer/state/brought-recording.ts'
import { someFiles } from '../some-files.ts'

const token = 'cccccccccccccccccccccc'

/** Whether somebody has just pressed something in the page. */
const pressed = (isActive: boolean) => vi.stubGlobal('navigator', { userActivation: { isActive } })

beforeEach(() => () => vi.unstubAllGlobals())

test('from a menu outside the page the host’s dialog is asked, and what it gives is taken by the page of recordings', async () => {
  pressed(false)
  const files = someFiles(undefined, {
    openRecording: () => ({ kind: 'recording', token, name: 'pit.csv', size: 8 }),
    recordingPiece: ({ at }) => ({ kind: 'piece', base64: btoa('time;mm\n'.slice(at, at + 5)) }),
  })
  await askForRecording(files)
  expect(files.store.read().view.page).toBe('logs')
  const taken: File[] = []
  takeRecordings(files.store, file => taken.push(file))
  expect(taken.map(({ name }) => name)).toEqual(['pit.csv'])
  expect(await taken[0]!.text()).toBe('time;mm\n')
})

test('nothing changes when none is chosen; why one cannot be read is told, and the page stays', async () => {
  pressed(false)
  const files = someFiles(undefined, { openRecording: () => ({ kind: 'cancelled' }) })
  const before = files.store.read()
  await askForRecording(files)
  expect(files.store.read()).toBe(before)
  files.host.answer({ openRecording: () => ({ kind: 'failed', reason: 'The stick is gone.' }) })
  await askForRecording(files)
  files.host.answer({
    openRecording: () => ({ kind: 'recording', token, name: 'pit.csv', size: 8 }),
    recordingPiece: () => ({ kind: 'failed', reason: 'The disk has a fault.' }),
  })
  expect(files.store.read().notices.map(({ text }) => text)).toEqual(['The stick is gone.'])
  await askForRecording(files)
  expect(files.store.read().notices.map(({ text }) => text)).toEqual(['The disk has a fault.'])
  expect(files.store.read().view.page).toBe(before.view.page)
})

test('a host without a dialog leaves it to the page of recordings', async () => {
  pressed(false)
  const files = someFiles(undefined, { openRecording: () => ({ kind: 'choose' }) })
  await askForRecording(files)
  expect(files.store.read().view.page).toBe('logs')
})

test('where somebody pressed something in the page, it asks itself', async () => {
  pressed(true)
  const files = someFiles()
  const click = vi.spyOn(HTMLInputElement.prototype, 'click')
  await askForRecording(files)
  const input = click.mock.contexts[0] as HTMLInputElement
  expect(input.accept).toContain('.csv')
  expect(files.host.asked).toEqual([])
  Object.defineProperty(input, 'files', { value: [new File(['time'], 'own.csv')] })
  input.dispatchEvent(new Event('change'))
  expect(files.store.read().view.page).toBe('logs')
})

test.each([
  ['run.CSV', true],
  ['run.log', true],
  ['car.stopgap', false],
  ['csv', false],
])('%s may be a recording: %s', (name, may) => expect(looksLikeRecording(new File([], name))).toBe(may))
