import { fromMenu, group } from './actions.ts'
import { readable } from './readable.ts'
import { expect, test } from './window.ts'

const looks = [
  { colorScheme: 'light', viewport: { width: 1440, height: 900 } },
  { colorScheme: 'dark', viewport: { width: 1024, height: 700 } },
] as const

for (const look of looks) {
  test.describe(`${look.colorScheme}, ${look.viewport.width} × ${look.viewport.height}`, () => {
    test.use(look)

    test('help explains a word by keys alone, and can be read by everyone', async ({ window }, info) => {
      await window.keyboard.press('F1')
      const help = window.getByRole('dialog', { name: 'Help with the words' })
      await expect(help.getByRole('button', { name: 'Wheel travel' })).toBeFocused()
      await expect(help.getByRole('region', { name: 'Wheel travel' })).toContainText('from hanging')
      await readable(window, info, 'help')

      await window.keyboard.press('ArrowDown')
      await window.keyboard.press('Enter')
      await expect(help.getByRole('region', { name: 'Bump and droop' })).toBeVisible()

      await help.getByRole('textbox', { name: 'Find a word' }).fill('nitrogen pressure')
      await help.getByRole('button', { name: 'Bump stop charge' }).click()
      await expect(help.getByRole('region', { name: 'Bump stop charge' })).toContainText('can kill')
      await readable(window, info, 'help with a caution')

      await help.getByRole('textbox', { name: 'Find a word' }).fill('carburettor')
      await expect(help.getByRole('status')).toBeVisible()
      await help.getByRole('button', { name: 'Keys' }).click()
      await expect(help.getByRole('row', { name: 'Save as Ctrl+Shift+S' })).toBeVisible()
      await readable(window, info, 'keys')
      await window.keyboard.press('Escape')
      await expect(help).toBeHidden()
    })

    test('the box about the program names versions and licences', async ({ window }, info) => {
      await fromMenu(window, 'About Stopgap')
      const about = window.getByRole('dialog', { name: 'About Stopgap' })
      await expect(about.getByText(/^\d+\.\d+\.\d+$/).first()).toBeVisible()
      await expect(about.getByText(/^react \d.*MIT$/)).toBeVisible()
      await about.getByText(/^immer /).click()
      await expect(about.getByText(/Permission is hereby granted/).locator('visible=true')).toHaveCount(1)
      await readable(window, info, 'about')
      await about.getByRole('button', { name: 'Show log' }).click()
      await expect(window.getByRole('status')).toContainText('log.txt')
    })

    test.describe('the first time', () => {
      test.use({ newcomer: true })

      test('a short look around, put away for good', async ({ window }, info) => {
        const note = window.locator('.guide')
        await expect(note).toBeFocused()
        await expect(note).toHaveAccessibleName('Measure')
        await readable(window, info, 'first step')
        for (const name of [/travel/, /found/, /Plan/, /word/]) {
          await note.getByRole('button', { name: 'Next' }).press('Enter')
          await expect(note).toHaveAccessibleName(name)
          await window.screenshot({ path: info.outputPath(`${name.source}.png`) })
        }
        await note.getByRole('button', { name: 'Done' }).press('Enter')
        await expect(note).toBeHidden()
        await window.reload()
        await window.getByRole('heading', { name: 'Measurements' }).waitFor()
        await window.keyboard.press('F1')
        await expect(window.getByRole('dialog')).toBeVisible()
        await window.keyboard.press('Escape')
        await expect(note).toBeHidden()
        await fromMenu(window, 'A first look')
        await expect(note).toBeVisible()
        await window.keyboard.press('Escape')
        await expect(note).toBeHidden()
      })
    })
  })
}

test('the ? of a group opens help on its word', async ({ window }) => {
  await group(window, 'Springs')
  await window.getByRole('button', { name: 'Explain springs' }).click()
  await expect(window.getByRole('region', { name: 'Tender and main' })).toBeVisible()
  await window.getByRole('button', { name: 'Close', exact: true }).click()
  await expect(window.getByRole('button', { name: 'Explain springs' })).toBeFocused()
})

test('the next start begins on the page last looked at', async ({ window }) => {
  await window.getByRole('navigation', { name: 'Pages' }).getByRole('button', { name: 'How sure' }).click()
  await expect(window.getByRole('main', { name: 'How sure' })).toBeVisible()
  await window.reload()
  await expect(window.getByRole('main', { name: 'How sure' })).toBeVisible()
})
