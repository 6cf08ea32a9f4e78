import { readFile, rename } from 'node:fs/promises'
import { basename } from 'node:path'
import type { z } from 'zod'
import { reason, refusal } from './reason.ts'

export type Stored<T> =
  | { kind: 'value'; value: T }
  | { kind: 'missing' }
  /** Damaged or unreadable; `report` says so in a sentence. A damaged file is kept under another name. */
  | { kind: 'lost'; report: string }

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
  const read = schema.safeParse(parseJson(text))
  if (read.success) return { kind: 'value', value: read.data }
  const aside = `${path}.damaged-${Date.now()}`
  try {
    await rename(path, aside)
  } catch (error) {
    return { kind: 'lost', report: `${what} is damaged, and could not be put aside: ${reason(error)}.` }
  }
  return { kind: 'lost', report: `${what} was damaged. It was kept as ${basename(aside)} in Stopgap’s own folder.` }
}

function parseJson(text: string): unknown {
  try {
    return JSON.parse(text)
  } catch {
    return undefined
  }
}
