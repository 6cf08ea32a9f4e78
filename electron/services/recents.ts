import { z } from 'zod'
import type { LatestWriter } from './latest-writer.ts'
import type { OneAtATime } from './one-at-a-time.ts'
import { readStored } from './stored.ts'

const entrySchema = z.strictObject({
  key: z.string(),
  /** null: not in a file yet, only a kept copy. */
  path: z.string().nullable(),
  name: z.string(),
  at: z.iso.datetime(),
})
const schema = z.strictObject({
  format: z.literal('stopgap-recent'),
  version: z.literal(1),
  entries: z.array(entrySchema),
})

export type RecentEntry = z.infer<typeof entrySchema>

/** Files remembered. Plans in no file are all remembered: this list is the only way back to them. */
const most = 20

/** Plans worked on, the last one first. */
export function recentPlans(file: string, writer: LatestWriter, alone: OneAtATime, report: (sentence: string) => void) {
  async function list(): Promise<RecentEntry[]> {
    const read = await readStored(file, schema, 'The list of recent plans')
    if (read.kind === 'lost') report(read.report)
    return read.kind === 'value' ? read.value.entries : []
  }

  /** One change after the other, each from what is on the disk, where a second running Stopgap may have written. */
  function change(edit: (entries: RecentEntry[]) => RecentEntry[]): Promise<void> {
    return alone('recent plans', async () => {
      const entries = edit(await list())
      const files = entries.filter(entry => entry.path !== null).slice(0, most)
      const stay = entries.filter(entry => entry.path === null || files.includes(entry))
      await writer.write(file, JSON.stringify({ format: 'stopgap-recent', version: 1, entries: stay }))
    })
  }

  return {
    list,
    touch: (entry: RecentEntry) => change(entries => [entry, ...entries.filter(other => other.key !== entry.key)]),
    /** Behind the plan worked on now. */
    add: (entry: RecentEntry) => change(([first, ...others]) => [...(first ? [first] : []), entry, ...others]),
    drop: (key: string) => change(entries => entries.filter(entry => entry.key !== key)),
  }
}

export type RecentPlans = ReturnType<typeof recentPlans>
