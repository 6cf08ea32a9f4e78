import { mkdir, rm } from 'node:fs/promises'
import { dirname } from 'node:path'
import { writeAtomically } from './write-atomically.ts'

/** What a file shall hold; null: the file shall not be there. */
type Content = string | null

interface Job {
  next: { content: Content } | null
  done: Promise<void>
}

async function put(path: string, content: Content): Promise<void> {
  if (content === null) return rm(path, { force: true })
  await mkdir(dirname(path), { recursive: true, mode: 0o700 })
  await writeAtomically(path, content)
}

/**
 * For files in the application's own folder, which is made where it is not there yet. Writes of the same file never overlap, and of several that wait only the latest is carried out.
 * The promise of each settles when its content, or a later one in its place, is on the disk.
 */
export function latestWriter() {
  const jobs = new Map<string, Job>()

  async function carryOut(path: string, first: Content, job: Job) {
    let content = first
    for (;;) {
      job.next = null
      try {
        await put(path, content)
      } catch (error) {
        if (job.next === null) {
          jobs.delete(path)
          throw error
        }
      }
      // In one go with the look at what waits: what is asked for after it is a job of its own.
      if (job.next === null) {
        jobs.delete(path)
        return
      }
      content = (job.next as { content: Content }).content
    }
  }

  return {
    write(path: string, content: Content): Promise<void> {
      const waiting = jobs.get(path)
      if (waiting !== undefined) {
        waiting.next = { content }
        return waiting.done
      }
      const job: Job = { next: null, done: Promise.resolve() }
      jobs.set(path, job)
      job.done = carryOut(path, content, job)
      return job.done
    },
  }
}

export type LatestWriter = ReturnType<typeof latestWriter>
