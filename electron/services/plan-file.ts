import { createHash } from 'node:crypto'
import { access, constants, readFile, stat } from 'node:fs/promises'
import { longestPlan } from '../contract/contract.ts'
import { notText, tooLong, whyNotPlan } from '../contract/plan-text.ts'
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

/** The text of a file that may be a plan: an ordinary file, not too large, strictly UTF-8. */
export async function readText(path: string): Promise<FileRead> {
  try {
    const found = await stat(path)
    if (!found.isFile()) return { kind: 'refused', why: found.isDirectory() ? 'it is a folder' : 'it is not a file' }
    if (found.size > longestPlan) return { kind: 'refused', why: tooLong }
    const bytes = await readFile(path)
    if (bytes.byteLength > longestPlan) return { kind: 'refused', why: tooLong }
    const text = strictText(bytes)
    if (text === null) return { kind: 'refused', why: notText }
    return { kind: 'text', text, basis: digest(bytes), savedAt: found.mtime.toISOString() }
  } catch (error) {
    return { kind: ['ENOENT', 'ENOTDIR'].includes(refusal(error) ?? '') ? 'missing' : 'refused', why: reason(error) }
  }
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
  | { kind: 'written'; basis: string; savedAt: string }
  | { kind: 'changed'; savedAt: string; savedText: string | null }
  | { kind: 'refused'; why: string }

/**
 * Puts `text` in the file, unless the file is not what the writer last saw (`basis`; null: no file).
 * `replace` overrides that. Only a plan is written. `beforehand` sees the plan that is about to be overwritten.
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
    const there = await readText(path)
    if (there.kind === 'refused' && !replace) {
      const found = await stat(path)
      if (!found.isFile()) return { kind: 'refused', why: there.why }
      return { kind: 'changed', savedAt: found.mtime.toISOString(), savedText: null }
    }
    if (there.kind === 'text') {
      const same = there.basis === basis || there.basis === digest(text)
      if (!same && !replace) return { kind: 'changed', savedAt: there.savedAt, savedText: there.text }
      if (whyNotPlan(there.text) === null) await beforehand(there.text)
    }
    if (there.kind !== 'missing' && !(await mayWrite(path))) return { kind: 'refused', why: 'the file is read-only' }
    await writeAtomically(path, text)
    return { kind: 'written', basis: digest(text), savedAt: (await stat(path)).mtime.toISOString() }
  } catch (error) {
    return {
      kind: 'refused',
      why: refusal(error) === 'ENOENT' ? 'its folder has been moved, renamed or deleted' : reason(error),
    }
  }
}

/** Replacing a file needs no right to the file itself, so a file its owner protected is looked at first. */
async function mayWrite(path: string): Promise<boolean> {
  const allowed = await access(path, constants.W_OK).then(
    () => true,
    () => false,
  )
  return allowed && ((await stat(path)).mode & 0o222) !== 0
}
