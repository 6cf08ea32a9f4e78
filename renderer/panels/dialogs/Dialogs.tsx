import { useSelect } from '../../window-context.ts'
import { ChangedDialog } from './ChangedDialog.tsx'
import { ChooserDialog } from './ChooserDialog.tsx'
import { LateDialog } from './LateDialog.tsx'

const fetchStart = async () => (await import('./StartDialog.tsx')).StartDialog
const fetchRoll = async () => (await import('./RollDialog.tsx')).RollDialog
const fetchHelp = async () => (await import('../../help/HelpDialog.tsx')).HelpDialog
const fetchAbout = async () => (await import('../../about/AboutDialog.tsx')).AboutDialog

/** The one dialog that is open, if any. */
export function Dialogs() {
  const dialog = useSelect(state => state.view.dialog)
  if (dialog === null) return null
  if (dialog.kind === 'start') return <LateDialog fetchDialog={fetchStart} given={{}} />
  if (dialog.kind === 'roll') return <LateDialog fetchDialog={fetchRoll} given={{}} />
  if (dialog.kind === 'help') return <LateDialog fetchDialog={fetchHelp} given={{ term: dialog.term }} />
  if (dialog.kind === 'about') return <LateDialog fetchDialog={fetchAbout} given={{}} />
  if (dialog.kind === 'changed') return <ChangedDialog savedAt={dialog.savedAt} />
  return <ChooserDialog key={dialog.purpose} purpose={dialog.purpose} />
}
