import { z } from 'zod'
import type { Shelf } from '../../core/changes/shelf.ts'
import { formatShelf, parseShelf, readShelf } from '../../core/plan/shelf-file.ts'
import type { Reply, Request } from '../contract/contract.ts'
import type { LatestWriter } from './latest-writer.ts'
import { reason } from './reason.ts'
import { readStored } from './stored.ts'

/** The file as it is exported too: what parts it may hold, and what they may not contradict, is said in one place. */
const schema = z.unknown().transform((value, context): Shelf => {
  const parsed = parseShelf(value)
  if (parsed.ok) return parsed.shelf
  for (const { path, found, wanted } of parsed.problems)
    context.addIssue({ code: 'custom', message: `${path}: found ${found}, wanted ${wanted}` })
  return z.NEVER
})

/** Stops, springs and tubes kept across plans, in the application’s own folder. */
export function partsShelf(file: string, writer: LatestWriter, report: (sentence: string) => void) {
  /** The shelf as the text of its file; null: nobody has put anything on it. */
  async function read(): Promise<string | null> {
    const found = await readStored(file, schema, 'The shelf of stops, springs and tubes')
    if (found.kind === 'lost') report(found.report)
    return found.kind === 'value' ? formatShelf(found.value) : null
  }

  /** Only a shelf is written, and whole. */
  async function keep({ text }: Request<'keepShelf'>): Promise<Reply<'keepShelf'>> {
    const failed = (why: string): Reply<'keepShelf'> => ({
      kind: 'failed',
      reason: `The shelf could not be kept: ${why}. Export it, so that it is not lost.`,
    })
    const parsed = readShelf(text)
    if (!parsed.ok) {
      const [first] = parsed.problems
      return failed(
        `${first!.path === '' ? 'its content' : first!.path} is ${first!.found}; it should be ${first!.wanted}`,
      )
    }
    try {
      await writer.write(file, formatShelf(parsed.shelf))
      return { kind: 'kept' }
    } catch (error) {
      return failed(reason(error))
    }
  }

  return { read, keep }
}

export type PartsShelf = ReturnType<typeof partsShelf>
