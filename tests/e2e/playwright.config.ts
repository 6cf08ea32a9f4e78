import { defineConfig } from '@playwright/test'
import { browser } from './browser.ts'

/** Whole-window tests end in .spec.ts. They run the built program: `npm run e2e` builds first. */
export default defineConfig({
  testDir: '.',
  testMatch: '**/*.spec.ts',
  globalSetup: './before-all.ts',
  outputDir: '../../test-results',
  forbidOnly: process.env.CI !== undefined,
  fullyParallel: true,
  workers: 2,
  // A busy machine is slow, not wrong.
  timeout: 90_000,
  expect: { timeout: 20_000 },
  reporter: [['list'], ['../runner/window-reporter.ts']],
  use: {
    browserName: 'chromium',
    launchOptions: { ...browser },
    viewport: { width: 1440, height: 900 },
    screenshot: 'only-on-failure',
  },
})
