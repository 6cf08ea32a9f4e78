import { readdir } from 'node:fs/promises'
import { join } from 'node:path'
import type { Reply } from '../contract/contract.ts'
import { planEnding, planName } from '../contract/plan-text.ts'
import type { OpenDocument, Opened } from '../contract/shapes.ts'
import { openDemo, openKept, openPath, openPrevious, openRemains, titleOf } from './documents.ts'
import { readText } from './plan-file.ts'
import { refusal } from './reason.ts'
import type { RecentEntry } from './recents.ts'
import type { Shelves } from './shelves.ts'

export interface First {
  document: OpenDocument
  /** What was tried before, and why it did not work. */
  reports: string[]
}

/**
 * What the window shows first: the file it was started with, else the plan last worked on, else a demo.
 * Whatever cannot be opened is told and passed over; where a good copy was kept, that is opened instead.
 */
export async function firstDocument(
  file: string | null,
  demos: string[],
  window: string,
  shelves: Shelves,
): Promise<First> {
  const reports: string[] = []
  const last = (await shelves.recents.list())[0]
  const attempts = [
    ...(file === null ? [] : [() => openPath(file, window, shelves)]),
    ...(last === undefined ? [] : [() => openEntry(last, window, shelves)]),
    ...demos.map(demo => () => openDemo(demo)),
  ]
  for (const attempt of attempts) {
    let opened = await attempt()
    if (opened.kind === 'failed') {
      reports.push(opened.reason)
      const { rescue, remains } = opened
      const instead = rescue ?? remains
      if (instead === undefined) continue
      opened = await openToken(instead, window, shelves)
      if (opened.kind === 'failed') continue
      if (rescue !== undefined)
        reports.push('This is the last good copy Stopgap has of it; the file itself was left as it is.')
    }
    if (opened.report !== undefined) reports.push(opened.report)
    return { document: opened.document, reports }
  }
  throw new Error('There is no plan to begin with: the demo plans are missing from this installation.')
}

const openEntry = (entry: RecentEntry, window: string, shelves: Shelves) =>
  entry.path === null ? openKept(entry.key, window, shelves) : openPath(entry.path, window, shelves)

export function openToken(token: string, window: string, shelves: Shelves): Promise<Opened> {
  const thing = shelves.tokens.find(token)
  if (thing?.kind === 'file') return openPath(thing.path, window, shelves)
  if (thing?.kind === 'demo') return openDemo(thing.path)
  if (thing?.kind === 'kept') return openKept(thing.key, window, shelves)
  if (thing?.kind === 'remains') return openRemains(thing.path)
  if (thing?.kind === 'previous') return openPrevious(thing.key, shelves)
  return Promise.resolve({ kind: 'failed', reason: 'Stopgap does not know this plan any more. Choose it again.' })
}

/** Paths of the demo plans, in the order of their file names. */
export async function demosIn(folder: string): Promise<string[]> {
  try {
    const names = (await readdir(folder)).filter(name => name.endsWith(planEnding))
    return names.sort().map(name => join(folder, name))
  } catch (error) {
    if (refusal(error) === null) throw error
    return []
  }
}

/** Those that are there; what is wrong with one is told when it is opened. */
export async function namedDemos(paths: string[], shelves: Shelves): Promise<Reply<'start'>['demos']> {
  const read = await Promise.all(paths.map(async path => ({ path, file: await readText(path) })))
  return read.flatMap(({ path, file }) => {
    if (file.kind !== 'text') return []
    const name = titleOf(file.text) ?? planName(path)
    return [{ token: shelves.tokens.give({ kind: 'demo', path }), name }]
  })
}
