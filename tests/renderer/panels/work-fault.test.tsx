// @vitest-environment happy-dom
import { act } from 'react'
import { expect, it, vi } from 'vitest'
import { WorkFault } from '../../../renderer/panels/notices/WorkFault.tsx'
import { show } from '../a-page.tsx'

it('a worker that broke is told in words, logged once with its own message, and leads to the log', async () => {
  const again = vi.fn()
  const { page, files, close } = show(
    <WorkFault
      className="told"
      what="The trials could not be run."
      about="trials"
      fault="x is undefined"
      onAgain={again}
    />,
  )
  files.host.answer({ fault: () => ({}), showLog: () => ({ shown: true, place: 'the log' }) })
  const asked = (name: string) => files.host.asked.filter(each => each.name === name).map(({ request }) => request)
  expect(page.textContent).toContain('The trials could not be run. Something in Stopgap failed')
  expect(page.textContent).not.toContain('undefined')
  expect(asked('fault')).toEqual([{ about: 'trials', message: 'x is undefined' }])
  const [tryAgain, log] = [...page.querySelectorAll('button')]
  await act(async () => tryAgain!.click())
  expect(again).toHaveBeenCalledOnce()
  expect(asked('showLog')).toEqual([])
  await act(async () => log!.click())
  expect(asked('showLog')).toHaveLength(1)
  expect(asked('fault')).toHaveLength(1)
  close()
})
