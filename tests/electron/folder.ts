import { mkdtemp, readdir, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { onTestFinished } from 'vitest'

/** A folder that is gone after the test. */
export async function newFolder(): Promise<string> {
  const folder = await mkdtemp(join(tmpdir(), 'stopgap-test-'))
  onTestFinished(() => rm(folder, { recursive: true, force: true }))
  return folder
}

export const namesIn = async (folder: string): Promise<string[]> => (await readdir(folder)).sort()
