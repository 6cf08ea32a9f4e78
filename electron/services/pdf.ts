import type { Reply } from '../contract/contract.ts'

/** A page as a PDF by the host's own means, or why there is none. */
export async function pdfOf(
  html: string,
  print: ((html: string) => Promise<Uint8Array>) | undefined,
): Promise<Reply<'pdf'>> {
  if (print === undefined)
    return {
      kind: 'none',
      reason: 'This window is shown without a browser Stopgap could print with. Choose Print, and “Save as PDF” there.',
    }
  try {
    return { kind: 'pdf', base64: Buffer.from(await print(html)).toString('base64') }
  } catch (error) {
    if (!(error instanceof Error)) throw error
    return {
      kind: 'failed',
      reason: `The PDF could not be made: ${error.message}. Print it, and save it as PDF there.`,
    }
  }
}
