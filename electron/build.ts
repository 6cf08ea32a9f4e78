import { readFile, rm, writeFile } from 'node:fs/promises'
import path from 'node:path'
import { stripVTControlCharacters } from 'node:util'
import react from '@vitejs/plugin-react'
import { build, type InlineConfig, type Plugin } from 'vite'
import { licencesOf, packagesIn } from './licences.ts'

/**
 * Everything that is shipped, into dist/: the window, the preload script, and the three programs that run in Node.
 * Packages are bundled in, so that dist/ runs without node_modules; only Electron itself and Node's own modules stay outside.
 */

const root = path.join(import.meta.dirname, '..')
const dist = path.join(root, 'dist')

/** Folders of the packages with code in what is shipped. */
const packages = new Set<string>()

const quiet = { configFile: false, logLevel: 'warn' } satisfies InlineConfig

/** A slow machine is nothing to warn the person at it of. */
const checks = { bundlerTimings: false } as const

/** Characters the first program may have: past that it would be waited for itself. */
const SMALL = 10_000

/** The page runs the small program that asks the host as soon as it is here, before the window's own. */
const askedFirst: Plugin = {
  name: 'asked-first',
  transformIndexHtml: {
    order: 'post',
    handler: (_html, { bundle = {} }) => {
      const ask = Object.values(bundle).find(({ name }) => name === 'ask')
      if (ask?.type !== 'chunk') throw new Error('renderer/ask.ts is not a program of its own any more.')
      if (ask.code.length > SMALL)
        throw new Error(`renderer/ask.ts has become ${ask.code.length} characters; ${SMALL} at most keep it quick.`)
      const attrs = { type: 'module', async: true, crossorigin: true, src: `./${ask.fileName}` }
      return [{ tag: 'script', attrs, injectTo: 'head-prepend' }]
    },
  },
}

/** What writes a sheet as text. Of React's two programs for that the other one, for streams, is as large, and is never used. */
const sheetWriter = path.join(root, 'node_modules/react-dom/cjs/react-dom-server-legacy.browser.production.js')

const rendererConfig: InlineConfig = {
  ...quiet,
  root: path.join(root, 'renderer'),
  base: './',
  resolve: { alias: { 'react-dom/server': sheetWriter } },
  plugins: [react(), askedFirst, packagesIn(packages)],
  worker: { format: 'es', plugins: () => [packagesIn(packages)] },
  build: {
    outDir: path.join(dist, 'renderer'),
    emptyOutDir: false,
    chunkSizeWarningLimit: 2000,
    // Every browser the window is shown in knows modulepreload.
    modulePreload: { polyfill: false },
    // One style sheet, there before anything is drawn.
    cssCodeSplit: false,
    rolldownOptions: {
      checks,
      output: {
        codeSplitting: {
          // What the first picture needs comes in one piece: a request each for what later pages share with it would take longer.
          groups: [
            { name: 'ask', test: /\/renderer\/ask\.ts$/, priority: 2 },
            { name: 'first', test: /\/renderer\/main\.tsx$/, priority: 1 },
          ],
        },
      },
    },
  },
}

const nodeConfig = (entries: Record<string, string>, format: 'es' | 'cjs', extension: string): InlineConfig => ({
  ...quiet,
  root,
  plugins: [packagesIn(packages)],
  // Sheets are laid out by React in Node too: its development half is left out.
  define: { 'process.env.NODE_ENV': JSON.stringify('production') },
  ssr: { noExternal: true, external: ['electron'] },
  build: {
    ssr: true,
    outDir: dist,
    emptyOutDir: false,
    target: 'node20',
    rolldownOptions: {
      checks,
      input: entries,
      output: { format, entryFileNames: `[name].${extension}`, chunkFileNames: `shared-[hash].${extension}` },
    },
  },
})

/** Stopgap's own licence, first of the list. */
async function own() {
  const { version, license } = JSON.parse(await readFile(path.join(root, 'package.json'), 'utf8'))
  return {
    name: 'Stopgap',
    version,
    licence: license,
    text: (await readFile(path.join(root, 'LICENSE'), 'utf8')).trim(),
  }
}

try {
  await rm(dist, { recursive: true, force: true })
  await Promise.all([
    build(rendererConfig),
    build(
      nodeConfig(
        { main: 'electron/main/main.ts', start: 'electron/start/main.ts', cli: 'electron/cli/main.ts' },
        'es',
        'js',
      ),
    ),
    // A sandboxed preload script cannot be an ES module.
    build(nodeConfig({ preload: 'electron/preload/preload.ts' }, 'cjs', 'cjs')),
  ])
  await writeFile(
    path.join(dist, 'renderer', 'licences.json'),
    JSON.stringify([await own(), ...(await licencesOf(packages))]),
  )
} catch (problem) {
  console.error(stripVTControlCharacters(problem instanceof Error ? problem.message : String(problem)))
  process.exitCode = 1
}
