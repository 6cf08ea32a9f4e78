import { longestPlan, type Opened } from '../../electron/contract/contract.ts'
import { notText, planName, tooLong, whyNotPlan } from '../../electron/contract/plan-text.ts'

/** A dropped file the host has no way to: its text becomes a plan that is not in a file yet. */
export async function readDropped(file: File): Promise<Opened> {
  const failed = (why: string): Opened => ({ kind: 'failed', reason: `“${file.name}” could not be opened: ${why}.` })
  if (file.size > longestPlan) return failed(tooLong)
  let text: string
  try {
    text = new TextDecoder('utf-8', { fatal: true }).decode(await file.arrayBuffer())
  } catch (error) {
    return failed(error instanceof TypeError ? notText : 'it cannot be read')
  }
  const why = whyNotPlan(text)
  if (why !== null) return failed(why)
  return {
    kind: 'document',
    document: {
      key: crypto.randomUUID(),
      token: null,
      name: planName(file.name),
      text,
      basis: null,
      savedText: null,
      savedAt: null,
      recovered: false,
    },
  }
}
