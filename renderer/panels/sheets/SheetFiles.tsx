import { useState } from 'react'
import { SHEETS, type SheetKind, type SheetRequest } from '../../sheets/request.ts'
import { sheetHtml, sheetSvg } from '../../sheets/sheet-file.tsx'
import { guarded } from '../../state/files.ts'
import { notify } from '../../state/notices.ts'
import { useFiles } from '../../window-context.ts'
import { handOut, sheetFileName } from './hand-out.ts'

/** Print, and save in each form. */
export function SheetFiles({ request, kind }: { request: SheetRequest; kind: SheetKind }) {
  const files = useFiles()
  const [busy, setBusy] = useState(false)
  const name = (ending: string): string => sheetFileName(request.plan.title, SHEETS[kind].toLowerCase(), ending)
  const tell = (text: string): void => notify(files.store, { about: 'sheet', text })
  const save = (ending: 'html' | 'svg', type: string): void => {
    const made = (ending === 'svg' ? sheetSvg : sheetHtml)(request, [kind])
    if (made.ok) handOut(name(ending), new Blob([made.text], { type }))
    else tell(made.problem)
  }
  const pdf = async (): Promise<void> => {
    const made = sheetHtml(request, [kind])
    if (!made.ok) return tell(made.problem)
    setBusy(true)
    const reply = await guarded(files, 'sheet', () => files.host.call('pdf', { html: made.text }))
    setBusy(false)
    if (reply === null) return
    if (reply.kind !== 'pdf') return tell(reply.reason)
    const bytes = Uint8Array.from(atob(reply.base64), letter => letter.charCodeAt(0))
    handOut(name('pdf'), new Blob([bytes], { type: 'application/pdf' }))
  }
  return (
    <div className="sheet-files">
      <button type="button" onClick={() => window.print()}>
        Print
      </button>
      <button type="button" disabled={busy} onClick={() => void pdf()}>
        {busy ? 'Making the PDF' : 'Save as PDF'}
      </button>
      <button type="button" onClick={() => save('html', 'text/html')}>
        Save as HTML
      </button>
      <button type="button" onClick={() => save('svg', 'image/svg+xml')}>
        Save as SVG
      </button>
    </div>
  )
}
