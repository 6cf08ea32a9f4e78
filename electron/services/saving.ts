import { basename, join } from 'node:path'
import type { Reply, Request } from '../contract/contract.ts'
import { planEnding, planName } from '../contract/plan-text.ts'
import { keyOf, putAside, realPathOf } from './documents.ts'
import { fileNameFor } from './file-name.ts'
import { isUnsaved } from './kept.ts'
import { readText, writePlanFile } from './plan-file.ts'
import type { Shelves } from './shelves.ts'

type Saved = Extract<Reply<'save'>, { kind: 'saved' }>

const failed = (name: string, why: string) =>
  ({ kind: 'failed', reason: `“${name}” could not be saved: ${why}.` }) as const

/** Into the document's own file. */
export async function save(request: Request<'save'>, shelves: Shelves): Promise<Reply<'save'>> {
  const thing = shelves.tokens.find(request.token)
  if (thing?.kind !== 'file') return failed('The plan', 'Stopgap does not know its file any more; use Save as')
  return put(thing.path, request, shelves)
}

/** Where a dialog said. It has asked about replacing, unless the ending had to be added. */
export async function saveAt(path: string, request: Request<'saveAs'>, shelves: Shelves): Promise<Reply<'saveAs'>> {
  const complete = path.toLowerCase().endsWith(planEnding)
  const target = complete ? path : path + planEnding
  const name = basename(target)
  if (!complete && (await readText(target)).kind !== 'missing') {
    return failed(name, 'a file of that name is there already; choose it with its ending to replace it')
  }
  const done = await put(target, { ...request, basis: null, replace: true }, shelves)
  return done.kind === 'changed' ? failed(name, 'it changed while it was being saved') : done
}

/** In a folder of the window's own chooser. */
export async function saveIn(request: Request<'saveIn'>, shelves: Shelves): Promise<Reply<'saveIn'>> {
  const thing = shelves.tokens.find(request.folder)
  if (thing?.kind !== 'folder')
    return failed(request.name, 'Stopgap does not know the folder any more; choose it again')
  const named = fileNameFor(request.name)
  if (!named.ok) return failed(request.name, named.why)
  const path = join(thing.path, named.fileName)
  const name = planName(named.fileName)
  if (!request.replace && (await readText(path)).kind !== 'missing') return { kind: 'exists', name }
  const done = await put(path, { ...request, basis: null }, shelves)
  if (done.kind === 'changed') return { kind: 'exists', name }
  if (done.kind === 'saved') await shelves.attempt(shelves.settings.change({ folder: thing.path }))
  return done
}

async function put(
  path: string,
  request: { key: string; text: string; basis: string | null; replace: boolean },
  shelves: Shelves,
): Promise<Saved | Exclude<Reply<'save'>, { kind: 'saved' }>> {
  const real = await realPathOf(path)
  const key = keyOf(real)
  const name = planName(basename(real))
  const done = await writePlanFile(real, request.text, request.basis, request.replace, old =>
    shelves.attempt(shelves.previous.store(key, old)),
  )
  if (done.kind === 'refused') return failed(name, done.why)
  if (done.kind === 'changed') return done
  if (key !== request.key) await shelves.attempt(moved(request.key, key, shelves))
  await shelves.attempt(shelves.recents.touch({ key, path: real, name, at: done.savedAt }))
  const token = shelves.tokens.give({ kind: 'file', path: real })
  return { kind: 'saved', key, token, name, basis: done.basis, savedAt: done.savedAt }
}

/** The document goes by the key of its new file. What was kept under the old one is in that file now. */
async function moved(from: string, to: string, shelves: Shelves): Promise<void> {
  const overwritten = await shelves.kept.find(to)
  if (overwritten !== null && isUnsaved(overwritten)) await putAside(overwritten, shelves)
  await shelves.kept.forget(from)
  const entry = (await shelves.recents.list()).find(each => each.key === from)
  if (entry?.path === null) await shelves.recents.drop(from)
}
