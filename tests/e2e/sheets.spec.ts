import { execFile } from 'node:child_process'
import { readFile, writeFile } from 'node:fs/promises'
import path from 'node:path'
import { pathToFileURL } from 'node:url'
import { promisify } from 'node:util'
import type { Page, TestInfo } from '@playwright/test'
import type { Plan } from '../../core/plan/schema.ts'
import { printWithBrowser } from '../../electron/browser-host/print.ts'
import { PAPER_SIZES, type Paper } from '../../renderer/sheets/page/paper.ts'
import { browser } from './browser.ts'
import { drawPdf, type PrintedPage } from './pdf.ts'
import { readable } from './readable.ts'
import { expect, test } from './window.ts'

const seeds = path.join(import.meta.dirname, '../../seeds')
const demo = path.join(seeds, 'before-and-after.stopgap')
test.use({ planFile: demo })

async function openSheets(window: Page): Promise<void> {
  const inSight = window.getByRole('navigation', { name: 'Pages' }).getByRole('button', { name: 'Sheets' })
  if (!(await inSight.isVisible())) await window.getByRole('button', { name: /more page/ }).click()
  await window.getByText('Sheets', { exact: true }).first().click()
  await expect(window.getByRole('main', { name: 'Sheets' })).toBeVisible()
}

const POINTS = 72 / 25.4

/** White at the edges, mm, and the smallest letters, points: a unit beside its number is 7.9, everything else larger. */
const LEAST = { side: 11.9, top: 9.9, bottom: 7.9, letters: 7.8 }

/** The letters of a text without what is between them, fractions as they are typed. */
const letters = (text: string): string => text.replace(/⁄/g, '/').replace(/[\s\u00a0]+/g, '')

/** Text put in order of reading is compared by how often each of its letters is there. */
const counted = (text: string): string => [...letters(text)].sort().join('')

/** What the page says and what its picture shows: the paper's size, all of it inside the margins, legible, nothing missing. */
function expectWellPrinted(pages: readonly PrintedPage[], paper: Paper, said: readonly string[], what: string): void {
  expect(pages, what).toHaveLength(said.length)
  const { width, height } = PAPER_SIZES[paper]
  pages.forEach((page, i) => {
    // Chrome gives sizes in whole points.
    expect(Math.abs(page.width - width * POINTS), what).toBeLessThanOrEqual(1)
    expect(Math.abs(page.height - height * POINTS), what).toBeLessThanOrEqual(1)
    expect(page.fontsMissing, what).toEqual([])
    // Neither blank nor a black page.
    expect(page.inked, what).toBeGreaterThan(0.02)
    expect(page.inked, what).toBeLessThan(0.3)
    const { ink } = page
    if (ink === null) throw new Error(`${what} is blank`)
    expect(ink.left, what).toBeGreaterThan(LEAST.side * POINTS - 1)
    expect(page.width - ink.right, what).toBeGreaterThan(LEAST.side * POINTS - 1)
    expect(ink.top, what).toBeGreaterThan(LEAST.top * POINTS - 1)
    expect(page.height - ink.bottom, what).toBeGreaterThan(LEAST.bottom * POINTS - 1)
    expect(
      page.texts.filter(({ size }) => size < LEAST.letters).map(({ text, size }) => `${text} ${size}`),
      what,
    ).toEqual([])
    // Every text is there as dots of ink on white: neither hidden nor a bar of black.
    const hidden = page.texts.filter((_, at) => page.legible[at]! < 0.04 || page.legible[at]! > 0.75)
    expect(
      hidden.map(({ text }) => text),
      what,
    ).toEqual([])
    expect(counted(page.texts.map(({ text }) => text).join('')), what).toBe(counted(said[i]!))
  })
}

async function keepPictures(pages: readonly PrintedPage[], info: TestInfo, name: string): Promise<void> {
  for (const [i, { picture }] of pages.entries())
    await writeFile(info.outputPath(`${name}-${i + 1}.png`), Buffer.from(picture, 'base64'))
}

