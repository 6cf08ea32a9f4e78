import { existsSync, readdirSync, readFileSync } from 'node:fs'
import path from 'node:path'
import { gzipSync } from 'node:zlib'
import type { Benchmark } from './benchmark.ts'
import { timedPrograms } from './stopwatch.ts'

const root = path.join(import.meta.dirname, '../..')

function built(file: string): string {
  const found = path.join(root, 'dist', file)
  if (!existsSync(found)) throw new Error(`dist/${file} is not there. Run npm run build first.`)
  return found
}

/** Programs these cannot run without, themselves among them; what is fetched later is not. */
function needed(first: Iterable<string>): Set<string> {
  const all = new Set(first)
  for (const file of all) {
    if (!file.endsWith('.js')) continue
    const imports = readFileSync(file, 'utf8').matchAll(
      /(?:^|[;}])(?:import|export)(?:[^"'`()]*from)?\s*["'](\.[^"']+)["']/g,
    )
    for (const [, other] of imports) all.add(path.join(path.dirname(file), other!))
  }
  return all
}

/** What the page names, and what that needs. */
function toDraw(page: string): Set<string> {
  const named = [...readFileSync(page, 'utf8').matchAll(/(?:src|href)="([^"]+)"/g)].map(([, file]) => file!)
  return needed(named.map(file => path.join(path.dirname(page), file)))
}

/** The fields and what checks them, which follow the first picture at once. */
function toEdit(page: string): Set<string> {
  const folder = path.join(path.dirname(page), 'assets')
  const late = readdirSync(folder).filter(name => /^(Column|parse)-[\w-]+\.js$/.test(name))
  if (late.length !== 2) throw new Error('The fields and what checks them are no programs of their own any more.')
  return needed([...toDraw(page), ...late.map(name => path.join(folder, name))])
}

/** What each page of the window that is fetched later needs besides, with the programs it starts beside itself. */
function toTurnTo(page: string): string[][] {
  const there = toEdit(page)
  const folder = path.join(path.dirname(page), 'assets')
  const names = readdirSync(folder)
  const workers = names.filter(name => /-worker-[\w-]+\.js$/.test(name))
  return names
    .filter(name => /^\w+Page-[\w-]+\.js$/.test(name))
    .map(name => {
      const own = [...needed([path.join(folder, name)])].filter(file => !there.has(file))
      const started = workers.filter(worker => own.some(file => readFileSync(file, 'utf8').includes(worker)))
      return [...own, ...started.map(worker => path.join(folder, worker))]
    })
}

const packed = (file: string): number => gzipSync(readFileSync(file)).byteLength

/** What is shipped: how much the window reads, and how soon the command line answers. */
export const shipped: readonly Benchmark[] = [
  {
    name: 'what the window loads to start, packed',
    reference: 'the 250 kB it may have',
    budget: 1,
    measure: async () => {
      const page = built('renderer/index.html')
      const value = [...toEdit(page)].reduce((sum, file) => sum + packed(file), packed(page))
      return { unit: 'bytes', value, reference: 250_000 }
    },
  },
  {
    // To turn to a page must never cost what the start may. The size of all of them together is felt by nobody: they come from the
    // disk, while the window has nothing else to do, in a program of more than 100 MB.
    name: 'the most a page loads to be turned to, packed',
    reference: 'the 250 kB the start may have',
    budget: 1,
    measure: async () => {
      const pages = toTurnTo(built('renderer/index.html'))
      if (pages.length === 0) throw new Error('No page of the window is a program of its own any more.')
      const value = Math.max(...pages.map(files => files.reduce((sum, file) => sum + packed(file), 0)))
      return { unit: 'bytes', value, reference: 250_000 }
    },
  },
  {
    name: 'start of the command line',
    reference: 'start of Node alone',
    budget: 3,
    measure: () => timedPrograms([built('cli.js'), '--help'], ['--eval', '0']),
  },
]
