import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { dataFolder } from '../../../electron/services/data-folder.ts'
import { fileNameFor } from '../../../electron/services/file-name.ts'
import { isInside } from '../../../electron/services/folders.ts'
import { reason } from '../../../electron/services/reason.ts'
import { createTokens } from '../../../electron/services/tokens.ts'

describe('dataFolder', () => {
  it('follows each platform', () => {
    expect(dataFolder('linux', {}, '/home/a')).toBe(join('/home/a', '.local', 'share', 'stopgap'))
    expect(dataFolder('linux', { XDG_DATA_HOME: '/data' }, '/home/a')).toBe(join('/data', 'stopgap'))
    expect(dataFolder('linux', { XDG_DATA_HOME: 'data' }, '/home/a')).toBe(
      join('/home/a', '.local', 'share', 'stopgap'),
    )
    expect(dataFolder('darwin', {}, '/Users/a')).toBe(join('/Users/a', 'Library', 'Application Support', 'Stopgap'))
    expect(dataFolder('win32', { APPDATA: '/roaming' }, '/a')).toBe(join('/roaming', 'Stopgap'))
    expect(dataFolder('win32', {}, '/a')).toBe(join('/a', 'AppData', 'Roaming', 'Stopgap'))
    expect(dataFolder('darwin', { STOPGAP_DATA: '/elsewhere' }, '/a')).toBe('/elsewhere')
  })
})

describe('fileNameFor', () => {
  it('gives one ending, whatever was typed', () => {
    for (const typed of ['Rear axle', ' Rear axle ', 'Rear axle.stopgap', 'Rear axle.STOPGAP']) {
      expect(fileNameFor(typed)).toEqual({ ok: true, fileName: 'Rear axle.stopgap' })
    }
  })

  it('refuses what a file system does, or what leads elsewhere', () => {
    const names = [
      '',
      ' ',
      '.stopgap',
      '..',
      '../up',
      'a/b',
      'a\\b',
      'a:b',
      'a\0b',
      '.hidden',
      'point.',
      'CON',
      'lpt1.old',
      'é'.repeat(120),
    ]
    expect(names.filter(name => fileNameFor(name).ok)).toEqual([])
  })
})

describe('isInside', () => {
  it('goes by folders, not by letters', () => {
    expect(isInside('/home/a', '/home/a')).toBe(true)
    expect(isInside('/home/a', '/home/a/b/c')).toBe(true)
    expect(isInside('/home/a', '/home/a/..b')).toBe(true)
    expect(isInside('/home/a', '/home/ab')).toBe(false)
    expect(isInside('/home/a', '/home')).toBe(false)
    expect(isInside('/home/a', '/home/a/../b')).toBe(false)
  })
})

describe('createTokens', () => {
  it('gives one token per thing, and finds nothing for others', () => {
    const tokens = createTokens()
    const one = tokens.give({ kind: 'file', path: '/a' })
    expect(tokens.give({ kind: 'file', path: '/a' })).toBe(one)
    expect(tokens.give({ kind: 'folder', path: '/a' })).not.toBe(one)
    expect(tokens.find(one)).toEqual({ kind: 'file', path: '/a' })
    expect(tokens.find(createTokens().give({ kind: 'file', path: '/a' }))).toBe(null)
  })
})

describe('reason', () => {
  it('puts a refusal of the system in words, and throws on anything else', () => {
    const full = Object.assign(new Error('ENOSPC: no space left, write'), { code: 'ENOSPC', syscall: 'write' })
    expect(reason(full)).toBe('the disk is full')
    expect(() => reason(new TypeError('ours'))).toThrow('ours')
  })
})
