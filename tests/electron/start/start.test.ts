import { spawn } from 'node:child_process'
import { chmod, mkdir, readdir, readFile, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import { beforeEach, describe, expect, it, vi } from 'vitest'
import { budgetOf } from '../../../electron/start/terminal.ts'
import { newFolder } from '../folder.ts'
import { openPage } from '../hosts/page.ts'
import { planText } from '../plan.ts'
import { startProgram } from './process.ts'

vi.setConfig({ testTimeout: 120_000 })

const root = join(import.meta.dirname, '../../..')
const address = /http:\/\/127\.0\.0\.1:\d+\/enter\?ticket=\S+/

const call = async (page: Window, name: string, request: unknown) => {
  const secret = page.location.hash.slice('#page='.length)
  const headers = { 'x-stopgap-page': secret, 'content-type': 'application/json' }
  const response = await page.fetch(`/call/${name}`, { method: 'POST', headers, body: JSON.stringify(request) })
  return response.json()
}

/** A program in the place of a browser: it does with the address what `script` says. */
async function fakeBrowser(folder: string, script: string): Promise<string> {
  const path = join(folder, 'browser.mjs')
  const head = `#!${process.execPath}\nimport { writeFileSync } from 'node:fs'\nconst args = process.argv.slice(2)\n`
  await writeFile(path, `${head}${script}`)
  await chmod(path, 0o755)
  return path
}

/** Enters as a window does, listens, and is closed when \`closes\` says. */
const asWindow = (closes: string) => `
const first = await fetch(args[0].slice('--app='.length), { redirect: 'manual' })
const origin = new URL(first.url).origin
const cookie = first.headers.get('set-cookie').split(';')[0]
const secret = first.headers.get('location').slice('/#page='.length)
const headers = { cookie, origin, 'x-stopgap-page': secret, 'content-type': 'application/json' }
const stream = await fetch(origin + '/events', { headers })
const started = await fetch(origin + '/call/start', { method: 'POST', headers, body: '{}' })
const { document } = await started.json()
writeFileSync(process.env.SEEN, JSON.stringify({ name: document.name, args }))
${closes}`

describe('without a display', () => {
  it('says so, prints the budget of the file, and serves the window until it is told to end', async () => {
    const folder = await newFolder()
    await writeFile(join(folder, 'Rear.stopgap'), planText('A plan of its own'))
    const run = startProgram(['Rear.stopgap'], { INIT_CWD: folder, STOPGAP_DATA: join(folder, 'data') })
    const [printed] = await run.says(address)
    expect(run.said()).toMatch(/^There is no display here, so Electron is not started\.\n/)
    expect(run.said()).toContain('no browser is started')
    expect(run.said()).toContain('A plan of its own')
    const page = await openPage(printed)
    expect(await call(page, 'start', {})).toMatchObject({ document: { name: 'Rear' }, about: { host: 'browser' } })
    expect(run.child.exitCode).toBe(null)
    run.child.kill('SIGTERM')
    expect(await run.exit()).toBe(0)
  })

  it('prints the address alone when told to serve only', async () => {
    const run = startProgram(['--serve'], { STOPGAP_DATA: await newFolder() })
    await run.says(address)
    expect(run.said().trim().split('\n')).toHaveLength(2)
    run.child.kill('SIGINT')
    expect(await run.exit()).toBe(0)
  })

  it('says what is wrong with the file, and serves all the same', async () => {
    const folder = await newFolder()
    const run = startProgram([join(folder, 'None.stopgap')], { STOPGAP_HOST: 'terminal', STOPGAP_DATA: folder })
    await run.says(address)
    expect(run.said()).toContain('None.stopgap could not be read: there is no such file.')
  })
})

it('says everything that is wrong with a file, each by its place', async () => {
  const folder = await newFolder()
  const { title: _title, ...rest } = JSON.parse(planText('A plan')) as Record<string, unknown>
  await writeFile(join(folder, 'Odd.stopgap'), JSON.stringify({ ...rest, units: 'miles' }))
  const said = await budgetOf(folder, join(folder, 'Odd.stopgap'))
  expect(said).toContain('2 values are not right')
  expect(said).toMatch(/units\n {2}found: {2}"miles"/)
})

it('ends with whoever started it, though that was killed and could not say so', async ({ skip }) => {
  skip(process.platform === 'win32', 'the starter of this test is a shell Windows does not have')
  const script = '"$0" --import tsx electron/start/main.ts --serve; echo over'
  const env = { ...process.env, STOPGAP_DATA: await newFolder() }
  const shell = spawn('sh', ['-c', script, process.execPath], { cwd: root, env, stdio: ['ignore', 'pipe', 'inherit'] })
  let said = ''
  shell.stdout.on('data', (chunk: Buffer) => (said += chunk))
  await vi.waitFor(() => expect(said).toMatch(address), { timeout: 60_000, interval: 50 })
  const { origin } = new URL(address.exec(said)![0])
  expect((await fetch(origin)).status).toBe(403)
  shell.kill('SIGKILL')
  await vi.waitFor(() => expect(fetch(origin)).rejects.toThrow(), { timeout: 20_000, interval: 200 })
})

describe('with an installed browser', () => {
  beforeEach(({ skip }) =>
    skip(process.platform === 'win32', 'the stand-in for a browser is a script, which Windows does not start'),
  )

  it('ends with its window, leaves no profile behind, and ends the browser when it is told to end', async () => {
    for (const closes of ['process.exit(0)', 'setTimeout(() => {}, 60_000)']) {
      const folder = await newFolder()
      const seen = join(folder, 'seen.json')
      await mkdir(join(folder, 'tmp'))
      const env = {
        DISPLAY: ':test',
        STOPGAP_HOST: 'browser',
        STOPGAP_BROWSER: await fakeBrowser(folder, asWindow(closes)),
        STOPGAP_DATA: join(folder, 'data'),
        TMPDIR: join(folder, 'tmp'),
        SEEN: seen,
      }
      const run = startProgram([], env)
      const { name, args } = await vi.waitFor(async () => JSON.parse(await readFile(seen, 'utf8')), { timeout: 15_000 })
      expect(name).not.toBe('')
      expect(args[1]).toMatch(/^--user-data-dir=.*stopgap-window-/)
      if (closes !== 'process.exit(0)') run.child.kill('SIGTERM')
      expect(await run.exit()).toBe(0)
      expect((await readdir(join(folder, 'tmp'))).filter(each => each.startsWith('stopgap-window-'))).toEqual([])
      expect(run.said()).toBe('')
    }
  })

  it('says why when Electron cannot be fetched and the browser does not come up, and serves the window', async () => {
    const folder = await newFolder()
    const run = startProgram([], {
      DISPLAY: ':test',
      // Electron’s program is nowhere, and its download is refused on this machine, before any network.
      ELECTRON_OVERRIDE_DIST_PATH: join(folder, 'none'),
      ELECTRON_MIRROR: 'http://127.0.0.1:9/',
      electron_config_cache: join(folder, 'cache'),
      STOPGAP_BROWSER: await fakeBrowser(folder, 'process.exit(7)'),
      STOPGAP_DATA: join(folder, 'data'),
    })
    await run.says(address)
    expect(run.said()).toContain('Electron could not be fetched: its download did not succeed.')
    expect(run.said()).toMatch(/The browser .*browser\.mjs did not show the window: it ended with code 7\./)
    run.child.kill('SIGTERM')
    expect(await run.exit()).toBe(0)
  })

  it('takes no other way when told to take one', async () => {
    const folder = await newFolder()
    const browser = await fakeBrowser(folder, 'process.exit(7)')
    const env = { DISPLAY: ':test', STOPGAP_HOST: 'browser', STOPGAP_BROWSER: browser, STOPGAP_DATA: folder }
    expect(await startProgram([], env).exit()).toBe(1)
  })
})

it.each([
  [['a.stopgap', 'b.stopgap'], {}, '2 files were given'],
  [['--fast'], {}, '--fast is not known here'],
  [[], { STOPGAP_HOST: 'fridge' }, 'STOPGAP_HOST is fridge; it can be electron, browser or terminal.'],
])('ends with 2 for %j %j', async (args, env, words) => {
  const run = startProgram(args, env)
  expect(await run.exit()).toBe(2)
  expect(run.said()).toContain(words)
})
