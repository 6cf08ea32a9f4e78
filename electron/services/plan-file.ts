import { createHash } from 'node:crypto'
import { access, constants, copyFile, type FileHandle, open, stat } from 'node:fs/promises'
import { basename, dirname, join } from 'node:path'
import { type Salvaged, salvage } from '../../core/plan/salvage.ts'
import { notText, tooLong, whyNotPlan } from '../contract/plan-text.ts'
import { longestPlan } from '../contract/shapes.ts'
import { reason, refusal } from './reason.ts'
import { writeAtomically } from './write-atomically.ts'

export const digest = (content: string | Uint8Array): string => createHash('sha256').update(content).digest('hex')

export interface FileText {
  text: string
  /** Of the bytes as they are on the disk. */
  basis: string
  savedAt: string
}

/** `missing`: nothing is there. `refused`: something is there, and `why` follows a colon. */
export type FileRead = ({ kind: 'text' } & FileText) | { kind: 'missing' | 'refused'; why: string }

type BytesRead = { kind: 'bytes'; bytes: Uint8Array; savedAt: string } | { kind: 'missing' | 'refused'; why: string }

/** The bytes of an ordinary file that is not too large; never more of it than that is read, however it grows meanwhile. */
async function readBytes(path: string): Promise<BytesRead> {
  try {
    const found = await stat(path)
    if (!found.isFile()) return { kind: 'refused', why: found.isDirectory() ? 'it is a folder' : 'it is not a file' }
    if (found.size > longestPlan) return { kind: 'refused', why: tooLong }
    const file = await open(path, 'r')
    try {
      const bytes = await upTo(file, longestPlan + 1, found.size)
      if (bytes.byteLength > longestPlan) return { kind: 'refused', why: tooLong }
      return { kind: 'bytes', bytes, savedAt: found.mtime.toISOString() }
    } finally {
      await file.close()
    }
  } catch (error) {
    return { kind: ['ENOENT', 'ENOTDIR'].includes(refusal(error) ?? '') ? 'missing' : 'refused', why: reason(error) }
  }
}

async function upTo(file: FileHandle, most: number, expected: number): Promise<Uint8Array> {
  const parts: Uint8Array[] = []
  let length = 0
  while (length < most) {
    const part = new Uint8Array(Math.min(most - length, Math.max(4096, expected + 1 - length)))
    const { bytesRead } = await file.read(part, 0, part.byteLength, null)
    if (bytesRead === 0) break
    parts.push(part.subarray(0, bytesRead))
    length += bytesRead
  }
  return parts.length === 1 ? parts[0]! : Buffer.concat(parts)
}

/** The text of a file that may be a plan: an ordinary file, not too large, strictly UTF-8. */
export async function readText(path: string): Promise<FileRead> {
  const read = await readBytes(path)
  if (read.kind !== 'bytes') return read
  const { bytes, savedAt } = read
  const text = strictText(bytes)
  return text === null ? { kind: 'refused', why: notText } : { kind: 'text', text, basis: digest(bytes), savedAt }
}

/** What can be read of a damaged plan file; null when that is nothing, or the file is not damaged but no plan of ours. */
export async function salvageAt(path: string): Promise<Salvaged | null> {
  const read = await readBytes(path)
  return read.kind === 'bytes' ? salvage(new TextDecoder('utf-8').decode(read.bytes)) : null
}

function strictText(bytes: Uint8Array): string | null {
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes)
  } catch (error) {
    if (error instanceof TypeError) return null
    throw error
  }
}

export async function readPlanFile(path: string): Promise<FileRead> {
  const read = await readText(path)
  const why = read.kind === 'text' ? whyNotPlan(read.text) : null
  return why === null ? read : { kind: 'refused', why }
}

export type FileWritten =
  /** `aside`: the file that was there was no plan, and is kept beside it under this name. `anew`: there was a file, and it had gone. */
  | { kind: 'written'; basis: string; savedAt: string; aside?: string; anew?: true }
  | { kind: 'changed'; savedAt: string; savedText: string | null }
  | { kind: 'refused'; why: string }

/**
 * Puts `text` in the file, unless the file is not what the writer last saw (`basis`; null: no file).
 * `replace` overrides that. Only a plan is written. `beforehand` sees the plan that is about to be overwritten; what is no plan is
 * kept beside it.
 */
export async function writePlanFile(
  path: string,
  text: string,
  basis: string | null,
  replace: boolean,
  beforehand: (old: string) => Promise<void>,
): Promise<FileWritten> {
  const wrong = Buffer.byteLength(text) > longestPlan ? tooLong : whyNotPlan(text)
  if (wrong !== null) return { kind: 'refused', why: `this would not be a plan that can be opened again: ${wrong}` }
  try {
    const seen = await sightOf(path)
    const there = await readText(path)
    const known = there.kind === 'text' && (there.basis === basis || there.basis === digest(text))
    if (there.kind !== 'missing' && !known) {
      const found = await stat(path)
      if (!found.isFile()) return { kind: 'refused', why: there.kind === 'text' ? 'it is not a file' : there.why }
      const savedText = there.kind === 'text' ? there.text : null
      if (!replace) return { kind: 'changed', savedAt: found.mtime.toISOString(), savedText }
    }
    if (there.kind !== 'missing' && !(await mayWrite(path))) return { kind: 'refused', why: 'the file is read-only' }
    const isPlan = there.kind === 'text' && whyNotPlan(there.text) === null
    if (isPlan) await beforehand(there.text)
    const aside = there.kind === 'missing' || isPlan ? null : await copyAside(path)
    await writeAtomically(path, text, async () => {
      if ((await sightOf(path)) !== seen) throw new ChangedMeanwhile()
    })
    const savedAt = (await stat(path)).mtime.toISOString()
    const anew = there.kind === 'missing' && basis !== null
    return { kind: 'written', basis: digest(text), savedAt, ...(aside !== null && { aside }), ...(anew && { anew }) }
  } catch (error) {
    if (error instanceof ChangedMeanwhile)
      return { kind: 'refused', why: 'somebody else changed it at this moment; save it again to see what is there now' }
    return { kind: 'refused', why: whyNotWritten(error) }
  }
}

class ChangedMeanwhile extends Error {}

function whyNotWritten(error: unknown): string {
  const code = refusal(error)
  if (code === 'ENOENT' || code === 'ENOTDIR')
    return 'its folder has been moved, renamed or deleted, or its disk taken out'
  if (code === 'EACCES' || code === 'EPERM') return 'this account may not write in its folder'
  return reason(error)
}

/** Tells one state of a file from another without reading it. */
const sightOf = (path: string): Promise<string> =>
  stat(path, { bigint: true }).then(
    ({ ino, size, mtimeNs }) => `${ino} ${size} ${mtimeNs}`,
    (error: unknown) => refusal(error) ?? 'nothing',
  )

/** A file that is no plan, or not any more, is never written over: the result is the name of its copy beside it. */
async function copyAside(path: string): Promise<string> {
  const name = `${basename(path)}.damaged-${Date.now()}`
  await copyFile(path, join(dirname(path), name), constants.COPYFILE_EXCL)
  return name
}

/** Replacing a file needs no right to the file itself, so a file its owner protected is looked at first. */
async function mayWrite(path: string): Promise<boolean> {
  const allowed = await access(path, constants.W_OK).then(
    () => true,
    () => false,
  )
  return allowed && ((await stat(path)).mode & 0o222) !== 0
}
