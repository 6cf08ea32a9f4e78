import { once } from 'node:events'
import { createWriteStream } from 'node:fs'
import { mkdtemp, rm, stat } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import path from 'node:path'
import { dsvFormat } from 'd3'
import { unsaid } from '../../core/budget/findings/rule.ts'
import { setupLoads } from '../../core/loads/ledger.ts'
import { detectReading } from '../../core/runs/detect.ts'
import { layRun } from '../../core/runs/lay.ts'
import { TableImport } from '../../core/runs/table-import.ts'
import { SHAPE_SAMPLE } from '../../core/runs/table-text.ts'
import { tokenize } from '../../electron/services/run-file.ts'
import { wholePlan } from '../core/plan/whole-plan.ts'
import type { Benchmark, Sample } from './benchmark.ts'
import { memoryOf, timed } from './stopwatch.ts'

const plan = wholePlan()
const { model, ledger } = setupLoads(plan, plan.setups[0]!)

const HEAD = 'time (s),front left (mm),front right (mm),rear left (mm),rear right (mm)\n'
const row = (i: number): string =>
  `${(i / 1000).toFixed(3)},${[3, 4, 5, 6].map(wave => (40 * Math.sin(i / 97 / wave)).toFixed(3)).join(',')}\n`
const text = HEAD + Array.from({ length: 100_000 }, (_, i) => row(i)).join('')
/** As read from a file. */
const PIECE = 1 << 18

/** From text in pieces to what one wheel did. */
function toHistogram(): readonly number[] {
  const { reading, columns } = detectReading(text.slice(0, SHAPE_SAMPLE), 'utf-8', tokenize)
  const table = new TableImport(tokenize, reading, columns, [1])
  for (let i = 0; i < text.length; i += PIECE) table.push(text.slice(i, i + PIECE))
  const read = table.end()
  if (!read.ok) throw new Error(read.why)
  const laid = layRun(
    model.axles[0]!,
    ledger[0]!,
    { time: read.table.time, readings: read.table.values[0]!, longestPause: null },
    {
      measures: 'wheel',
      calibration: { scale: 1e-3, offset: 0 },
      rideHeightAt: null,
      fullDroopAt: null,
      lowPass: null,
    },
    unsaid,
  )
  if (!laid.ok) throw new Error(laid.why)
  return laid.figures.histogram
}

/** Bytes of the file whose reading is weighed. */
const LARGE = 200e6

/** The most memory a program takes that reads one channel of a large file. */
async function large(): Promise<Sample> {
  const folder = await mkdtemp(path.join(tmpdir(), 'stopgap-bench-'))
  try {
    const file = path.join(folder, 'run.csv')
    const out = createWriteStream(file)
    out.write(HEAD)
    let [written, i] = [0, 0]
    while (written < LARGE) {
      let piece = ''
      while (piece.length < PIECE) {
        piece += row(i)
        i += 1
      }
      written += piece.length
      if (!out.write(piece)) await once(out, 'drain')
    }
    out.end()
    await once(out, 'finish')
    const { size } = await stat(file)
    const [reader, detect] = ['electron/services/run-file.ts', 'core/runs/detect.ts'].map(each =>
      JSON.stringify(path.join(import.meta.dirname, '../..', each)),
    )
    const value = memoryOf(
      `const { readRun, tokenize } = await import(${reader})
       const { detectReading } = await import(${detect})
       const as = (sample, encoding) => ({ ...detectReading(sample, encoding, tokenize), taken: [1] })
       const read = await readRun(${JSON.stringify(file)}, as)
       if (!read.ok || read.table.rows !== ${i}) throw new Error('not read')`,
    )
    return { unit: 'bytes', value, reference: size }
  } finally {
    await rm(folder, { recursive: true, force: true })
  }
}

export const runs: readonly Benchmark[] = [
  {
    name: 'recorded run to histogram, 100 000 rows of 5 cells',
    reference: 'the bare parse of the same text by the CSV library',
    budget: 1.5,
    measure: () => timed(toHistogram, () => dsvFormat(',').parseRows(text)),
  },
  {
    name: 'most memory while one channel of a 200 MB run is read',
    reference: 'the size of the file',
    // 24 bytes a row (time and channel, one of them twice while joined), 36 letters a row, and 200 MB for Node and the pieces of text.
    budget: 1.65,
    measure: large,
  },
]
