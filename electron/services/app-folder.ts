import { existsSync } from 'node:fs'
import { readFile } from 'node:fs/promises'
import { dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'

/** The folder of the whole application, from any module of it, built or not: the nearest one above with a package.json. */
export function appFolder(moduleUrl: string): string {
  for (let folder = dirname(fileURLToPath(moduleUrl)); ; folder = dirname(folder)) {
    if (existsSync(join(folder, 'package.json'))) return folder
    if (dirname(folder) === folder) throw new Error('Stopgap is not whole: there is no package.json above its code.')
  }
}

export async function appVersion(folder: string): Promise<string> {
  const { version }: { version: string } = JSON.parse(await readFile(join(folder, 'package.json'), 'utf8'))
  return version
}
