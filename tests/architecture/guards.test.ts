import { execFile } from 'node:child_process'
import { mkdirSync, mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import path from 'node:path'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { root } from './imports.ts'
import { mustCompile, mustLint, mustNotCompile, mustNotLint, type Trial } from './trials.ts'

/**
 * The guards of the layers are settings, and a setting that has stopped working looks like a clean project.
 * So files that break each rule are written at the places the rules speak of, beside a copy of the settings, and must be refused.
 */
const copy = mkdtempSync(path.join(tmpdir(), 'guards-'))
afterAll(() => rmSync(copy, { recursive: true, force: true }))
// Apart from each other: one import of Electron brings Node's names into sight of the compiler.
const [linted, compiled] = [path.join(copy, 'linted'), path.join(copy, 'compiled')]

function write(file: string, text: string | Buffer): void {
  mkdirSync(path.dirname(file), { recursive: true })
  writeFileSync(file, text)
}

const copySettings = (top: string, ...files: string[]) => {
  for (const file of files) write(path.join(top, file), readFileSync(path.join(root, file)))
}

/** Each trial as a file of its own in the folder it names: [what to call it, the file, what must be said of it]. */
const place = (top: string, trials: readonly Trial[], name: string) =>
  trials.map((trial, i) => {
    const file = `${trial.path}/${name}-${i}.ts`
    write(path.join(top, file), `${trial.source}\n`)
    return [`${trial.path}: ${trial.source.split('\n')[0]}`, file, trial.says ?? /^$/] as const
  })

/** What a program printed, content or not; that it could not be started at all is an error. */
const printed = (cwd: string, program: string, args: string[]): Promise<string> =>
  new Promise((resolve, reject) => {
    const file = path.join(root, 'node_modules/.bin', program)
    const options = { cwd, shell: process.platform === 'win32', maxBuffer: 1e8 }
    execFile(file, args, options, (problem, output) =>
      problem !== null && typeof problem.code !== 'number' ? reject(problem) : resolve(output),
    )
  })

describe('the linter', () => {
  copySettings(linted, '.biome.json', '.gitignore')
  const said = new Map<string, string>()

  beforeAll(async () => {
    const report = await printed(linted, 'biome', [
      'lint',
      '--reporter=json',
      '--max-diagnostics=none',
      '--diagnostic-level=error',
    ])
    const { diagnostics } = JSON.parse(report) as { diagnostics: { message: string; location: { path: string } }[] }
    for (const { message, location } of diagnostics)
      said.set(location.path, `${said.get(location.path) ?? ''}${message}\n`)
  })

  it('has something to refuse', () => expect(mustNotLint.length).toBeGreaterThan(30))
  it.each(place(linted, mustNotLint, 'wrong'))('refuses %s', (_, file, says) =>
    expect(said.get(file) ?? '').toMatch(says),
  )
  it.each(place(linted, mustLint, 'right'))('lets pass %s', (_, file) => expect(said.get(file)).toBeUndefined())
})

describe('the compiler', () => {
  const projects = ['core', 'electron/contract', 'electron', 'renderer']
  copySettings(compiled, 'tsconfig.json', ...projects.map(folder => `${folder}/tsconfig.json`))
  symlinkSync(path.join(root, 'node_modules'), path.join(compiled, 'node_modules'), 'junction')
  const said = new Map<string, string>()

  beforeAll(async () => {
    const outputs = await Promise.all(
      projects.map(folder => printed(compiled, 'tsc', ['--pretty', 'false', '-p', folder])),
    )
    for (const [, file, message] of outputs.join('\n').matchAll(/^(.+?)\(\d+,\d+\): (.*)$/gm))
      said.set(file!, `${said.get(file!) ?? ''}${message}\n`)
  })

  it('has something to refuse', () => expect(mustNotCompile.length).toBeGreaterThan(15))
  it.each(place(compiled, mustNotCompile, 'unseen'))('refuses %s', (_, file, says) =>
    expect(said.get(file) ?? '').toMatch(says),
  )
  it.each(place(compiled, mustCompile, 'seen'))('lets pass %s', (_, file) => expect(said.get(file)).toBeUndefined())
})
