import { spawnSync } from 'node:child_process'
import path from 'node:path'
import { build } from 'vite'

/**
 * Measures what is shipped: `main.ts` and all it measures is bundled as the program itself is, into a folder as deep as this one, and runs from
 * there. Run from its sources, every function made inside another would first be given its name back, which the program does not do.
 */
const root = path.join(import.meta.dirname, '../..')
const folder = path.join(root, '.cache/bench')

await build({
  configFile: false,
  logLevel: 'error',
  root,
  build: {
    ssr: path.join(import.meta.dirname, 'main.ts'),
    outDir: folder,
    emptyOutDir: true,
    minify: false,
    target: 'node20',
    rolldownOptions: { output: { format: 'es', entryFileNames: 'main.mjs', codeSplitting: false } },
  },
})

const { status } = spawnSync(process.execPath, [path.join(folder, 'main.mjs'), ...process.argv.slice(2)], {
  stdio: 'inherit',
})
process.exitCode = status ?? 1
