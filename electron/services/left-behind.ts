import { planOfSecond } from './claims.ts'
import { putAside } from './documents.ts'
import { isUnsaved } from './kept.ts'
import type { Shelves } from './shelves.ts'

/**
 * Changes of second windows that ended without saving them become plans of their own, among the recent ones. The sentences say so.
 * What is open in a window is left alone.
 */
export async function gatherLeftBehind(shelves: Shelves): Promise<string[]> {
  const sentences: string[] = []
  for (const key of await shelves.kept.keys()) {
    if (planOfSecond(key) === null) continue
    await shelves.claims.ifFree(key, async () => {
      const copy = await shelves.kept.find(key)
      if (copy === null) return
      if (isUnsaved(copy))
        sentences.push(await putAside(copy, shelves, `A second window on “${copy.name}” ended before it was saved.`))
      else await shelves.kept.forget(key)
    })
  }
  return sentences
}
