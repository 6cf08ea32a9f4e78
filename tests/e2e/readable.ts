import AxeBuilder from '@axe-core/playwright'
import type { Page, TestInfo } from '@playwright/test'
import { expect } from './window.ts'

/** WCAG 2.2 up to AA, the levels the window is held to. */
const levels = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa']

/** Keeps a picture of the window as it is, for somebody to look at, and lets a tool say whether everyone can read and use it. */
export async function readable(window: Page, info: TestInfo, state: string): Promise<void> {
  await window.screenshot({ path: info.outputPath(`${state}.png`), animations: 'disabled' })
  // The window has no frames in it, so the tool needs no page of its own to look into them.
  // What is right need not be written down: saying where each of a thousand parts stands takes longer than looking at it.
  const { violations } = await new AxeBuilder({ page: window })
    .options({ runOnly: levels, resultTypes: ['violations'] })
    .setLegacyMode()
    .analyze()
  const said = violations.map(({ id, nodes }) => `${id}: ${nodes.map(node => node.target.join(' ')).join(', ')}`)
  expect.soft(said, state).toEqual([])
}
