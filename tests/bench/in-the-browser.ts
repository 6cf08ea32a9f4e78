import { readdirSync, readFileSync } from 'node:fs'
import { createServer } from 'node:http'
import type { AddressInfo } from 'node:net'
import path from 'node:path'
import { type BrowserContext, chromium, type Page } from '@playwright/test'
import { readPlan } from '../../core/plan/parse.ts'
import type { RideAsk } from '../../renderer/workers/messages.ts'
import { unpackBrowser } from '../e2e/browser.ts'
import { serveWindow } from '../e2e/served.ts'
import type { Benchmark, Sample } from './benchmark.ts'
import { watchKeys, watchRide, watchStart } from './watches.ts'

const root = path.join(import.meta.dirname, '../..')

/** One picture of a screen that shows 60 a second, ns. */
const FRAME = 1e9 / 60

/** Longest an empty page may have the lead over the drawn budget, ns. */
const HEAD_START = 300e6

/** The first presses are the program's own warming up. */
const warming = 20
const presses = 220
/** Trials begin half a second after each press, so there are fewer of these. */
const pressesInTrials = 60
const starts = 9
const rideStarts = 5
const coldStarts = 9

/** Longest somebody waits for the first ride, ns. */
const FIRST_RIDE = 100e6

/**
 * Runs work in the browser of the window tests. Pictures are made as soon as they are ready, not when a screen next asks for one, and
 * lines jump to where they go, so that one picture shows all of it.
 */
async function inBrowser<T>(work: (open: () => Promise<BrowserContext>) => Promise<T>): Promise<T> {
  const browser = await chromium.launch({
    ...(await unpackBrowser()),
    args: ['--disable-frame-rate-limit', '--disable-gpu-vsync'],
  })
  try {
    return await work(async () => {
      const context = await browser.newContext({ viewport: { width: 1440, height: 900 }, reducedMotion: 'reduce' })
      // Functions run from source by tsx call this to keep their names; the page has no such thing.
      await context.addInitScript('globalThis.__name = made => made')
      return context
    })
  } finally {
    await browser.close()
  }
}

const at = (values: readonly number[], share: number): number =>
  values.toSorted((a, b) => a - b)[Math.min(values.length - 1, Math.floor(values.length * share))]!

/**
 * Every press moves the engagement line by a sixteenth, and everything that hangs on it.
 * @param before is waited for before each press
 */
async function keyPresses(page: Page, presses: number, before: () => Promise<unknown>): Promise<number[]> {
  await page.locator('[data-field="corner.stop.gap"]').click()
  await page.evaluate(watchKeys)
  const taken: number[] = []
  for (let i = 0; i < presses; i++) {
    const shown = page.evaluate(
      () =>
        new Promise<number>(resolve => {
          window.tellShown = resolve
        }),
    )
    await before()
    await page.keyboard.press(i % 16 < 8 ? 'ArrowUp' : 'ArrowDown')
    taken.push(await shown)
  }
  return taken.slice(warming)
}

/** A page with a word on it, served as the window is. */
async function withEmptyPage<T>(work: (address: string) => Promise<T>): Promise<T> {
  const server = createServer((_, response) => response.setHeader('content-type', 'text/html').end('<p>empty</p>'))
  await new Promise<void>(resolve => server.listen(0, '127.0.0.1', resolve))
  try {
    return await work(`http://127.0.0.1:${(server.address() as AddressInfo).port}/`)
  } finally {
    server.close()
  }
}

async function drawn(context: BrowserContext, address: string, waitFor: string): Promise<number> {
  const page = await context.newPage()
  await page.addInitScript(watchStart, waitFor)
  await page.goto(address)
  const taken = await page.evaluate(() => window.drawnAfter)
  await page.close()
  return taken
}

/** Work in a window that is drawn. */
const inWindow = <T>(work: (page: Page) => Promise<T>): Promise<T> =>
  inBrowser(async open => {
    const served = await serveWindow()
    try {
      const page = await (await open()).newPage()
      await page.goto(served.address)
      await page.locator('[data-line="engagement"]').waitFor({ state: 'attached' })
      return await work(page)
    } finally {
      await served.end()
    }
  })

/** The slowest press of 20, over the time of one frame. */
const pressed = (presses: number, ready: (page: Page) => Promise<unknown>): Promise<Sample> =>
  inWindow(async page => {
    const taken = await keyPresses(page, presses, () => ready(page))
    return { unit: 'ns', value: at(taken, 0.95) * 1e6, reference: FRAME }
  })

/** Trials have begun, half a second after the last press, and are far from their end. */
async function trialsRun(page: Page): Promise<void> {
  await page.waitForTimeout(700)
  if (page.workers().length === 0) throw new Error('No worker runs trials.')
}

