import { startTransition } from 'react'
import { createRoot } from 'react-dom/client'
import { RunsContext, ridesAhead } from '../panels/terrain/runs-context.ts'
import type { Files } from '../state/files.ts'
import type { TerrainRuns } from '../state/terrain-runs.ts'
import { WindowContext } from '../window-context.ts'
import { TerrainPage } from './TerrainPage.tsx'

/** Whoever types or points is not disturbed: hands rest for this long first, ms. */
const QUIET = 500
/** Rides that take longer than this are not waited for, ms. */
const PATIENCE = 5000

/** A page as large as in a small window; what it says is heard by nobody, and nothing in it can be reached. */
const OUT_OF_SIGHT = 'position:fixed;inset:0 auto auto 0;width:800px;height:600px;visibility:hidden;contain:strict'

const TOUCHES = ['keydown', 'pointerdown', 'wheel'] as const

const handsRest = (): Promise<void> =>
  new Promise(resolve => {
    const rested = (): void => {
      for (const touch of TOUCHES) removeEventListener(touch, again, true)
      resolve()
    }
    let timer = setTimeout(rested, QUIET)
    const again = (): void => {
      clearTimeout(timer)
      timer = setTimeout(rested, QUIET)
    }
    for (const touch of TOUCHES) addEventListener(touch, again, { capture: true, passive: true })
  })

const ridden = (runs: TerrainRuns): Promise<void> =>
  new Promise(resolve => {
    const over = (): void => {
      clearTimeout(late)
      unfollow()
      resolve()
    }
    const late = setTimeout(over, PATIENCE)
    const unfollow = runs.subscribe(() => {
      const { rides, settled, fault } = runs.read()
      if (fault !== null || (settled && rides.length > 0)) over()
    })
  })

/** A program is as quick as it will be after a few rounds. */
const ROUNDS = 3

const idle = (): Promise<unknown> => new Promise(resolve => requestIdleCallback(resolve))

/**
 * Draws the page of rides a few times out of sight, with the rides it would show: those are remembered, and workers and page have then done before
 * what is asked of them at the first click, which takes a program several times as long as any later time. Done once, while the window has
 * nothing else to do; what goes wrong here goes wrong again, and is told, when the page is shown.
 */
export async function practise(files: Files): Promise<void> {
  await handsRest()
  const { plan, view } = files.store.read()
  if (plan.terrains.length === 0 || view.page === 'terrain') return
  const host = document.createElement('div')
  host.style.cssText = OUT_OF_SIGHT
  host.inert = true
  host.ariaHidden = 'true'
  const shadow = host.attachShadow({ mode: 'closed' })
  document.body.append(host)
  for (let round = 0; round < ROUNDS && files.store.read().view.page !== 'terrain'; round += 1)
    await draw(files, shadow)
  host.remove()
}

/** Draws the page once, and takes it away again. */
async function draw(files: Files, place: ShadowRoot): Promise<void> {
  const root = createRoot(place, { onUncaughtError: () => undefined })
  const runs = ridesAhead()
  const known = ridden(runs)
  startTransition(() =>
    root.render(
      <WindowContext value={files}>
        <RunsContext value={runs}>
          <TerrainPage />
        </RunsContext>
      </WindowContext>,
    ),
  )
  await known
  await idle()
  root.unmount()
}
