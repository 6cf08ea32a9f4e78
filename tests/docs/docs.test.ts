import { existsSync, readFileSync } from 'node:fs'
import path from 'node:path'
import { describe, expect, it } from 'vitest'
import { filesBelow, layers } from '../architecture/imports.ts'
import { runningStages, staticStages } from '../runner/stages.ts'
import { firstColumn, linksOf, npmCallsOf, pages, pathsIn, quotedIn, root, scriptsOf } from './pages.ts'

const { scripts, devDependencies, dependencies } = JSON.parse(
  readFileSync(path.join(root, 'package.json'), 'utf8'),
) as { scripts: Record<string, string>; devDependencies: Record<string, string>; dependencies?: Record<string, string> }
const page = (name: string): string => pages.find(each => each.name === name)!.text
const developers = page('DEVELOPERS.md')

describe('what the pages name is found', () => {
  it('in every way it is written', () => {
    const text =
      'See [a](core/a.md), ![b](b.png), [web](https://nodejs.org) or `core/units`; run `npm run x -- y`, npm test.'
    expect(linksOf(text)).toEqual(['core/a.md', 'b.png'])
    expect(pathsIn(text)).toEqual(['core/units'])
    expect(scriptsOf(text)).toEqual(['x', 'test'])
    expect(npmCallsOf(text)).toEqual(['run', 'test'])
  })

  it.each(pages)('$name has no link that leads nowhere', ({ folder, text }) =>
    expect(linksOf(text).filter(link => !existsSync(path.join(folder, link)))).toEqual([]),
  )

  it.each(pages)('$name names no command that npm does not have', ({ text }) => {
    expect(scriptsOf(text).filter(name => scripts[name] === undefined)).toEqual([])
    expect(npmCallsOf(text).filter(call => !['ci', 'run', 'start', 'test'].includes(call))).toEqual([])
  })

  it.each(pages)('$name names no file or folder that is not there', ({ text }) =>
    expect(pathsIn(text).filter(name => !existsSync(path.join(root, name)))).toEqual([]),
  )

  it('the readme names the commands to start with, and its picture', () => {
    expect(scriptsOf(page('README.md'))).toEqual(expect.arrayContaining(['start', 'test', 'stopgap']))
    expect(linksOf(page('README.md'))).toEqual(expect.arrayContaining(['seeds/window.png', 'DEVELOPERS.md', 'LICENSE']))
  })

  it('the pages name every command the command line has, and no other', async () => {
    const program = filesBelow('electron/cli')
      .map(file => readFileSync(path.join(root, file), 'utf8'))
      .join('\n')
    const has = [...program.matchAll(/\.command\('(\w+)'\)/g)].map(([, name]) => name!)
    const named = [...page('README.md').matchAll(/stopgap -- (\w+)/g)].map(([, name]) => name!)
    expect([...new Set(named)].sort()).toEqual(has.sort())
  })
})

describe('the tables for developers', () => {
  it('have every layer', () =>
    expect(firstColumn(developers, 'Layers').filter(name => name !== 'renderer/state')).toEqual([...layers]))

  it('have every stage of the tests', () => {
    const line = /npm test -- lint types .*: (.*)$/m.exec(developers)![1]!
    expect(line.split(', ')).toEqual([...new Set([...staticStages, ...runningStages].map(({ name }) => name))])
  })

  it('have every environment variable the program reads', () => {
    const source = ['electron', 'tests/e2e/playwright.config.ts']
      .flatMap(place => (place.endsWith('.ts') ? [place] : filesBelow(place)))
      .filter(file => file.endsWith('.ts'))
      .map(file => readFileSync(path.join(root, file), 'utf8'))
      .join('\n')
    const read = new Set([...source.matchAll(/\benv\.([A-Z_]+)\b/g)].map(([, name]) => name!))
    // The last is named by the build alone, which puts its value in.
    const passedOver = ['PATH', 'PROGRAMFILES', 'LOCALAPPDATA', 'NODE_ENV']
    expect(firstColumn(developers, 'Environment').sort()).toEqual(
      [...read].filter(name => !passedOver.includes(name)).sort(),
    )
  })

  it('say of every package what it is for, and of no other', () => {
    const packages = Object.keys({ ...dependencies, ...devDependencies }).filter(name => !name.startsWith('@types/'))
    expect(firstColumn(developers, 'Decisions').sort()).toEqual(packages.sort())
  })

  it('name the folders tests are in', () => {
    const folders = new Set(
      filesBelow('tests').flatMap(file => (file.split('/').length > 2 ? [file.split('/')[1]!] : [])),
    )
    folders.delete('runner')
    const told = firstColumn(developers, 'Tests').map(name => name.replace('tests/', ''))
    expect(told.sort()).toEqual([...folders].sort())
  })

  it('quote names of the code that the code has', () => {
    const source = ['core', 'electron', 'renderer']
      .flatMap(filesBelow)
      .filter(file => /\.tsx?$/.test(file))
      .map(file => readFileSync(path.join(root, file), 'utf8'))
      .join('\n')
    const words = developers
      .split('\n## ')
      .filter(part => /^(Words|Conventions|How to add)/.test(part))
      .flatMap(quotedIn)
      .flatMap(word => (/^[A-Za-z.]+$/.test(word) ? word.split('.') : []))
      .filter(word => word !== '')
    expect(words.length).toBeGreaterThan(20)
    expect(words.filter(word => !new RegExp(`\\b${word}\\b`).test(source))).toEqual([])
  })
})
