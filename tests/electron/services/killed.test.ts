import { spawn } from 'node:child_process'
import { once } from 'node:events'
import { readdir, readFile } from 'node:fs/promises'
import { join } from 'node:path'
import { setTimeout as pause } from 'node:timers/promises'
import { build } from 'vite'
import { expect, it } from 'vitest'
import { newDesk } from '../desk.ts'
import { newFolder } from '../folder.ts'
import { numbered, numberOf } from './numbered.ts'

const kills = 200

/** The saver as one program, so that it starts in a moment. */
async function saver(): Promise<string> {
  const outDir = await newFolder()
  await build({
    configFile: false,
    logLevel: 'warn',
    ssr: { noExternal: true },
    build: {
      ssr: join(import.meta.dirname, 'saver.ts'),
      outDir,
      emptyOutDir: true,
      target: 'node20',
      rolldownOptions: { output: { entryFileNames: 'saver.mjs' } },
    },
  })
  return join(outDir, 'saver.mjs')
}

/** Kills one saver after the other on a desk of its own. The result is how often a half-written file was left lying about. */
async function killInTurn(program: string, times: number): Promise<number> {
  const desk = await newDesk()
  const file = await desk.put('Rear.stopgap', numbered(0))
  let saved = 0
  let amidst = 0
  for (let kill = 0; kill < times; kill += 1) {
    const args = [program, desk.home, desk.data, desk.demos, file, String(saved + 1)]
    const child = spawn(process.execPath, args, { stdio: ['ignore', 'pipe', 'pipe'] })
    let said = ''
    let fault = ''
    child.stdout.on('data', (chunk: Buffer) => (said += chunk))
    child.stderr.on('data', (chunk: Buffer) => (fault += chunk))
    await Promise.race([once(child.stdout, 'data'), once(child, 'exit')])
    // Two saves and all between them, in steps of a tenth of a millisecond that never fall on the same beat.
    await pause((kill * 7.3) % 23)
    child.kill('SIGKILL')
    await once(child, 'close')
    expect(fault).toBe('')
    saved = Math.max(saved, ...said.trim().split('\n').map(Number))

    const there = numberOf(await readFile(file, 'utf8'))
    expect(there).toBeGreaterThanOrEqual(saved)
    const before = (await readdir(join(desk.data, 'previous'))).filter(name => name.endsWith('.stopgap'))
    for (const name of before) numberOf(await readFile(join(desk.data, 'previous', name), 'utf8'))
    const folders = [desk.home, join(desk.data, 'kept'), join(desk.data, 'previous')]
    const left = (await Promise.all(folders.map(folder => readdir(folder)))).flat()
    if (left.some(name => name.includes('.writing-'))) amidst += 1
    saved = there
    // A start takes longer than a save: every tenth time it is asked for what it would show.
    if (kill % 10 !== 0) continue
    const looker = desk.run({ file })
    const next = await looker.handlers.start({})
    await looker.windowClosed()
    expect(next.report).toBe(undefined)
    const opened = numberOf(next.document.text)
    expect(opened).toBeGreaterThanOrEqual(saved)
    saved = opened
  }
  expect(saved).toBeGreaterThan(times)
  return amidst
}

it(`has a plan to open, no older than the last one saved, after each of ${kills} kills in the midst of saving`, {
  timeout: 600_000,
}, async () => {
  const program = await saver()
  const amidst = await Promise.all([killInTurn(program, kills / 2), killInTurn(program, kills / 2)])
  expect(amidst[0] + amidst[1]).toBeGreaterThan(0)
})
