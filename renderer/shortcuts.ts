import { useEffect } from 'react'
import { redo, undo } from './state/edit.ts'
import type { Files } from './state/files.ts'
import { open } from './state/opening.ts'
import { save, saveAs } from './state/saving.ts'
import { openDialog } from './state/view.ts'

export type Command = 'new' | 'open' | 'save' | 'saveAs' | 'undo' | 'redo' | 'print'

export function run(files: Files, command: Command): void {
  const { store } = files
  if (command === 'new') openDialog(store, { kind: 'start' })
  else if (command === 'open') void open(files)
  else if (command === 'save') void save(files)
  else if (command === 'saveAs') void saveAs(files)
  else if (command === 'undo') undo(store)
  else if (command === 'redo') redo(store)
  else window.print()
}

const onMac = /mac/i.test(navigator.platform)

/** The keys of a command as this machine writes them. */
export function keysOf(command: Command): string {
  const keys: Readonly<Record<Command, string>> = onMac
    ? { new: '⌘N', open: '⌘O', save: '⌘S', saveAs: '⇧⌘S', undo: '⌘Z', redo: '⇧⌘Z', print: '⌘P' }
    : {
        new: 'Ctrl+N',
        open: 'Ctrl+O',
        save: 'Ctrl+S',
        saveAs: 'Ctrl+Shift+S',
        undo: 'Ctrl+Z',
        redo: 'Ctrl+Y',
        print: 'Ctrl+P',
      }
  return keys[command]
}

type Keys = Pick<KeyboardEvent, 'key' | 'shiftKey' | 'altKey' | 'ctrlKey' | 'metaKey'>

/** The command a key press stands for, by the platform's own convention; null for none. */
export function commandOf({ key, shiftKey, altKey, ctrlKey, metaKey }: Keys, mac: boolean): Command | null {
  if (altKey || (mac ? !metaKey || ctrlKey : !ctrlKey || metaKey)) return null
  const letter = key.toLowerCase()
  if (letter === 'n' && !shiftKey) return 'new'
  if (letter === 'o' && !shiftKey) return 'open'
  if (letter === 's') return shiftKey ? 'saveAs' : 'save'
  if (letter === 'z') return shiftKey ? 'redo' : 'undo'
  return letter === 'y' && !mac && !shiftKey ? 'redo' : null
}

/** The keys of the window. A dialog has the keyboard to itself. */
export function useShortcuts(files: Files): void {
  useEffect(() => {
    const onKeyDown = (event: KeyboardEvent) => {
      const command = commandOf(event, onMac)
      if (command === null || event.defaultPrevented || document.querySelector('dialog[open]') !== null) return
      event.preventDefault()
      run(files, command)
    }
    window.addEventListener('keydown', onKeyDown)
    return () => window.removeEventListener('keydown', onKeyDown)
  }, [files])
}
