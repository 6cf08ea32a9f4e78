import { readdir, readFile, rm, stat } from 'node:fs/promises'
import { join } from 'node:path'
import { planEnding, whyNotPlan } from '../contract/plan-text.ts'
import type { LatestWriter } from './latest-writer.ts'
import { refusal } from './reason.ts'

const most = 100

/** The last good version of each plan before its latest save, in the application's own folder. */
export function previousVersions(folder: string, writer: LatestWriter) {
  const fileOf = (key: string) => join(folder, `${key}${planEnding}`)

  async function store(key: string, text: string): Promise<void> {
    await writer.write(fileOf(key), text)
    await thin()
  }

  async function find(key: string): Promise<string | null> {
    try {
      const text = await readFile(fileOf(key), 'utf8')
      return whyNotPlan(text) === null ? text : null
    } catch (error) {
      if (refusal(error) === null) throw error
      return null
    }
  }

  async function thin() {
    const names = (await readdir(folder)).filter(name => name.endsWith(planEnding))
    if (names.length <= most) return
    const dated = await Promise.all(names.map(async name => ({ name, at: (await stat(join(folder, name))).mtimeMs })))
    dated.sort((a, b) => b.at - a.at)
    for (const { name } of dated.slice(most)) await rm(join(folder, name), { force: true })
  }

  return { store, find }
}

export type PreviousVersions = ReturnType<typeof previousVersions>
