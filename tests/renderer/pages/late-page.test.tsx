// @vitest-environment happy-dom
import { act } from 'react'
import { createRoot, type Root } from 'react-dom/client'
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest'
import { LatePage } from '../../../renderer/pages/LatePage.tsx'
import { type Later, later } from '../../../renderer/pages/later.ts'
import { PageGuard } from '../../../renderer/panels/notices/PageGuard.tsx'

let root: Root
beforeEach(() => {
  Object.assign(globalThis, { IS_REACT_ACT_ENVIRONMENT: true })
  root = createRoot(document.body.appendChild(document.createElement('div')))
})
afterEach(async () => {
  await act(async () => root.unmount())
  document.body.replaceChildren()
})

const onFault = vi.fn()
const Sheets = () => <main>Sheets</main>

const draw = (page: Later, visit: number) =>
  act(async () =>
    root.render(
      <PageGuard key={visit} attempt={null} onUndo={() => undefined} onFault={onFault}>
        <LatePage page={page} />
      </PageGuard>,
    ),
  )

describe('a page fetched later', () => {
  it('has its place held, as busy, until it is here', async () => {
    let arrive = (_page: typeof Sheets) => {}
    const page = later(
      () =>
        new Promise(resolve => {
          arrive = resolve
        }),
    )
    await draw(page, 1)
    expect(document.querySelector('main')?.getAttribute('aria-busy')).toBe('true')
    await act(async () => arrive(Sheets))
    expect(document.body.textContent).toBe('Sheets')
  })

  it('is fetched once, and when it was fetched ahead it is drawn with nothing between', async () => {
    const fetchPage = vi.fn(async () => Sheets)
    const page = later(fetchPage)
    await page.load()
    const shown: (string | null)[] = []
    const watch = new MutationObserver(() => shown.push(document.body.textContent))
    watch.observe(document.body, { subtree: true, childList: true })
    await draw(page, 1)
    await draw(page, 2)
    watch.disconnect()
    expect(new Set(shown)).toEqual(new Set(['Sheets']))
    expect(fetchPage).toHaveBeenCalledTimes(1)
  })

  it('is told when it cannot be fetched, and tried again at the next visit', async () => {
    const fetchPage = vi.fn(async () => Sheets).mockRejectedValueOnce(new Error('the host is away'))
    const page = later(fetchPage)
    const quiet = vi.spyOn(console, 'error').mockImplementation(() => undefined)
    await draw(page, 1)
    expect(document.querySelector('[role=alert]')?.textContent).toContain('failed that should not have')
    expect(onFault.mock.calls).toEqual([[new Error('the host is away')]])
    quiet.mockRestore()
    await draw(page, 2)
    expect(document.body.textContent).toBe('Sheets')
  })
})
