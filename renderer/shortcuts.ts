import { useEffect } from 'react'
import type { MenuCommand } from '../electron/contract/contract.ts'
import { askForRecording } from './state/brought-recording.ts'
import { redo, undo } from './state/edit.ts'
import type { Files } from './state/files.ts'
import { showLog } from './state/log.ts'
import { open } from './state/opening.ts'
import { save, saveAs } from './state/saving.ts'
import { openDialog, showGuide, showPage } from './state/view.ts'

export type Command = MenuCommand

const doing: Readonly<Record<Command, (files: Files) => void>> = {
  new: ({ store }) => openDialog(store, { kind: 'start' }),
  open: files => void open(files),
  record: files => void askForRecording(files),
  save: files => void save(files),
  saveAs: files => void saveAs(files),
  print: () => window.print(),
  undo: ({ store }) => undo(store),
  redo: ({ store }) => redo(store),
  help: ({ store }) => openDialog(store, { kind: 'help', term: null }),
  guide: ({ store }) => {
    showPage(store, 'travel')
    showGuide(store, true)
  },
  log: files => void showLog(files),
  about: ({ store }) => openDialog(store, { kind: 'about' }),
}

export const run = (files: Files, command: Command): void => doing[command](files)

const onMac = /mac/i.test(navigator.platform)

/** Commands with keys, in the order help lists them, and what each is called there. */
export const commandNames = [
  ['new', 'New plan'],
  ['open', 'Open'],
  ['record', 'Open a recording'],
  ['save', 'Save'],
  ['saveAs', 'Save as'],
  ['print', 'Print'],
  ['undo', 'Undo'],
  ['redo', 'Redo'],
  ['help', 'Help'],
] as const satisfies readonly (readonly [Command, string])[]

type Keyed = (typeof commandNames)[number][0]

/** The keys of a command as this machine writes them. */
export function keysOf(command: Keyed): string {
  const keys: Readonly<Record<Keyed, string>> = onMac
    ? {
        new: '⌘N',
        open: '⌘O',
        record: '⇧⌘O',
        save: '⌘S',
        saveAs: '⇧⌘S',
        undo: '⌘Z',
        redo: '⇧⌘Z',
        print: '⌘P',
        help: '⌘?',
      }
    : {
        new: 'Ctrl+N',
        open: 'Ctrl+O',
        record: 'Ctrl+Shift+O',
        save: 'Ctrl+S',
        saveAs: 'Ctrl+Shift+S',
        undo: 'Ctrl+Z',
        redo: 'Ctrl+Y',
        print: 'Ctrl+P',
        help: 'F1',
      }
  return keys[command]
}

type Keys = Pick<KeyboardEvent, 'key' | 'shiftKey' | 'altKey' | 'ctrlKey' | 'metaKey'>

/** The command a key press stands for, by the platform's own convention; null for none. */
export function commandOf({ key, shiftKey, altKey, ctrlKey, metaKey }: Keys, mac: boolean): Command | null {
  if (key === 'F1' && !shiftKey && !altKey && !ctrlKey && !metaKey) return 'help'
  if (altKey || (mac ? !metaKey || ctrlKey : !ctrlKey || metaKey)) return null
  const letter = key.toLowerCase()
  if (mac && letter === '?') return 'help'
  if (letter === 'n' && !shiftKey) return 'new'
  if (letter === 'o') return shiftKey ? 'record' : 'open'
  if (letter === 's') return shiftKey ? 'saveAs' : 'save'
  if (letter === 'z') return shiftKey ? 'redo' : 'undo'
  return letter === 'y' && !mac && !shiftKey ? 'redo' : null
}

/** As `commandOf`, on this machine. */
export const commandHere = (keys: Keys): Command | null => commandOf(keys, onMac)

/** The keys of the window. A dialog has the keyboard to itself. */
export function useShortcuts(files: Files): void {
  useEffect(() => {
    const onKeyDown = (event: KeyboardEvent) => {
      const command = commandHere(event)
      if (command === null || event.defaultPrevented || document.querySelector('dialog[open]') !== null) return
      event.preventDefault()
      run(files, command)
    }
    window.addEventListener('keydown', onKeyDown)
    return () => window.removeEventListener('keydown', onKeyDown)
  }, [files])
}
