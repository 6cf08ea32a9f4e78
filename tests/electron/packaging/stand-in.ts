import { chmod, mkdir, writeFile } from 'node:fs/promises'
import { join } from 'node:path'

/** What stands before the fuses in Electron's program; then their version, their number, and one sign each: 0 off, 1 on. */
export const fuseMark = 'dL7pKGdnNz796PbbjQWNKmHXBZaB9tsX'

/** Order of the fuses, version 1, as Electron publishes it. */
export const fuseNames = [
  'runAsNode',
  'cookieEncryption',
  'nodeOptions',
  'nodeCliInspect',
  'embeddedAsarIntegrity',
  'onlyLoadAppFromAsar',
  'browserProcessSnapshot',
  'fileProtocolPrivileges',
]

/** A folder shaped as Electron's, with its fuses as they come, and no program. */
export async function standInForElectron(folder: string, version: string): Promise<string> {
  await mkdir(join(folder, 'resources'), { recursive: true })
  await mkdir(join(folder, 'locales'))
  const fuses = Buffer.concat([Buffer.from(fuseMark), Buffer.from([1, fuseNames.length]), Buffer.from('10110001')])
  await writeFile(join(folder, 'electron'), Buffer.concat([Buffer.from('no program\n'), fuses, Buffer.from('\nend')]))
  await chmod(join(folder, 'electron'), 0o755)
  await writeFile(join(folder, 'version'), version)
  for (const name of ['LICENSE', 'LICENSES.chromium.html', 'locales/en-US.pak']) await writeFile(join(folder, name), '')
  return folder
}
