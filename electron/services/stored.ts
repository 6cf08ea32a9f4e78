import { readFile, rename } from 'node:fs/promises'
import { basename } from 'node:path'
import type { z } from 'zod'
import { reason, refusal } from './reason.ts'

export type Stored<T> =
  | { kind: 'value'; value: T }
  | { kind: 'missing' }
  /** Damaged or unreadable; `report` says so in a sentence. A damaged file is kept under another name; `text` is what stands in it. */
  | { kind: 'lost'; report: string; text?: string }

/** Reads one of the application's own files. What does not fit its schema is put aside, never overwritten. */
export async function readStored<T>(path: string, schema: z.ZodType<T>, what: string): Promise<Stored<T>> {
  let text: string
  try {
    text = await readFile(path, 'utf8')
  } catch (error) {
    const why = reason(error)
    if (refusal(error) === 'ENOENT') return { kind: 'missing' }
    return { kind: 'lost', report: `${what} could not be read: ${why}.` }
  }
  const value = parseJson(text)
  const read = schema.safeParse(value)
  if (read.success) return { kind: 'value', value: read.data }
  const aside = `${path}.damaged-${Date.now()}`
  try {
    await rename(path, aside)
  } catch (error) {
    return { kind: 'lost', report: `${what} cannot be used, and could not be put aside: ${reason(error)}.` }
  }
  const was = isNewer(value) ? 'was written by a newer Stopgap' : 'was damaged'
  return { kind: 'lost', report: `${what} ${was}. It was kept as ${basename(aside)} in Stopgap’s own folder.`, text }
}

/** All our own files are of version 1 so far. */
const isNewer = (value: unknown): boolean =>
  typeof value === 'object' &&
  value !== null &&
  'version' in value &&
  typeof value.version === 'number' &&
  value.version > 1

function parseJson(text: string): unknown {
  try {
    return JSON.parse(text)
  } catch {
    return undefined
  }
}
