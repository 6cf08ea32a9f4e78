import { createHash, randomUUID } from 'node:crypto'
import { realpath } from 'node:fs/promises'
import { basename, dirname, join, resolve } from 'node:path'
import { formatPlan } from '../../core/plan/file-text.ts'
import { readPlan } from '../../core/plan/parse.ts'
import { planName, salvagedText } from '../contract/plan-text.ts'
import type { OpenDocument, Opened } from '../contract/shapes.ts'
import { isUnsaved, type KeptCopy } from './kept.ts'
import { digest, type FileText, readPlanFile, salvageAt } from './plan-file.ts'
import { reason } from './reason.ts'
import { together } from './sentences.ts'
import type { Shelves } from './shelves.ts'

/** The path without links; of a file that is not there yet, its folder's. */
export async function realPathOf(path: string): Promise<string> {
  const whole = resolve(path)
  return realpath(whole).catch(async () => {
    const folder = dirname(whole)
    return folder === whole ? whole : join(await realPathOf(folder), basename(whole))
  })
}

/** The key of a plan that is in a file: the same for the same file, in every run. */
export const keyOf = (realPath: string): string => createHash('sha256').update(realPath).digest('hex').slice(0, 40)

const now = () => new Date().toISOString()

/** A file, together with what this window kept of it. */
export async function openPath(path: string, window: string, shelves: Shelves): Promise<Opened> {
  const real = await realPathOf(path)
  const key = keyOf(real)
  const name = planName(basename(real))
  const file = await readPlanFile(real)
  if (file.kind === 'text') {
    const place = await shelves.claims.placeFor(key, window)
    const copy = await shelves.kept.find(place.key)
    const fits = copy !== null && (copy.basis === file.basis || digest(copy.text) === file.basis)
    const reports = place.isSecond ? [openTwice(name)] : []
    if (copy !== null && !fits && isUnsaved(copy)) reports.push(await putAside(copy, shelves))
    await shelves.attempt(shelves.recents.touch({ key, path: real, name, at: now() }))
    const token = shelves.tokens.give({ kind: 'file', path: real })
    const document = inFile({ key, token, name }, file, fits ? copy : null)
    return { kind: 'document', document, report: together(reports) }
  }
  const copy = await shelves.kept.find(key)
  if (copy !== null && file.kind === 'missing') {
    const report = `The file of “${name}” is not where it was. This is the copy Stopgap kept of it; save it to have it in a file again.`
    const { isSecond } = await shelves.claims.placeFor(key, window)
    return {
      kind: 'document',
      document: inNoFile(copy, true),
      report: together([report, ...(isSecond ? [openTwice(name)] : [])]),
    }
  }
  const remains = file.kind === 'refused' && (await salvageAt(real)) !== null
  return {
    kind: 'failed',
    reason: `“${name}” could not be opened: ${file.why}.`,
    ...(copy !== null
      ? { rescue: shelves.tokens.give({ kind: 'kept', key }) }
      : (await shelves.previous.find(key)) !== null && {
          rescue: shelves.tokens.give({ kind: 'previous', key }),
        }),
    ...(remains && { remains: shelves.tokens.give({ kind: 'remains', path: real }) }),
  }
}

export const openTwice = (name: string): string =>
  `“${name}” is open in another window too. What you change here is kept apart from what is changed there, and whoever saves second is asked before anything is replaced.`

/** What can be read of a damaged file, in no file of its own, so that the damaged one is left as it is. */
export async function openRemains(path: string): Promise<Opened> {
  const name = planName(basename(path))
  const found = await salvageAt(path)
  if (found === null) return { kind: 'failed', reason: `Nothing of “${name}” can be read any more.` }
  const text = formatPlan(found.plan)
  return {
    kind: 'document',
    document: inNoFile({ key: randomUUID(), name, text }, false),
    report: salvagedText(name, found),
  }
}

/** Keeps unsaved changes apart from a file that somebody else has changed since. The sentence says where they are. */
export async function putAside(
  copy: KeptCopy,
  shelves: Shelves,
  changed = `“${copy.name}” was changed elsewhere since it was last worked on here.`,
): Promise<string> {
  try {
    const aside = await shelves.kept.setAside(copy)
    await shelves.attempt(shelves.recents.add({ key: aside.key, path: null, name: aside.name, at: copy.at }))
    return `${changed} The changes that were not saved are among the recent plans, as “${aside.name}”.`
  } catch (error) {
    return `${changed} The changes that were not saved could not be put aside: ${reason(error)}.`
  }
}

/** A plan that is in no file, or a kept copy in place of a file that cannot be read. */
export async function openKept(key: string, window: string, shelves: Shelves): Promise<Opened> {
  const place = await shelves.claims.placeFor(key, window)
  const copy = (await shelves.kept.find(place.key)) ?? (await shelves.kept.find(key))
  if (copy !== null) {
    await shelves.attempt(shelves.recents.touch({ key, path: null, name: copy.name, at: now() }))
    const report = place.isSecond ? openTwice(copy.name) : undefined
    return { kind: 'document', document: inNoFile({ ...copy, key }, true), report }
  }
  await shelves.attempt(shelves.recents.drop(key))
  return { kind: 'failed', reason: 'The copy Stopgap kept of this plan has been deleted.' }
}

export async function openPrevious(key: string, shelves: Shelves): Promise<Opened> {
  const text = await shelves.previous.find(key)
  if (text === null) return { kind: 'failed', reason: 'The earlier version of this plan has been deleted.' }
  const name = titleOf(text) ?? 'Earlier version'
  return { kind: 'document', document: inNoFile({ key: randomUUID(), name, text }, true) }
}

export async function openDemo(path: string): Promise<Opened> {
  const name = planName(basename(path))
  const file = await readPlanFile(path)
  if (file.kind !== 'text') return { kind: 'failed', reason: `The demo “${name}” could not be opened: ${file.why}.` }
  const { text } = file
  return { kind: 'document', document: inNoFile({ key: randomUUID(), name: titleOf(text) ?? name, text }, false) }
}

function inFile(
  named: { key: string; token: string; name: string },
  file: FileText,
  copy: KeptCopy | null,
): OpenDocument {
  return {
    ...named,
    text: copy?.text ?? file.text,
    basis: file.basis,
    savedText: file.text,
    savedAt: file.savedAt,
    history: copy?.history,
    recovered: copy !== null && !isSamePlan(copy.text, file.text),
  }
}

function inNoFile(plan: Pick<KeptCopy, 'key' | 'name' | 'text' | 'history'>, recovered: boolean): OpenDocument {
  const { key, name, text, history } = plan
  return { key, token: null, name, text, basis: null, savedText: null, savedAt: null, history, recovered }
}

/** However the file is spaced: the window writes every plan in one form. */
function isSamePlan(text: string, other: string): boolean {
  const [one, two] = [readPlan(text), readPlan(other)]
  return text === other || (one.ok && two.ok && formatPlan(one.plan) === formatPlan(two.plan))
}

/** The title in the text of a plan, whether or not the rest of it is right: reading all of it takes a window's start longer. */
export function titleOf(text: string): string | null {
  try {
    const { title } = JSON.parse(text)
    return typeof title === 'string' && title.trim() !== '' ? title : null
  } catch (error) {
    if (error instanceof SyntaxError || error instanceof TypeError) return null
    throw error
  }
}
