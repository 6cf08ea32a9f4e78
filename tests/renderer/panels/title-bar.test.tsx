// @vitest-environment happy-dom
import { act } from 'react'
import { afterEach, describe, expect, test } from 'vitest'
import { fileParts, shownTitle } from '../../../renderer/panels/title-bar/file-line.ts'
import { SetupSwitch, setupsInBar } from '../../../renderer/panels/title-bar/SetupSwitch.tsx'
import { commandOf } from '../../../renderer/shortcuts.ts'
import { comparedSetup, shownSetup } from '../../../renderer/state/selectors.ts'
import { type Shown, show } from '../a-page.tsx'
import { aPlan } from '../a-plan.ts'
import { stateOf } from '../some-files.ts'

const { document: none } = stateOf(aPlan())
const now = new Date(2026, 0, 2, 12, 0)

describe('the line under the name', () => {
  const inFile = { ...none, name: 'Mule', token: 'x', savedAt: new Date(2026, 0, 2, 10, 42).toISOString() }

  test('says the file, and whether the plan is in it', () => {
    expect(fileParts({ ...none, token: null }, true, now)).toEqual(['not in a file yet'])
    expect(fileParts(inFile, true, now)).toEqual(['Mule.stopgap', 'not saved'])
    expect(fileParts(inFile, false, now)).toEqual(['Mule.stopgap', expect.stringMatching(/^saved .*10.42/)])
    expect(fileParts({ ...inFile, saving: true }, true, now)).toEqual(['saving'])
  })

  test('gives the day once it is not today', () => {
    expect(fileParts(inFile, false, new Date(2026, 4, 2))[1]).toMatch(/^saved .*2026/)
  })

  test('names a plan without a title', () => {
    expect(shownTitle('  ')).toBe('Plan without a title')
    expect(shownTitle('Mule')).toBe('Mule')
  })
})

describe('setups', () => {
  let shown: Shown | undefined
  afterEach(() => shown?.close())

  test('are all in the bar up to three; then the baseline, the shown and the compared are', () => {
    const setups = ['a', 'b', 'c', 'd', 'e'].map(id => ({ id, name: id, axles: [] as never[] }))
    const ids = (shownId: string, compared: string | null) =>
      setupsInBar(setups, shownId, compared)
        .map(({ id }) => id)
        .join('')
    expect(ids('a', null)).toBe('abc')
    expect(ids('e', 'd')).toBe('ade')
    expect(ids('d', 'a')).toBe('abd')
  })

  test('carry the line they are drawn with, and swap when the other is shown', () => {
    shown = show(<SetupSwitch />)
    const dashed = () =>
      [...shown!.page.querySelectorAll('.switch label')].map(
        label => label.querySelector('path')?.getAttribute('stroke-dasharray') ?? 'solid',
      )
    expect(dashed()).toEqual(['solid', '4 3'])
    act(() => shown!.page.querySelectorAll<HTMLInputElement>('.switch input')[1]!.click())
    expect(dashed()).toEqual(['4 3', 'solid'])
    const state = shown.files.store.read()
    expect([shownSetup(state).setup.id, comparedSetup(state)?.setup.id]).toEqual(['proposed', 'as-found'])
  })

  test('+ adds a copy', () => {
    shown = show(<SetupSwitch />)
    act(() => shown!.find<HTMLButtonElement>('[aria-label="Add a setup"]').click())
    expect([...shown.page.querySelectorAll('.switch label')].map(({ textContent }) => textContent)).toEqual([
      'As found',
      'Proposed',
      'Proposed 2',
    ])
  })
})

test.each([
  [{ key: 's', ctrlKey: true }, false, 'save'],
  [{ key: 'S', ctrlKey: true, shiftKey: true }, false, 'saveAs'],
  [{ key: 'z', ctrlKey: true }, false, 'undo'],
  [{ key: 'Z', ctrlKey: true, shiftKey: true }, false, 'redo'],
  [{ key: 'y', ctrlKey: true }, false, 'redo'],
  [{ key: 'z', metaKey: true }, true, 'undo'],
  [{ key: 'y', metaKey: true }, true, null],
  [{ key: 'z', metaKey: true }, false, null],
  [{ key: 's', ctrlKey: true, altKey: true }, false, null],
  [{ key: 'o' }, false, null],
] as const)('%o on a Mac %s is %s', (keys, mac, command) => {
  const none = { shiftKey: false, altKey: false, ctrlKey: false, metaKey: false }
  expect(commandOf({ ...none, ...keys }, mac)).toBe(command)
})
