import { readdir, realpath, stat } from 'node:fs/promises'
import { userInfo } from 'node:os'
import { basename, dirname, isAbsolute, join, relative, sep } from 'node:path'
import { planEnding, planName } from '../contract/plan-text.ts'
import { refusal } from './reason.ts'

export interface Place {
  path: string
  name: string
}

/** The person's home, and what is plugged in or mounted: nothing else is listed. */
export async function placesFor(home: string, platform: NodeJS.Platform): Promise<Place[]> {
  const places = [{ path: await realpath(home).catch(() => home), name: 'Home' }]
  for (const path of await mounted(platform)) {
    const real = await realpath(path).catch(() => null)
    if (real !== null && !places.some(place => isInside(place.path, real))) {
      places.push({ path: real, name: basename(real) || real })
    }
  }
  return places
}

async function mounted(platform: NodeJS.Platform): Promise<string[]> {
  if (platform === 'win32') {
    const drives = [...'ABCDEFGHIJKLMNOPQRSTUVWXYZ'].map(letter => `${letter}:\\`)
    const there = await Promise.all(drives.map(isFolder))
    return drives.filter((_, i) => there[i])
  }
  const user = userInfo().username
  const parents = platform === 'darwin' ? ['/Volumes'] : [`/media/${user}`, `/run/media/${user}`, '/mnt']
  const children = await Promise.all(
    parents.map(async parent => (await readdir(parent).catch(() => [])).map(name => join(parent, name))),
  )
  const there = await Promise.all(children.flat().map(isFolder))
  return children.flat().filter((_, i) => there[i])
}

const isFolder = (path: string) =>
  stat(path).then(
    found => found.isDirectory(),
    () => false,
  )

/** Both real paths. A path is inside itself. */
export function isInside(outer: string, path: string): boolean {
  const way = relative(outer, path)
  return way === '' || !(way === '..' || way.startsWith(`..${sep}`) || isAbsolute(way))
}

export interface Entry {
  path: string
  name: string
  kind: 'folder' | 'plan'
  modified: string
}

const mostEntries = 1000

/** Folders and plans at `path`, folders first; hidden ones and links out of the places are left out. Throws what the system refuses. */
export async function listFolder(path: string, places: Place[]): Promise<{ entries: Entry[]; unlisted: number }> {
  const names = (await readdir(path)).filter(name => !/^[.$]/.test(name))
  names.sort((a, b) => a.localeCompare(b, 'en', { numeric: true }))
  const found: Entry[] = []
  for (const name of names) {
    const entry = await entryAt(join(path, name), name, places)
    if (entry !== null) found.push(entry)
  }
  const entries = [...found.filter(each => each.kind === 'folder'), ...found.filter(each => each.kind === 'plan')]
  return { entries: entries.slice(0, mostEntries), unlisted: Math.max(0, entries.length - mostEntries) }
}

/** null for what is not offered, and for what vanishes or refuses while it is looked at. */
async function entryAt(path: string, name: string, places: Place[]): Promise<Entry | null> {
  try {
    const real = await realpath(path)
    if (!places.some(place => isInside(place.path, real))) return null
    const found = await stat(real)
    const modified = found.mtime.toISOString()
    if (found.isDirectory()) return { path: real, name, kind: 'folder', modified }
    const isPlan = found.isFile() && name.toLowerCase().endsWith(planEnding)
    return isPlan ? { path: real, name: planName(name), kind: 'plan', modified } : null
  } catch (error) {
    if (refusal(error) === null) throw error
    return null
  }
}

/** The folder above, unless that leaves the place. */
export function parentOf(path: string, places: Place[]): string | null {
  const above = dirname(path)
  return above !== path && places.some(place => isInside(place.path, above)) ? above : null
}
