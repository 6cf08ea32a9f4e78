import type { Shelf } from '../../../core/changes/shelf.ts'
import { readShelf } from '../../../core/plan/shelf-file.ts'

/** Largest file of a shelf, bytes: a thousand parts of each kind are a tenth of it. */
const LARGEST = 8 * 1024 * 1024

export type Brought = { readonly ok: true; readonly shelf: Shelf } | { readonly ok: false; readonly why: string }

/** The shelf in a file, or why it cannot be used: where it is wrong, what was found, what would be right. */
export async function bringShelf(file: File): Promise<Brought> {
  const no = (why: string): Brought => ({ ok: false, why: `“${file.name}” could not be imported: ${why}.` })
  if (file.size > LARGEST) return no(`it is larger than ${LARGEST / 1024 / 1024} MB, which no shelf is`)
  let text: string
  try {
    text = new TextDecoder('utf-8', { fatal: true }).decode(await file.arrayBuffer())
  } catch (error) {
    return no(
      error instanceof TypeError ? 'it is not text (UTF-8), so it is damaged or something else' : 'it cannot be read',
    )
  }
  const read = readShelf(text)
  if (read.ok) return read
  const [first, ...others] = read.problems
  const what = first!.path === '' ? 'its content' : first!.path
  const more = others.length === 0 ? '' : ` (and ${others.length} more like this)`
  return no(`${what} is ${first!.found}; it should be ${first!.wanted}${more}`)
}
