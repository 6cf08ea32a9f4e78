import { basename, join } from 'node:path'
import type { Reply, Request } from '../contract/contract.ts'
import { planEnding, planName } from '../contract/plan-text.ts'
import type { Place } from './claims.ts'
import { keyOf, openTwice, putAside, realPathOf } from './documents.ts'
import { fileNameFor } from './file-name.ts'
import { isUnsaved } from './kept.ts'
import { readText, writePlanFile } from './plan-file.ts'
import { bringRuns } from './runs-with-plan.ts'
import { together } from './sentences.ts'
import type { Shelves } from './shelves.ts'

type Saved = Extract<Reply<'save'>, { kind: 'saved' }>

const failed = (name: string, why: string) =>
  ({ kind: 'failed', reason: `“${name}” could not be saved: ${why}.` }) as const

/** Into the document's own file. */
export async function save(request: Request<'save'>, window: string, shelves: Shelves): Promise<Reply<'save'>> {
  const thing = shelves.tokens.find(request.token)
  if (thing?.kind !== 'file') return failed('The plan', 'Stopgap does not know its file any more; use Save as')
  return put(thing.path, request, window, shelves)
}

/** Where a dialog said. It has asked about replacing, unless the ending had to be added. */
export async function saveAt(
  path: string,
  request: Request<'saveAs'>,
  window: string,
  shelves: Shelves,
): Promise<Reply<'saveAs'>> {
  const complete = path.toLowerCase().endsWith(planEnding)
  const target = complete ? path : path + planEnding
  const name = basename(target)
  if (!complete && (await readText(target)).kind !== 'missing') {
    return failed(name, 'a file of that name is there already; choose it with its ending to replace it')
  }
  const done = await put(target, { ...request, basis: null, replace: true }, window, shelves)
  return done.kind === 'changed' ? failed(name, 'it changed while it was being saved') : done
}

/** In a folder of the window's own chooser. */
export async function saveIn(request: Request<'saveIn'>, window: string, shelves: Shelves): Promise<Reply<'saveIn'>> {
  const thing = shelves.tokens.find(request.folder)
  if (thing?.kind !== 'folder')
    return failed(request.name, 'Stopgap does not know the folder any more; choose it again')
  const named = fileNameFor(request.name)
  if (!named.ok) return failed(request.name, named.why)
  const path = join(thing.path, named.fileName)
  const name = planName(named.fileName)
  if (!request.replace && (await readText(path)).kind !== 'missing') return { kind: 'exists', name }
  const done = await put(path, { ...request, basis: null }, window, shelves)
  if (done.kind === 'changed') return { kind: 'exists', name }
  if (done.kind === 'saved') await shelves.attempt(shelves.settings.change({ folder: thing.path }))
  return done
}

async function put(
  path: string,
  request: { key: string; token: string | null; text: string; basis: string | null; replace: boolean },
  window: string,
  shelves: Shelves,
): Promise<Saved | Exclude<Reply<'save'>, { kind: 'saved' }>> {
  const real = await realPathOf(path)
  const key = keyOf(real)
  const name = planName(basename(real))
  const done = await shelves.alone(`saving ${key}`, () =>
    writePlanFile(real, request.text, request.basis, request.replace, old =>
      shelves.attempt(shelves.previous.store(key, old)),
    ),
  )
  if (done.kind === 'refused') return failed(name, done.why)
  if (done.kind === 'changed') return done
  const before = request.token === null ? null : shelves.tokens.find(request.token)
  const known = before?.kind === 'file' ? await bringRuns(before.path, real, request.text) : []
  if (key !== request.key) {
    const moving = moved(request.key, key, window, shelves)
    await shelves.attempt(moving.then(({ isSecond }) => isSecond && known.push(openTwice(name))))
  } else await shelves.attempt(settled(key, request.text, done.basis, window, shelves))
  await shelves.attempt(shelves.recents.touch({ key, path: real, name, at: done.savedAt }))
  const token = shelves.tokens.give({ kind: 'file', path: real })
  const report = told(name, done, known, shelves)
  return {
    kind: 'saved',
    key,
    token,
    name,
    basis: done.basis,
    savedAt: done.savedAt,
    ...(report !== undefined && { report }),
  }
}

/** What the person ought to know of a save that went well. */
function told(
  name: string,
  { aside, anew }: { aside?: string; anew?: true },
  known: readonly string[],
  shelves: Shelves,
): string | undefined {
  return together([
    ...known,
    ...(aside === undefined ? [] : [`What stood in “${name}” was no plan; it was kept beside it as “${aside}”.`]),
    ...(anew === undefined ? [] : [`The file of “${name}” had gone, so it was written anew where it was.`]),
    ...shelves.takeReports(),
  ])
}

/** What is kept is in the file now. */
async function settled(key: string, text: string, basis: string, window: string, shelves: Shelves): Promise<void> {
  const place = await shelves.claims.placeFor(key, window)
  const copy = await shelves.kept.find(place.key)
  if (copy !== null && copy.text === text && copy.basis !== basis) await shelves.kept.keep({ ...copy, basis })
}

/** The document goes by the key of its new file. What was kept under the old one is in that file now. */
async function moved(from: string, to: string, window: string, shelves: Shelves): Promise<Place> {
  const before = await shelves.claims.placeFor(from, window)
  const place = await shelves.claims.placeFor(to, window)
  const overwritten = await shelves.kept.find(place.key)
  if (overwritten !== null && isUnsaved(overwritten)) await putAside(overwritten, shelves)
  await shelves.kept.forget(before.key)
  if (before.isSecond) return place
  const entry = (await shelves.recents.list()).find(each => each.key === from)
  if (entry?.path === null) await shelves.recents.drop(from)
  return place
}
