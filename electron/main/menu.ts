import type { MenuItemConstructorOptions } from 'electron'
import type { MenuCommand } from '../contract/contract.ts'
import type { Settings } from '../contract/shapes.ts'

export interface MenuChoices {
  command(command: MenuCommand): void
  theme(theme: Settings['theme']): void
}

/**
 * The native menu, by the conventions of each platform. The page handles the same keys itself, and a key it has
 * handled does not reach the menu.
 */
export function menuTemplate(
  platform: NodeJS.Platform,
  theme: Settings['theme'],
  choices: MenuChoices,
): MenuItemConstructorOptions[] {
  const mac = platform === 'darwin'
  const item = (label: string, accelerator: string | null, command: MenuCommand): MenuItemConstructorOptions => ({
    label,
    ...(accelerator === null ? {} : { accelerator }),
    click: () => choices.command(command),
  })
  const themed = (label: string, value: Settings['theme']): MenuItemConstructorOptions => ({
    label,
    type: 'radio',
    checked: theme === value,
    click: () => choices.theme(value),
  })
  const separator: MenuItemConstructorOptions = { type: 'separator' }
  return [
    ...(mac ? [{ role: 'appMenu' as const }] : []),
    {
      label: '&File',
      submenu: [
        item('&New', 'CmdOrCtrl+N', 'new'),
        item('&Open…', 'CmdOrCtrl+O', 'open'),
        item('Open a &recording…', 'CmdOrCtrl+Shift+O', 'record'),
        separator,
        item('&Save', 'CmdOrCtrl+S', 'save'),
        item('Save &as…', 'CmdOrCtrl+Shift+S', 'saveAs'),
        separator,
        item('&Print…', 'CmdOrCtrl+P', 'print'),
        separator,
        mac ? { role: 'close' } : { role: 'quit' },
      ],
    },
    {
      label: '&Edit',
      submenu: [
        item('&Undo', 'CmdOrCtrl+Z', 'undo'),
        item('&Redo', platform === 'win32' ? 'Ctrl+Y' : 'CmdOrCtrl+Shift+Z', 'redo'),
        separator,
        { role: 'cut' },
        { role: 'copy' },
        { role: 'paste' },
        { role: 'selectAll' },
      ],
    },
    {
      label: '&View',
      submenu: [
        themed('Colors of the system', 'system'),
        themed('Light', 'light'),
        themed('Dark', 'dark'),
        separator,
        { role: 'resetZoom' },
        { role: 'zoomIn' },
        { role: 'zoomOut' },
        separator,
        { role: 'togglefullscreen' },
      ],
    },
    ...(mac ? [{ role: 'windowMenu' as const }] : []),
    {
      role: 'help',
      submenu: [
        item('&Help with the words', mac ? 'Cmd+?' : 'F1', 'help'),
        item('A &first look', null, 'guide'),
        separator,
        item('Show &log', null, 'log'),
        item('&About Stopgap', null, 'about'),
      ],
    },
  ]
}
