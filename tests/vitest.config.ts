import path from 'node:path'
import { defineConfig } from 'vitest/config'
import UnitReporter from './runner/unit-reporter.ts'

/** Unit tests end in .test.ts or .test.tsx; a test that needs a page says `// @vitest-environment happy-dom` in its first line. */
export default defineConfig({
  root: path.join(import.meta.dirname, '..'),
  test: {
    include: ['tests/**/*.test.{ts,tsx}'],
    // Without this, importing 'electron' in plain Node would start a download.
    env: { ELECTRON_OVERRIDE_DIST_PATH: '/nonexistent' },
    reporters: ['default', new UnitReporter()],
    setupFiles: ['tests/laws/set-up.ts'],
    // All processors: otherwise one of them is kept for nothing, which on two is half.
    maxWorkers: '100%',
    // Nothing here is a timed test: a slow or busy machine is not a failure.
    testTimeout: 120_000,
    hookTimeout: 120_000,
    restoreMocks: true,
    expect: { requireAssertions: true },
  },
})
