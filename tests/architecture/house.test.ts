import { readdirSync, readFileSync } from 'node:fs'
import path from 'node:path'
import { describe, expect, it } from 'vitest'
import { filesBelow, root } from './imports.ts'

const sources = ['core', 'electron', 'renderer', 'tests', 'seeds'].flatMap(filesBelow)

describe('the house', () => {
  it('has nothing at its top that has a place further in', () => {
    const ignored = readFileSync(path.join(root, '.gitignore'), 'utf8')
      .split('\n')
      .map(line => line.replace(/\/$/, ''))
    const allowed = [
      ...['README.md', 'DEVELOPERS.md', 'LICENSE', 'package.json', 'package-lock.json', 'tsconfig.json'],
      ...['core', 'electron', 'renderer', 'tests', 'seeds'],
    ]
    const top = readdirSync(root).filter(name => !name.startsWith('.') && !ignored.includes(name))
    expect(top.filter(name => !allowed.includes(name))).toEqual([])
  })

  it('has no folder named for nothing in particular', () => {
    const vague = /(^|\/)(utils?|helpers?|common|lib|misc|shared)\//
    expect(vague.test('core/utils/math.ts')).toBe(true)
    expect(sources.filter(file => vague.test(file))).toEqual([])
  })

  it('keeps tests where their runner looks for them', () => {
    const tests = sources.filter(file => /\.(test|spec)\.[^/]*$/.test(file))
    const misplaced = tests.filter(file =>
      file.startsWith('tests/e2e/') ? !/\.spec\.ts$/.test(file) : !/^tests\/.*\.test\.tsx?$/.test(file),
    )
    expect(tests.length).toBeGreaterThan(0)
    expect(misplaced).toEqual([])
  })
})
