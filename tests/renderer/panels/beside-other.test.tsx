// @vitest-environment happy-dom
import { act } from 'react'
import { expect, test } from 'vitest'
import { BesideOther } from '../../../renderer/panels/findings/BesideOther.tsx'
import { compareWith, showAxle } from '../../../renderer/state/view.ts'
import { seed } from '../../seeds/seed.ts'
import { show } from '../a-page.tsx'

test('what the compared setup has otherwise stands beside the findings, and leads to all of it', () => {
  const { page, find, files, close } = show(<BesideOther />, seed('before-and-after.stopgap'))
  act(() => showAxle(files.store, 'rear'))
  expect(page.textContent).toBe(
    'Proposed: spacer inside the stop 1 in, stroke of the stop 2 1/2 in, gap 2 1/4 in, 2 more. Before and after',
  )
  act(() => find('button').click())
  expect(files.store.read().view).toMatchObject({ page: 'changes', changes: 'compare' })
  act(() => showAxle(files.store, 'front'))
  expect(page.textContent).toBe('Proposed: the same on this axle. Before and after')
  act(() => compareWith(files.store, null))
  expect(page.textContent).toBe('')
  close()
})
