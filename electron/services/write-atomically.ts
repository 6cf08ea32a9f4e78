import { randomBytes } from 'node:crypto'
import { chmod, type FileHandle, open, readdir, realpath, rename, rm, stat } from 'node:fs/promises'
import { basename, dirname, join } from 'node:path'
import { setTimeout as pause } from 'node:timers/promises'
import { refusal } from './reason.ts'

const mark = '.writing-'
const staleAfter = 60_000

/**
 * The file at `path` holds either its old content or all of `content`, whatever happens in between, and is on the disk when this returns.
 * Throws what the system says when it cannot; the old content then stands. So it does when `last`, which is asked at the very end, throws.
 *
 * Own code, not write-file-atomic 7: that takes a short write for a whole one, so that a disk filling up puts half a file in
 * place; its temporary names can be foreseen by others in a shared folder; and it leaves the folder unflushed.
 */
export async function writeAtomically(
  path: string,
  content: string | Uint8Array,
  last: () => Promise<void> = async () => undefined,
): Promise<void> {
  const target = await realpath(path).catch(() => path)
  const folder = dirname(target)
  const temporary = join(folder, `.${basename(target)}${mark}${randomBytes(6).toString('hex')}`)
  const mode = await stat(target).then(
    found => found.mode & 0o777,
    () => null,
  )
  const file = await open(temporary, 'wx')
  try {
    await writeAndFlush(file, content)
    if (mode !== null) await chmod(temporary, mode)
    await last()
    await renamePatiently(temporary, target)
  } catch (error) {
    await rm(temporary, { force: true }).catch(() => undefined)
    throw error
  }
  await flushFolder(folder)
  await sweep(folder, basename(target))
}

async function writeAndFlush(file: FileHandle, content: string | Uint8Array) {
  try {
    await file.writeFile(content, 'utf8')
    await file.sync()
  } finally {
    await file.close()
  }
}

/** On Windows a virus scanner or an indexer can hold the old file for a moment. */
async function renamePatiently(from: string, to: string) {
  const deadline = Date.now() + (process.platform === 'win32' ? 1000 : 0)
  for (;;) {
    try {
      return await rename(from, to)
    } catch (error) {
      if (Date.now() > deadline || !['EPERM', 'EACCES', 'EBUSY'].includes(refusal(error) ?? '')) throw error
      await pause(50)
    }
  }
}

/** Makes the rename itself last. Windows cannot open a folder, and some network drives refuse: then the system does it in its own time. */
async function flushFolder(folder: string) {
  if (process.platform === 'win32') return
  try {
    const handle = await open(folder, 'r')
    try {
      await handle.sync()
    } finally {
      await handle.close()
    }
  } catch (error) {
    if (refusal(error) === null) throw error
  }
}

/** Removes what a killed writer of the same file left behind. What the system refuses stays: the save itself is done. */
async function sweep(folder: string, name: string) {
  const names = (await unlessRefused(readdir(folder))) ?? []
  for (const left of names.filter(other => other.startsWith(`.${name}${mark}`))) {
    const found = await unlessRefused(stat(join(folder, left)))
    if (found !== null && Date.now() - found.mtimeMs > staleAfter) {
      await unlessRefused(rm(join(folder, left), { force: true }))
    }
  }
}

async function unlessRefused<T>(work: Promise<T>): Promise<T | null> {
  try {
    return await work
  } catch (error) {
    if (refusal(error) === null) throw error
    return null
  }
}