for (const look of [
  { colorScheme: 'light', viewport: { width: 1440, height: 900 } },
  { colorScheme: 'dark', viewport: { width: 1024, height: 700 } },
] as const)
  test.describe(`${look.colorScheme}, ${look.viewport.width} × ${look.viewport.height}`, () => {
    test.use(look)

    test('each sheet prints on one page of each paper, as it says and as it looks', async ({
      window,
      context,
    }, info) => {
      test.slow()
      await openSheets(window)
      const reader = await context.newPage()
      for (const sheet of ['Customer sheet', 'Shop sheet'])
        for (const paper of ['A4', 'Letter']) {
          await window.getByLabel('Sheet', { exact: true }).selectOption(sheet)
          await window.getByLabel('Paper').selectOption(paper)
          const said = await window.getByRole('document', { name: sheet }).evaluate(all => all.textContent ?? '')
          const pages = await drawPdf(reader, await window.pdf({ preferCSSPageSize: true, printBackground: true }))
          await keepPictures(pages, info, `${sheet}-${paper}`)
          expectWellPrinted(pages, paper.toLowerCase() as Paper, [said], `${sheet}, ${paper}`)
        }
      await readable(window, info, 'sheets')
      const preview = await window.getByRole('document', { name: 'Shop sheet' }).boundingBox()
      expect(preview!.x + preview!.width).toBeLessThanOrEqual(look.viewport.width)
    })
  })

/** A plan nobody would like to print: every name as long as a file takes it, markup and a formula among them. */
async function longPlan(file: string): Promise<Plan> {
  const plan = JSON.parse(await readFile(file, 'utf8')) as Plan
  const long = (start: string): string =>
    `${start} ${'a rather long name with Wide and MMMM words, '.repeat(5)}`.slice(0, 200)
  return {
    ...plan,
    title: long('<script>alert(1)</script> =1+1'),
    setups: plan.setups.map(setup => ({ ...setup, name: long(setup.name) })),
    loads: plan.loads.map(load => ({ ...load, name: long(load.name) })),
  }
}

/** A plan whose second setup differs in all that can differ, so that the shop sheet is as full as it can be. */
async function fullPlan(file: string): Promise<Plan> {
  const plan = structuredClone(JSON.parse(await readFile(file, 'utf8')) as Plan)
  const [before, after] = plan.setups
  const scaled = (value: unknown): unknown =>
    typeof value === 'number'
      ? value * 1.01
      : Array.isArray(value)
        ? value.map(scaled)
        : typeof value === 'object' && value !== null
          ? Object.fromEntries(
              Object.entries(value).map(([key, inner]) => [key, key === 'linkage' ? inner : scaled(inner)]),
            )
          : value
  const axles = (after ?? before)!.axles.map(axle => ({ ...(scaled(axle) as typeof axle) }))
  return {
    ...plan,
    units: 'metric',
    setups: [before!, { ...(after ?? before)!, id: 'all-of-it', name: 'All of it', axles }],
  }
}

const stopgap = promisify(execFile)

/** What the built program prints, as files of two kinds. */
async function printed(plan: string, paper: Paper, info: TestInfo): Promise<{ pdf: Buffer; svg: string }> {
  const [pdf, svg] = ['both.pdf', 'both.svg'].map(name => info.outputPath(name)) as [string, string]
  const env = {
    ...process.env,
    // With no browser of the packages, the one installed prints.
    ...(browser.executablePath !== undefined && { STOPGAP_BROWSER: browser.executablePath }),
  }
  const program = path.join(import.meta.dirname, '../../dist/cli.js')
  for (const file of [pdf, svg])
    await stopgap(process.execPath, [program, 'sheet', plan, '-o', file, '--paper', paper], { env })
  return { pdf: await readFile(pdf), svg: await readFile(svg, 'utf8') }
}

/** The words of each sheet in a drawing. */
const wordsOf = (page: Page, svg: string): Promise<string[]> =>
  page.evaluate(text => {
    const drawing = new DOMParser().parseFromString(text, 'image/svg+xml')
    return [...drawing.querySelectorAll('g[font-family]')].map(each => each.textContent ?? '')
  }, svg)

for (const { name, file, made } of [
  ...['before-and-after', 'new-chassis', 'on-its-stops'].map(seed => ({
    name: seed,
    file: path.join(seeds, `${seed}.stopgap`),
    made: null,
  })),
  { name: 'long names', file: demo, made: longPlan },
  { name: 'everything changes', file: demo, made: fullPlan },
])
  test(`the command line prints both sheets: ${name}`, async ({ page }, info) => {
    test.slow()
    const plan = made === null ? file : info.outputPath('plan.stopgap')
    if (made !== null) await writeFile(plan, JSON.stringify(await made(file)))
    for (const paper of ['a4', 'letter'] as const) {
      const { pdf, svg } = await printed(plan, paper, info)
      const said = await wordsOf(page, svg)
      expect(said).toHaveLength(2)
      const pages = await drawPdf(page, pdf)
      await keepPictures(pages, info, paper)
      expectWellPrinted(pages, paper, said, `${name}, ${paper}`)
    }
  })

