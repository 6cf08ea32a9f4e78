import type { Files } from './files.ts'
import { showLog } from './log.ts'
import { dismiss, type Remedy } from './notices.ts'
import { backToFile, open, openToken, show } from './opening.ts'
import { save, saveAs } from './saving.ts'

/** Does what a notice offers. */
export async function take(files: Files, about: string, remedy: Remedy): Promise<void> {
  dismiss(files.store, about)
  if (remedy.kind === 'openFile') await openToken(files, remedy.token)
  else if (remedy.kind === 'show') await show(files, remedy.opened)
  else if (remedy.kind === 'open') await open(files)
  else if (remedy.kind === 'saveAs') await saveAs(files)
  else if (remedy.kind === 'save') await save(files)
  else if (remedy.kind === 'log') await showLog(files)
  else await backToFile(files)
}
