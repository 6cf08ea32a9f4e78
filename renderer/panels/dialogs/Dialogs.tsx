import { useSelect } from '../../window-context.ts'
import { ChangedDialog } from './ChangedDialog.tsx'
import { ChooserDialog } from './ChooserDialog.tsx'
import { LateDialog } from './LateDialog.tsx'
import { RollDialog } from './RollDialog.tsx'
import { StartDialog } from './StartDialog.tsx'

const fetchHelp = async () => (await import('../../help/HelpDialog.tsx')).HelpDialog
const fetchAbout = async () => (await import('../../about/AboutDialog.tsx')).AboutDialog

/** The one dialog that is open, if any. */
export function Dialogs() {
  const dialog = useSelect(state => state.view.dialog)
  if (dialog === null) return null
  if (dialog.kind === 'start') return <StartDialog />
  if (dialog.kind === 'roll') return <RollDialog />
  if (dialog.kind === 'help') return <LateDialog fetchDialog={fetchHelp} given={{ term: dialog.term }} />
  if (dialog.kind === 'about') return <LateDialog fetchDialog={fetchAbout} given={{}} />
  if (dialog.kind === 'changed') return <ChangedDialog savedAt={dialog.savedAt} />
  return <ChooserDialog key={dialog.purpose} purpose={dialog.purpose} />
}
