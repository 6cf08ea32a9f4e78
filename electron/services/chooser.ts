import { basename } from 'node:path'
import type { Reply, Request } from '../contract/contract.ts'
import { isInside, listFolder, type Place, parentOf, placesFor } from './folders.ts'
import { reason } from './reason.ts'
import type { Shelves } from './shelves.ts'

/** What the window's own file chooser shows. */
export async function showFolder(request: Request<'folder'>, home: string, shelves: Shelves): Promise<Reply<'folder'>> {
  const places = await placesFor(home, process.platform)
  const thing = request.token === null ? null : shelves.tokens.find(request.token)
  if (request.token !== null && thing?.kind !== 'folder') {
    return { kind: 'failed', reason: 'Stopgap does not know this folder any more. Open the chooser again.' }
  }
  if (thing?.kind === 'folder') {
    try {
      return await folder(thing.path, places, shelves)
    } catch (error) {
      return { kind: 'failed', reason: `“${basename(thing.path)}” could not be opened: ${reason(error)}.` }
    }
  }
  const last = (await shelves.settings.read()).folder
  const first = places[0]?.path ?? home
  if (last !== null && places.some(place => isInside(place.path, last))) {
    try {
      return await folder(last, places, shelves)
    } catch (error) {
      // It was a guess to begin with: the folder may be on a stick that is elsewhere today.
      reason(error)
    }
  }
  try {
    return await folder(first, places, shelves)
  } catch (error) {
    return { kind: 'failed', reason: `The home folder could not be opened: ${reason(error)}.` }
  }
}

async function folder(path: string, places: Place[], shelves: Shelves): Promise<Reply<'folder'>> {
  const give = (at: string) => shelves.tokens.give({ kind: 'folder', path: at })
  const { entries, unlisted } = await listFolder(path, places)
  const above = parentOf(path, places)
  return {
    kind: 'folder',
    token: give(path),
    name: places.find(place => place.path === path)?.name ?? basename(path),
    parent: above === null ? null : give(above),
    entries: entries.map(({ path: at, name, kind, modified }) => {
      const token = shelves.tokens.give({ kind: kind === 'plan' ? 'file' : 'folder', path: at })
      return { token, name, kind, modified }
    }),
    unlisted,
    places: places.map(place => ({ token: give(place.path), name: place.name })),
  }
}
