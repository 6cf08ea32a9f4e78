import { readFile } from 'node:fs/promises'
import path from 'node:path'
import type { Page } from '@playwright/test'
import { expect, test } from './window.ts'

const demo = path.join(import.meta.dirname, '../../seeds/before-and-after.stopgap')
test.use({ planFile: demo })

async function openSheets(window: Page): Promise<void> {
  const inSight = window.getByRole('navigation', { name: 'Pages' }).getByRole('button', { name: 'Sheets' })
  if (!(await inSight.isVisible())) await window.getByRole('button', { name: /more page/ }).click()
  await window.getByText('Sheets', { exact: true }).first().click()
  await expect(window.getByRole('main', { name: 'Sheets' })).toBeVisible()
}

/** Parts of a sheet that reach past it, or past the part they stand in front of. */
const clipped = (window: Page) =>
  window.locator('.sheet').evaluate(sheet => {
    const bottom = sheet.getBoundingClientRect().bottom
    const parts = [...sheet.children].map(part => part.getBoundingClientRect())
    const overlaps = parts.filter((part, i) => i > 0 && part.top < parts[i - 1]!.bottom - 1).length
    return {
      outside: parts.filter(part => part.bottom > bottom + 0.5).length,
      overlaps,
      taller: sheet.scrollHeight > sheet.clientHeight,
      wider: sheet.scrollWidth > sheet.clientWidth,
    }
  })

const NONE = { outside: 0, overlaps: 0, taller: false, wider: false }

for (const look of [
  { colorScheme: 'light', viewport: { width: 1440, height: 900 } },
  { colorScheme: 'dark', viewport: { width: 1024, height: 700 } },
] as const)
  test.describe(`${look.colorScheme}, ${look.viewport.width} × ${look.viewport.height}`, () => {
    test.use(look)

    test('each sheet is one page on each paper, nothing clipped', async ({ window }, info) => {
      await openSheets(window)
      for (const sheet of ['Customer sheet', 'Shop sheet'])
        for (const paper of ['A4', 'Letter']) {
          await window.getByLabel('Sheet', { exact: true }).selectOption(sheet)
          await window.getByLabel('Paper').selectOption(paper)
          expect(await clipped(window), `${sheet}, ${paper}`).toEqual(NONE)
          const pdf = (await window.pdf({ preferCSSPageSize: true })).toString('latin1')
          expect(pdf.match(/\/Type \/Page\b/g), `${sheet}, ${paper}`).toHaveLength(1)
          // Every font of the page is inside the file.
          const fonts = pdf.match(/\/Type \/FontDescriptor/g) ?? []
          expect(fonts.length).toBeGreaterThan(0)
          expect(pdf.match(/\/FontFile[23]? /g)).toHaveLength(fonts.length)
          expect(pdf.match(/\/FontName \/[A-Z]{6}\+(?!OpenSans)/g)).toBeNull()
        }
      await window.screenshot({ path: info.outputPath('sheets.png') })
    })
  })

test('what was built becomes a setup, what is off is said, and undo takes it back', async ({ window }) => {
  await openSheets(window)
  await window.getByLabel('stop charge', { exact: true }).fill('190')
  await expect(window.getByText(/As built, stop charge is 190.psi: 10.psi more than planned/)).toBeVisible()
  await window.getByRole('button', { name: 'Make it a setup' }).click()
  await expect(window.getByLabel('Before').locator('option')).toHaveText(['As found', 'Proposed', 'As built'])
  await window.keyboard.press('Control+Z')
  await expect(window.getByLabel('Before').locator('option')).toHaveText(['As found', 'Proposed'])
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
