import type { MenuItemConstructorOptions } from 'electron'
import { describe, expect, it } from 'vitest'
import { events, type MenuCommand } from '../../../electron/contract/contract.ts'
import { menuTemplate } from '../../../electron/main/menu.ts'

const flat = (items: MenuItemConstructorOptions[]): MenuItemConstructorOptions[] =>
  items.flatMap(item => [item, ...flat(Array.isArray(item.submenu) ? item.submenu : [])])

const click = (item: MenuItemConstructorOptions) => (item.click as (() => void) | undefined)?.()

describe('the native menu', () => {
  it.each(['linux', 'darwin', 'win32'] as const)('has a way to every command, no two on one key, on %s', platform => {
    const chosen: MenuCommand[] = []
    const themes: string[] = []
    const choices = {
      command: (command: MenuCommand) => chosen.push(command),
      theme: (theme: string) => themes.push(theme),
    }
    const items = flat(menuTemplate(platform, 'dark', choices))
    items.forEach(click)
    expect(chosen).toEqual(events.menu.shape.command.options)
    expect(themes).toEqual(['system', 'light', 'dark'])
    expect(items.filter(item => item.checked).map(item => item.label)).toEqual(['Dark'])
    const keys = items.flatMap(item => item.accelerator ?? [])
    expect(new Set(keys).size).toBe(keys.length)
    const roles = items.flatMap(item => item.role ?? [])
    expect(roles.includes('appMenu')).toBe(platform === 'darwin')
    expect(roles.includes('quit')).toBe(platform !== 'darwin')
    expect(roles).not.toContain('toggleDevTools')
  })
})