test('nothing runs in what is printed, and nothing of the machine gets into it', async ({ page }, info) => {
  // The browser a print is made with is the one of these tests where they bring one.
  test.skip(
    browser.executablePath === undefined,
    'The browser of these tests is the installed one, and its place is not known here',
  )
  const secret = info.outputPath('secret.html')
  await writeFile(secret, 'Nobody else should read this')
  const html = `<!doctype html><p id="p">Words</p><script>document.getElementById('p').textContent = 'It ran'</script>
    <iframe src="${pathToFileURL(secret).href}"></iframe><object data="${pathToFileURL(secret).href}"></object>`
  const pages = await drawPdf(page, await printWithBrowser(browser.executablePath!, html))
  expect(pages.flatMap(({ texts }) => texts.map(({ text }) => text))).toEqual(['Words'])
})

test('a drawing shows what the page shows, as a picture no page has a hand in', async ({ page }, info) => {
  const { svg } = await printed(demo, 'letter', info)
  await page.setViewportSize({ width: 816, height: 2112 })
  const shot = async (html: string): Promise<Buffer> => {
    await page.setContent(`<!doctype html><style>body{margin:0}img,svg{display:block}</style>${html}`)
    await page.evaluate(() => document.fonts.ready)
    return page.screenshot({ animations: 'disabled' })
  }
  const asPicture = await shot(`<img alt="" src="data:image/svg+xml;base64,${Buffer.from(svg).toString('base64')}">`)
  const asPage = await shot(svg)
  expect(asPicture.equals(asPage)).toBe(true)
})

test('what was built becomes a setup by the keyboard alone, what is off is said, and undo takes it back', async ({
  window,
}, info) => {
  await openSheets(window)
  const built = window.getByRole('form', { name: 'As built' })
  const findings = built.getByRole('list', { name: 'Findings as built' })
  const before = window.getByLabel('Before').locator('option')

  const gap = built.getByLabel('Gap', { exact: true })
  await gap.focus()
  await window.keyboard.type('two and a bit')
  await expect(gap).toHaveAttribute('aria-invalid', 'true')
  await window.keyboard.press('Enter')
  await expect(before).toHaveText(['As found', 'Proposed'])

  await window.keyboard.press('Control+A')
  await window.keyboard.type('2 9/32')
  await expect(built.getByText(/0\.031.in more than planned, within what is to be held/)).toBeVisible()
  await built.getByLabel('Stop charge', { exact: true }).focus()
  await window.keyboard.type('190')
  await expect(findings.getByText(/As built, stop charge is 190.psi: 10.psi more than planned/)).toBeVisible()
  await expect(findings.getByText(/The wheel meets the stop at .* later than planned/)).toBeVisible()
  await readable(window, info, 'as-built')
  await window.keyboard.press('Enter')
  await expect(before).toHaveText(['As found', 'Proposed', 'As built'])

  await window.keyboard.press('Control+Z')
  await expect(before).toHaveText(['As found', 'Proposed'])
  await window.keyboard.press('Control+Shift+Z')
  await expect(before).toHaveText(['As found', 'Proposed', 'As built'])
})

test('what cannot have been built is refused in words, and nothing is made', async ({ window }) => {
  await openSheets(window)
  const built = window.getByRole('form', { name: 'As built' })
  await built.getByLabel('Shaft showing', { exact: true }).fill('40')
  await built.getByRole('button', { name: 'Make it a setup' }).click()
  await expect(built.getByRole('alert')).toHaveText(
    /^No car could be so\. Shaft showing would have to be no more than the stroke, [\d /]+ in\.$/,
  )
  await expect(window.getByLabel('Before').locator('option')).toHaveText(['As found', 'Proposed'])
})

test('the preview fits its place, or is as large as it is printed', async ({ window }) => {
  await window.setViewportSize({ width: 1024, height: 700 })
  await expect(window.getByRole('button', { name: /more page/ })).toBeVisible()
  await openSheets(window)
  const sheet = window.getByRole('document', { name: 'Customer sheet' })
  const widthOf = async () => (await sheet.boundingBox())!.width
  expect(await widthOf()).toBeLessThan(600)
  await window.getByLabel('Size').selectOption('As printed')
  expect(await widthOf()).toBeCloseTo(816, 0)
})

test('a sheet is saved as a file of its own', async ({ window }) => {
  await openSheets(window)
  const [file] = await Promise.all([
    window.waitForEvent('download'),
    window.getByRole('button', { name: 'Save as HTML' }).click(),
  ])
  expect(file.suggestedFilename()).toBe('Hackberry, rear stops, customer sheet.html')
  expect(await readFile(await file.path(), 'utf8')).toContain('Three numbers to compare')
})
