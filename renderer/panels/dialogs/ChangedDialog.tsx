import { takeTheirs } from '../../state/opening.ts'
import { save, saveAs } from '../../state/saving.ts'
import { openDialog } from '../../state/view.ts'
import { useFiles, useSelect } from '../../window-context.ts'
import { Dialog } from './Dialog.tsx'

const moment = new Intl.DateTimeFormat(undefined, { dateStyle: 'medium', timeStyle: 'short' })

/** The file was written by somebody else since it was opened: whose plan counts? */
export function ChangedDialog({ savedAt }: { savedAt: string }) {
  const files = useFiles()
  const name = useSelect(state => state.document.name)
  const close = () => openDialog(files.store, null)
  return (
    <Dialog title="The file has changed" className="question" onClose={close}>
      <p>
        “{name}” was changed by somebody else, or another window, on {moment.format(new Date(savedAt))}. Saving now
        would replace that.
      </p>
      <footer>
        <button type="button" className="plain" onClick={close}>
          Cancel
        </button>
        <button type="button" className="plain" onClick={() => void takeTheirs(files)}>
          Open theirs, set mine aside
        </button>
        <button type="button" className="plain" onClick={() => void save(files, true)}>
          Replace theirs
        </button>
        <button type="button" className="chief" onClick={() => void saveAs(files)}>
          Save mine in another file
        </button>
      </footer>
    </Dialog>
  )
}
