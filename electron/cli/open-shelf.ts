import { resolve } from 'node:path'
import type { Shelf } from '../../core/changes/shelf.ts'
import { readShelf } from '../../core/plan/shelf-file.ts'
import { readText } from '../services/plan-file.ts'
import { problemsText } from './open-plan.ts'

/**
 * The shelf in a file, or what to tell the person instead.
 * @param file as the person named it
 * @param folder where the name is taken from
 */
export async function openShelf(file: string, folder: string): Promise<Shelf | { readonly problem: string }> {
  const read = await readText(resolve(folder, file))
  if (read.kind !== 'text')
    return { problem: `${file} could not be read: ${read.kind === 'missing' ? 'there is no such file' : read.why}.\n` }
  const parsed = readShelf(read.text)
  return parsed.ok ? parsed.shelf : { problem: problemsText(file, parsed.problems) }
}
