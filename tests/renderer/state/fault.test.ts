import { expect, it } from 'vitest'
import { HostGone, HostRefused } from '../../../renderer/host.ts'
import { guarded } from '../../../renderer/state/files.ts'
import { someFiles } from '../some-files.ts'

const failing = async (error: unknown) => {
  const files = someFiles(undefined, { fault: () => ({}) })
  const reply = await guarded(files, 'open', async () => {
    throw error
  })
  const { notices, hostGone } = files.store.read()
  const logged = files.host.asked.filter(({ name }) => name === 'fault').map(({ request }) => request)
  return { reply, notices, gone: hostGone, logged }
}

it('what the host refuses is a sentence for the person, and no fault', async () => {
  const { reply, notices, logged } = await failing(new HostRefused('There is no room left on the disk.'))
  expect(reply).toBeNull()
  expect(notices).toMatchObject([{ about: 'open', text: 'There is no room left on the disk.', steps: [] }])
  expect(logged).toEqual([])
})

it('a fault of the program is told in words and leads to the log, which has its message', async () => {
  const { notices, logged } = await failing(new TypeError("Cannot read properties of undefined (reading 'gap')"))
  expect(notices).toMatchObject([{ about: 'open', steps: [{ label: 'Show log', remedy: { kind: 'log' } }] }])
  expect(notices[0]?.text).toMatch(/failed that should not have\. The plan on screen is as it was\.$/)
  expect(JSON.stringify(notices)).not.toMatch(/undefined|TypeError/)
  expect(logged).toEqual([{ about: 'open', message: "TypeError: Cannot read properties of undefined (reading 'gap')" }])
})

it('a host that has ended is told of as that', async () => {
  const { notices, gone, logged } = await failing(new HostGone())
  expect([notices, gone, logged]).toEqual([[], true, []])
})
