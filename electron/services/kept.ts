import { randomUUID } from 'node:crypto'
import { readdir, rm } from 'node:fs/promises'
import { join } from 'node:path'
import { z } from 'zod'
import { readLeniently } from '../../core/plan/lenient-json.ts'
import { whyNotPlan } from '../contract/plan-text.ts'
import type { LatestWriter } from './latest-writer.ts'
import { digest } from './plan-file.ts'
import { refusal } from './reason.ts'
import { readStored } from './stored.ts'

const schema = z.strictObject({
  format: z.literal('stopgap-kept'),
  version: z.literal(1),
  key: z.string(),
  name: z.string(),
  /** The file it belongs to. */
  path: z.string().nullable(),
  /** Digest of that file when the changes began. */
  basis: z.string().nullable(),
  text: z.string(),
  history: z.string().optional(),
  at: z.iso.datetime(),
})

/** What a copy cannot do without. */
const partial = schema.pick({ name: true, path: true, basis: true, text: true })

export type KeptCopy = Omit<z.infer<typeof schema>, 'format' | 'version'>

/** How long the history of a plan that is safe in its file stays, ms: a season. */
const historyStays = 180 * 24 * 3600 * 1000

/** The plan in a damaged copy, where that much of it is whole; null where it is not. */
function restOf(key: string, damaged: string): KeptCopy | null {
  const found = readLeniently(damaged)
  const { name, path, basis, text } = (typeof found === 'object' && found !== null ? found : {}) as Partial<KeptCopy>
  const known = partial.safeParse({ name, path, basis, text })
  if (!known.success || whyNotPlan(known.data.text) !== null) return null
  return { ...known.data, key, at: new Date().toISOString() }
}

/** Whether the copy has changes its file has not. */
export const isUnsaved = (copy: KeptCopy): boolean => digest(copy.text) !== copy.basis

/** Copies of plans as they were after the last change, one file each, so that a crash loses nothing. */
export function keptCopies(folder: string, writer: LatestWriter, report: (sentence: string) => void) {
  const fileOf = (key: string) => join(folder, `${key}.json`)

  const keep = (copy: KeptCopy): Promise<void> =>
    writer.write(fileOf(copy.key), JSON.stringify({ format: 'stopgap-kept', version: 1, ...copy }))

  /** Two that look for the same copy at once find the same, also when it has to be mended first. */
  const looking = new Map<string, Promise<KeptCopy | null>>()
  function find(key: string): Promise<KeptCopy | null> {
    const known = looking.get(key)
    if (known !== undefined) return known
    const found = look(key).finally(() => looking.delete(key))
    looking.set(key, found)
    return found
  }

  async function look(key: string): Promise<KeptCopy | null> {
    const read = await readStored(fileOf(key), schema, 'The kept copy of a plan')
    if (read.kind === 'missing') return null
    if (read.kind === 'lost') {
      const rest = read.text === undefined ? null : restOf(key, read.text)
      if (rest === null) report(read.report)
      else {
        report(`${read.report} The plan in it could be read; the steps to undo could not.`)
        await keep(rest)
      }
      return rest
    }
    const { format: _format, version: _version, ...copy } = read.value
    return copy
  }

  const forget = (key: string) => writer.write(fileOf(key), null)

  /** Gives the copy a key of its own, apart from its file, so that the file can be worked on without losing it. */
  async function setAside(copy: KeptCopy): Promise<KeptCopy> {
    const aside = {
      ...copy,
      key: randomUUID(),
      name: `${copy.name} (unsaved copy)`.slice(0, 255),
      path: null,
      basis: null,
    }
    await keep(aside)
    await forget(copy.key)
    return aside
  }

  /** Drops old copies that hold nothing their file does not. Changes that were never saved stay until the person drops them. */
  async function tidy(now: number): Promise<void> {
    for (const key of await keys()) {
      const copy = await find(key)
      if (copy !== null && !isUnsaved(copy) && now - Date.parse(copy.at) > historyStays) {
        await rm(fileOf(key), { force: true })
      }
    }
  }

  /** Keys of everything kept. */
  async function keys(): Promise<string[]> {
    const names = await readdir(folder).catch((error: unknown) => {
      if (refusal(error) === 'ENOENT') return []
      throw error
    })
    return names.filter(each => each.endsWith('.json')).map(each => each.slice(0, -'.json'.length))
  }

  return { keep, find, forget, setAside, tidy, keys }
}

export type KeptCopies = ReturnType<typeof keptCopies>
