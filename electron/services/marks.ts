import { randomUUID } from 'node:crypto'
import { link, mkdir, readdir, readFile, rename, rm, stat, utimes, writeFile } from 'node:fs/promises'
import { hostname } from 'node:os'
import { join } from 'node:path'
import { z } from 'zod'
import { isRunning } from './is-running.ts'
import { hearOfFiles } from './marks-of-others.ts'
import { refusal } from './reason.ts'

const schema = z.object({ run: z.string(), pid: z.int().positive(), machine: z.string() })
type Mark = z.infer<typeof schema>

const beat = 15_000
/** A mark nobody has renewed for this long, ms, was left behind, whatever program has its number now. */
const staleAfter = 60_000
/** What was left behind is removed after a day, ms. */
const longAgo = 24 * 3600 * 1000
const ending = '.json'

/**
 * Who has what in hand, among all Stopgaps that share this folder: one small file for each thing, made by whoever comes first.
 * A mark whose program has ended counts for nothing, so a kill leaves nothing locked. Where the folder cannot be written nothing
 * is known, and everybody takes what they ask for.
 * @param others hears of a mark that another Stopgap has set down, while this one has some of its own
 */
export function marksIn(folder: string, others: (name: string) => void = () => undefined) {
  const own: Mark = { run: randomUUID(), pid: process.pid, machine: hostname() }
  const ours = new Set<string>()
  let heart: NodeJS.Timeout | undefined
  let deafen: (() => void) | undefined
  const fileOf = (name: string) => join(folder, `${name}${ending}`)

  /** Whether this run has it now, because nobody else had. */
  async function take(name: string): Promise<boolean> {
    try {
      await mkdir(folder, { recursive: true, mode: 0o700 })
      if (!(await put(name))) {
        ours.delete(name)
        return false
      }
      ours.add(name)
      heart ??= setInterval(() => void renew(), beat).unref()
      deafen ??= hearOfFiles(folder, fileName => void heard(fileName))
      return true
    } catch (error) {
      if (refusal(error) === null) throw error
      return true
    }
  }

  async function put(name: string): Promise<boolean> {
    const path = fileOf(name)
    if (ours.has(name) && (await holderOf(path)) === own.run) return true
    const mine = `${path}.${randomUUID()}`
    await writeFile(mine, JSON.stringify(own), { mode: 0o600 })
    try {
      if (await setDown(mine, path)) return true
      const before = await holderOf(path)
      if (before !== null) return before === own.run
      await rename(mine, path)
      // Of two that find the same mark left behind, the later one has it.
      return (await holderOf(path)) === own.run
    } finally {
      await rm(mine, { force: true })
    }
  }

  /** Makes the mark with all that is in it at once, so that a kill leaves none half made. false where there is one. */
  async function setDown(mine: string, path: string): Promise<boolean> {
    try {
      await link(mine, path)
      return true
    } catch (error) {
      if (refusal(error) === 'EEXIST') return false
      if (refusal(error) === null) throw error
    }
    // Some disks have no second names for a file.
    try {
      await writeFile(path, JSON.stringify(own), { flag: 'wx', mode: 0o600 })
      return true
    } catch (error) {
      if (refusal(error) === 'EEXIST') return false
      throw error
    }
  }

  /** The run that holds a mark; null when it was left behind or has gone. */
  async function holderOf(path: string): Promise<string | null> {
    try {
      const [text, { mtimeMs }] = await Promise.all([readFile(path, 'utf8'), stat(path)])
      const isFresh = Date.now() - mtimeMs < staleAfter
      const read = schema.safeParse(json(text))
      // Another is about to write it.
      if (!read.success) return isFresh ? '' : null
      const { run, pid, machine } = read.data
      if (run === own.run) return run
      const hasEnded = machine === own.machine && (pid === own.pid || !isRunning(pid))
      return isFresh && !hasEnded ? run : null
    } catch (error) {
      if (refusal(error) === 'ENOENT') return null
      throw error
    }
  }

  async function heard(fileName: string): Promise<void> {
    if (!fileName.endsWith(ending)) return
    const name = fileName.slice(0, -ending.length)
    if (ours.has(name)) return
    try {
      const holder = await holderOf(fileOf(name))
      if (holder !== null && holder !== '' && holder !== own.run) others(name)
    } catch (error) {
      if (refusal(error) === null) throw error
    }
  }

  async function renew(): Promise<void> {
    const now = new Date()
    // One that has gone, or cannot be reached, is looked at again when it is taken next.
    await Promise.all([...ours].map(name => utimes(fileOf(name), now, now).catch(() => undefined)))
  }

  async function drop(name: string): Promise<void> {
    if (!ours.delete(name)) return
    if (ours.size === 0) {
      clearInterval(heart)
      deafen?.()
      heart = undefined
      deafen = undefined
    }
    try {
      const path = fileOf(name)
      if ((await holderOf(path)) === own.run) await rm(path, { force: true })
    } catch (error) {
      if (refusal(error) === null) throw error
    }
  }

  /** Removes what ended programs left long ago: a mark from just now may be about to be somebody's. */
  async function tidy(): Promise<void> {
    try {
      for (const name of await readdir(folder)) {
        const path = join(folder, name)
        const { mtimeMs } = await stat(path)
        if (Date.now() - mtimeMs > longAgo && (await holderOf(path)) === null) await rm(path, { force: true })
      }
    } catch (error) {
      if (refusal(error) === null) throw error
    }
  }

  return { take, drop, tidy }
}

export type Marks = ReturnType<typeof marksIn>

function json(text: string): unknown {
  try {
    return JSON.parse(text)
  } catch {
    return undefined
  }
}
