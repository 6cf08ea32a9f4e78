// @vitest-environment happy-dom
import { act } from 'react'
import { expect, test, vi } from 'vitest'
import { column } from '../../../renderer/panels/measurements/late-column.ts'
import { Measurements } from '../../../renderer/panels/measurements/Measurements.tsx'
import { show } from '../a-page.tsx'

test('fields that cannot be fetched are told of, and are there at another try', async () => {
  const fetching = vi.spyOn(column, 'load').mockRejectedValueOnce(new Error('Nothing can be fetched.'))
  const shown = show(<Measurements />)
  shown.files.host.answer({ fault: () => ({}) })
  expect(shown.page.querySelector('[aria-busy]')).not.toBeNull()
  await act(async () => undefined)
  expect(shown.find('[role="alert"]').textContent).toContain('could not be fetched')
  expect(shown.files.host.asked).toMatchObject([{ name: 'fault', request: { about: 'measurements' } }])
  fetching.mockResolvedValueOnce(() => <p className="column">Every field</p>)
  await act(async () => shown.find('button').click())
  expect(shown.find('.column').textContent).toBe('Every field')
  expect(shown.page.querySelector('[role="alert"]')).toBeNull()
  shown.close()
})
