import { type Browser, type CDPSession, chromium, type Page } from '@playwright/test'
import { unpackBrowser } from '../e2e/browser.ts'
import { serveWindow } from '../e2e/served.ts'

/** The built window in a browser, and what it takes of the machine, its workers included. */
export interface OpenedWindow {
  readonly page: Page
  /** Bytes in use once everything that can be thrown away has been: objects, elements and tables of numbers, of the page and its workers. */
  heap(): Promise<number>
  /** Processor time taken so far by the page and its workers, ns. */
  processor(): Promise<number>
  /** Settles once next to nothing is done any more. */
  calm(): Promise<void>
}

export async function inOpenedWindow<T>(work: (window: OpenedWindow) => Promise<T>): Promise<T> {
  const browser = await chromium.launch(await unpackBrowser())
  const served = await serveWindow()
  try {
    const page = await browser.newPage({ viewport: { width: 1440, height: 900 } })
    await page.goto(served.address)
    await page.locator('[data-line="engagement"]').waitFor({ state: 'attached' })
    return await work(await watched(browser, page))
  } finally {
    await browser.close()
    await served.end()
  }
}

async function watched(browser: Browser, page: Page): Promise<OpenedWindow> {
  const own = await page.context().newCDPSession(page)
  const workers = await workersOf(own)
  const whole = await browser.newBrowserCDPSession()
  const processor = async (): Promise<number> => {
    const { processInfo } = await whole.send('SystemInfo.getProcessInfo')
    return processInfo.filter(({ type }) => type === 'renderer').reduce((sum, { cpuTime }) => sum + cpuTime, 0) * 1e9
  }
  return {
    page,
    processor,
    heap: async () => {
      const asks: Ask[] = [(method: string) => own.send(method as 'Runtime.getHeapUsage'), ...workers()]
      let sum = 0
      for (const ask of asks) {
        await ask('HeapProfiler.collectGarbage')
        const used = (await ask('Runtime.getHeapUsage')) as HeapUsage | null
        sum += (used?.usedSize ?? 0) + (used?.embedderHeapUsedSize ?? 0) + (used?.backingStorageSize ?? 0)
      }
      return sum
    },
    calm: async () => {
      for (;;) {
        const before = await processor()
        await page.waitForTimeout(1000)
        if ((await processor()) - before < 30e6) return
      }
    },
  }
}

interface HeapUsage {
  readonly usedSize: number
  readonly embedderHeapUsedSize?: number
  readonly backingStorageSize?: number
}

type Ask = (method: string) => Promise<unknown>

/** The workers of a page that are there when asked, each as something that can be asked; null from one that has ended meanwhile. */
async function workersOf(own: CDPSession): Promise<() => Ask[]> {
  const there = new Map<string, Ask>()
  const waiting = new Map<number, { of: string; hear: (result: unknown) => void }>()
  let last = 0
  own.on('Target.attachedToTarget', ({ sessionId, targetInfo }) => {
    if (targetInfo.type !== 'worker') return
    there.set(sessionId, async method => {
      if (!there.has(sessionId)) return null
      const id = ++last
      const answered = new Promise<unknown>(hear => waiting.set(id, { of: sessionId, hear }))
      const sent = own.send('Target.sendMessageToTarget', { sessionId, message: JSON.stringify({ id, method }) })
      return Promise.race([
        answered,
        sent.then(
          () => answered,
          () => null,
        ),
      ])
    })
  })
  own.on('Target.detachedFromTarget', ({ sessionId }) => {
    there.delete(sessionId)
    for (const { of, hear } of waiting.values()) if (of === sessionId) hear(null)
  })
  own.on('Target.receivedMessageFromTarget', ({ message }) => {
    const { id, result } = JSON.parse(message) as { id?: number; result?: unknown }
    if (id !== undefined) waiting.get(id)?.hear(result)
  })
  await own.send('Target.setAutoAttach', { autoAttach: true, waitForDebuggerOnStart: false, flatten: false })
  return () => [...there.values()]
}
