import { formatPlan } from '../../core/plan/file-text.ts'
import { notText, planName, salvagedText, tooLong, whyNotPlan } from '../../electron/contract/plan-text.ts'
import { longestPlan, type OpenDocument, type Opened } from '../../electron/contract/shapes.ts'

/** `instead`: what can be read of a damaged file, to show when the person wants that. */
export type Dropped = Opened & { readonly instead?: Opened }

/** A dropped file the host has no way to: its text becomes a plan that is not in a file yet. */
export async function readDropped(file: File): Promise<Dropped> {
  const failed = (why: string) => ({ kind: 'failed', reason: `“${file.name}” could not be opened: ${why}.` }) as const
  if (file.size > longestPlan) return failed(tooLong)
  let bytes: ArrayBuffer
  try {
    bytes = await file.arrayBuffer()
  } catch {
    return failed('it cannot be read')
  }
  const text = strictText(bytes)
  const why = text === null ? notText : whyNotPlan(text)
  if (text !== null && why === null) return { kind: 'document', document: inNoFile(file, text) }
  const instead = await remainsOf(file, bytes)
  return { ...failed(why ?? notText), ...(instead !== null && { instead }) }
}

function strictText(bytes: ArrayBuffer): string | null {
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes)
  } catch (error) {
    if (error instanceof TypeError) return null
    throw error
  }
}

const inNoFile = (file: File, text: string): OpenDocument => ({
  key: crypto.randomUUID(),
  token: null,
  name: planName(file.name),
  text,
  basis: null,
  savedText: null,
  savedAt: null,
  recovered: false,
})

/** Fetched when it is needed, which is seldom. */
async function remainsOf(file: File, bytes: ArrayBuffer): Promise<Opened | null> {
  const { salvage } = await import('../../core/plan/salvage.ts')
  const found = salvage(new TextDecoder().decode(bytes))
  if (found === null) return null
  const document = inNoFile(file, formatPlan(found.plan))
  return { kind: 'document', document, report: salvagedText(document.name, found) }
}
