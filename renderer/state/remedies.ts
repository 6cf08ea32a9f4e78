import type { Files } from './files.ts'
import { dismiss, type Remedy } from './notices.ts'
import { backToFile, open, openToken } from './opening.ts'
import { saveAs } from './saving.ts'
import { openDialog } from './view.ts'

/** Does what a notice offers. */
export async function take(files: Files, about: string, remedy: Remedy): Promise<void> {
  dismiss(files.store, about)
  if (remedy.kind === 'openFile') await openToken(files, remedy.token)
  else if (remedy.kind === 'open') await open(files)
  else if (remedy.kind === 'saveAs') await saveAs(files)
  else if (remedy.kind === 'backToFile') await backToFile(files)
  else openDialog(files.store, { kind: 'start' })
}