/** From the click on Terrain to the first ride drawn, in a window opened a moment ago. */
async function firstRide(page: Page): Promise<number> {
  await page.locator('[data-line="engagement"]').waitFor({ state: 'attached' })
  await page.waitForTimeout(3000)
  await page.evaluate(watchRide)
  const shown = page.evaluate(
    () =>
      new Promise<number>(resolve => {
        window.tellShown = resolve
      }),
  )
  await page.getByRole('navigation', { name: 'Pages' }).getByRole('button', { name: 'Terrain' }).click()
  return shown
}

/** Nine seconds of whoops for both axles of before and after, as the page of rides asks for them. */
function nineSeconds(): RideAsk[] {
  const found = readPlan(readFileSync(path.join(root, 'seeds/before-and-after.stopgap'), 'utf8'))
  if (!found.ok) throw new Error('The demo plan cannot be read.')
  const terrain = { id: 'nine', name: '', kind: 'whoops', spacing: 6, height: 0.3, speed: 10, count: 10 } as const
  return found.plan.setups.flatMap(({ axles }) =>
    axles.map(({ corner }) => ({ kind: 'ride', driven: { kind: 'corner', corner }, terrain, trace: true }) as const),
  )
}

/** The program of the workers that ride, as it is shipped. */
function rideProgram(): string {
  const folder = path.join(root, 'dist/renderer/assets')
  const file = readdirSync(folder).find(name => name.startsWith('ride-worker'))
  if (file === undefined) throw new Error('dist/renderer/assets has no program of rides. Run npm run build first.')
  return `./assets/${file}`
}

/** From two workers that do not exist yet to the last answer, ms. */
const fromNothing = (page: Page, program: string, asks: readonly RideAsk[]): Promise<number> =>
  page.evaluate(
    async ([program, asks]) => {
      const begun = performance.now()
      const one = (own: readonly unknown[]) =>
        new Promise<void>((resolve, reject) => {
          const worker = new Worker(new URL(program, location.href), { type: 'module' })
          let left = own.length
          worker.onerror = ({ message }) => reject(new Error(message))
          worker.onmessage = ({ data }) => {
            if (data.answer?.ridden?.ok !== true) reject(new Error('A ride did not get to its end.'))
            left -= 1
            if (left > 0) return
            worker.terminate()
            resolve()
          }
          for (const [id, ask] of own.entries()) worker.postMessage({ id, ask })
        })
      await Promise.all([one(asks.filter((_, i) => i % 2 === 0)), one(asks.filter((_, i) => i % 2 === 1))])
      return performance.now() - begun
    },
    [program, asks] as const,
  )

/** What the person at the window waits for, in the browser of the window tests. */
export const inTheBrowser: readonly Benchmark[] = [
  {
    name: 'key press to repainted window, slowest of 20',
    reference: 'one frame of a 60 Hz screen',
    budget: 1,
    measure: () => pressed(presses, async () => undefined),
  },
  {
    name: 'key press while trials run, to repainted window, slowest of 20',
    reference: 'one frame of a 60 Hz screen',
    budget: 1,
    measure: () => pressed(pressesInTrials, trialsRun),
  },
  {
    name: 'first ride result, from the click that asks for it',
    reference: 'the 100 ms it may have',
    budget: 1,
    measure: () =>
      inBrowser(async open => {
        const taken: number[] = []
        for (let i = 0; i < rideStarts; i++) {
          const served = await serveWindow()
          const context = await open()
          try {
            const page = await context.newPage()
            await page.goto(served.address)
            taken.push(await firstRide(page))
          } finally {
            await context.close()
            await served.end()
          }
        }
        return { unit: 'ns', value: at(taken, 0.5) * 1e6, reference: FIRST_RIDE }
      }),
  },
  {
    name: 'nine seconds for two setups and two axles, from workers not yet started to the last ride',
    reference: 'the 100 ms it may have',
    budget: 1,
    measure: () =>
      inWindow(async page => {
        await page.waitForTimeout(3000)
        const [program, asks] = [rideProgram(), nineSeconds()]
        const taken: number[] = []
        for (let i = 0; i < coldStarts; i++) taken.push(await fromNothing(page, program, asks))
        return { unit: 'ns', value: at(taken, 0.5) * 1e6, reference: FIRST_RIDE }
      }),
  },
  {
    name: 'start to drawn budget, more than an empty page',
    reference: 'the 300 ms it may have',
    budget: 1,
    measure: () =>
      withEmptyPage(emptyPage =>
        inBrowser(async open => {
          const [own, empty]: [number[], number[]] = [[], []]
          for (let i = 0; i < starts; i++) {
            const served = await serveWindow()
            const context = await open()
            try {
              empty.push(await drawn(context, emptyPage, 'p'))
              own.push(await drawn(context, served.address, '[data-line="engagement"]'))
            } finally {
              await context.close()
              await served.end()
            }
          }
          return { unit: 'ns', value: (at(own, 0.5) - at(empty, 0.5)) * 1e6, reference: HEAD_START }
        }),
      ),
  },
]
