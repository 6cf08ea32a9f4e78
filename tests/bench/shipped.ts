import { existsSync, readdirSync, readFileSync } from 'node:fs'
import path from 'node:path'
import { gzipSync } from 'node:zlib'
import type { Benchmark } from './benchmark.ts'
import { timedPrograms } from './stopwatch.ts'

const root = path.join(import.meta.dirname, '../..')
const react = path.join(root, 'node_modules/react-dom/cjs/react-dom-client.production.js')

function built(file: string): string {
  const found = path.join(root, 'dist', file)
  if (!existsSync(found)) throw new Error(`dist/${file} is not there. Run npm run build first.`)
  return found
}

/** What the page names, and the programs those cannot run without; pages fetched later are not among them. */
function toDraw(page: string): string[] {
  const named = [...readFileSync(page, 'utf8').matchAll(/(?:src|href)="([^"]+)"/g)].map(([, file]) => file!)
  const needed = new Set(named.map(file => path.join(path.dirname(page), file)))
  for (const file of needed) {
    if (!file.endsWith('.js')) continue
    const imports = readFileSync(file, 'utf8').matchAll(
      /(?:^|[;}])(?:import|export)(?:[^"'`()]*from)?\s*["'](\.[^"']+)["']/g,
    )
    for (const [, other] of imports) needed.add(path.join(path.dirname(file), other!))
  }
  return [...needed]
}

const packed = (file: string): number => gzipSync(readFileSync(file)).byteLength

/** What is shipped: how large the window is, and how soon the command line answers. */
export const shipped: readonly Benchmark[] = [
  {
    name: 'what the window loads to start, packed',
    reference: 'the 250 kB it may have',
    budget: 1,
    measure: async () => {
      const page = built('renderer/index.html')
      const value = toDraw(page).reduce((sum, file) => sum + packed(file), packed(page))
      return { unit: 'bytes', value, reference: 250_000 }
    },
  },
  {
    name: 'size of the window, packed',
    reference: 'the part of React it draws with, packed',
    budget: 2.5,
    measure: async () => {
      const folder = built('renderer')
      const files = readdirSync(folder, { recursive: true, encoding: 'utf8' }).filter(file =>
        /\.(js|css|html)$/.test(file),
      )
      const value = files.reduce((sum, file) => sum + packed(path.join(folder, file)), 0)
      return { unit: 'bytes', value, reference: packed(react) }
    },
  },
  {
    name: 'start of the command line',
    reference: 'start of Node alone',
    budget: 3,
    measure: () => timedPrograms([built('cli.js'), '--help'], ['--eval', '0']),
  },
]
