import { resolve } from 'node:path'

/** The plan file a command line asks for; `skip` arguments name the program. Chromium adds switches of its own. */
export function askedFile(argv: readonly string[], skip: number, folder: string): string | null {
  const name = argv.slice(skip).find(argument => argument !== '' && !argument.startsWith('-'))
  return name === undefined ? null : resolve(folder, name)
}
