import { appendFile, mkdir, rename, stat } from 'node:fs/promises'
import { homedir } from 'node:os'
import { join, sep } from 'node:path'
import { refusal } from './reason.ts'

/** Once larger than this, bytes, the log becomes the old one and a new one begins: both together stay small enough to send. */
const largest = 256 * 1024

/**
 * What went wrong, with its time, in one file the person can find and send. Nothing of a plan is in it: what stands between quotation marks in a
 * message is left out, since that is where names, texts and paths are.
 */
export function logIn(folder: string) {
  const path = join(folder, 'log.txt')
  let last: Promise<void> = Promise.resolve()

  async function append(text: string): Promise<void> {
    try {
      await mkdir(folder, { recursive: true, mode: 0o700 })
      const size = await stat(path).then(
        found => found.size,
        () => 0,
      )
      if (size > largest) await rename(path, join(folder, 'log.old.txt'))
      await appendFile(path, text, { mode: 0o600 })
    } catch (error) {
      // The person hears of a folder that cannot be written from what is kept there; a log has nowhere else to say it.
      if (refusal(error) === null) throw error
    }
  }

  return {
    /** As a person would look for it: the home folder is written ~. */
    place: nearHome(path),
    path,
    /** One line after another, never mixed. */
    write(line: string): Promise<void> {
      last = last.then(() => append(`${new Date().toISOString()} ${line}\n`))
      return last
    },
  }
}

const nearHome = (path: string): string =>
  path.startsWith(homedir() + sep) ? `~${path.slice(homedir().length)}` : path

const quotes = /“[^”]*”|"[^"]*"|'[^']*'|`[^`]*`/g
const longest = 500

/** An error as the log has it: its kind, its message without what is quoted, and where in the program it was. */
export function faultLine(error: unknown): string {
  if (!(error instanceof Error)) return withoutQuotes(String(error))
  const code = refusal(error)
  const where = (error.stack ?? '').split('\n').filter(line => /^\s+at /.test(line))
  const message = code === null ? withoutQuotes(error.message) : `the system says ${code}`
  return [`${error.name}: ${message}`, ...where.slice(0, 12).map(withoutFolders)].join('\n')
}

/** JSON and schema errors quote what they read; what is left says enough. */
export const withoutQuotes = (message: string): string =>
  message.replace(quotes, '“…”').replace(/\s+/g, ' ').slice(0, longest)

/** The name of the file and the line in it, without the way to it. */
const withoutFolders = (line: string): string => line.replace(/(?:file:\/\/)?[^\s()]*[/\\]/g, '')
