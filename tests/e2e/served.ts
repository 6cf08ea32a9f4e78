import { spawn } from 'node:child_process'
import { existsSync } from 'node:fs'
import { mkdtemp, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import path from 'node:path'

const program = path.join(import.meta.dirname, '../../dist/start.js')
const patience = 15_000

export interface Served {
  /** Lets one browser in, once. */
  address: string
  /** The application's own folder, new and empty at first: its kept copies, recent plans and settings. */
  data: string
  end(): Promise<void>
}

/** The built program, serving its window to whoever holds the address; `file` is the plan it opens first. */
export async function serveWindow(file?: string): Promise<Served> {
  if (!existsSync(program)) throw new Error('dist/start.js is not there. Run npm run build first.')
  const data = await mkdtemp(path.join(tmpdir(), 'stopgap-data-'))
  const child = spawn(process.execPath, [program, '--serve', ...(file === undefined ? [] : [file])], {
    env: { ...process.env, STOPGAP_DATA: data },
    stdio: ['ignore', 'pipe', 'pipe'],
  })
  const ended = new Promise<void>(resolve => child.once('close', () => resolve()))
  const end = async () => {
    child.kill()
    await ended
    await rm(data, { recursive: true, force: true })
  }
  try {
    return { address: await addressFrom(child), data, end }
  } catch (problem) {
    await end()
    throw problem
  }
}

function addressFrom(child: ReturnType<typeof spawn>): Promise<string> {
  return new Promise((resolve, reject) => {
    let said = ''
    const fail = (what: string) => reject(new Error(`The program ${what}; it said: ${said.trim() || 'nothing'}`))
    const late = setTimeout(() => fail(`gave no address in ${patience / 1000} s`), patience)
    const listen = (chunk: Buffer) => {
      said += chunk.toString()
      const found = /http:\/\/127\.0\.0\.1:\d+\/\S+/.exec(said)
      if (found === null) return
      clearTimeout(late)
      resolve(found[0])
    }
    child.stdout?.on('data', listen)
    child.stderr?.on('data', listen)
    child.once('close', code => {
      clearTimeout(late)
      fail(`ended with code ${code}`)
    })
  })
}
