import { readdirSync, readFileSync } from 'node:fs'
import path from 'node:path'

export const root = path.join(import.meta.dirname, '../..')

/** The source folders, in the order dependencies run: each may use those before it as `mayUse` says. */
export const layers = [
  'core',
  'electron/contract',
  'electron/services',
  'electron/main',
  'electron/preload',
  'electron/browser-host',
  'renderer/sheets',
  'electron/cli',
  'electron/start',
  'renderer',
] as const
export type Layer = (typeof layers)[number]

/** Folders of the window that know neither page nor state, by one name: what sheets are drawn with. They use core and one another. */
const plainDrawing = /^renderer\/charts\/(text|placement|patterns|marks|drawing)\//

export const mayUse: Record<Layer | 'plain drawing', readonly string[]> = {
  core: [],
  'plain drawing': ['core'],
  'electron/contract': ['core'],
  'electron/services': ['core', 'electron/contract', 'seeds'],
  'electron/main': ['core', 'electron/contract', 'electron/services'],
  'electron/preload': ['core', 'electron/contract'],
  'electron/browser-host': ['core', 'electron/contract', 'electron/services'],
  // The command line makes the same sheets as the window.
  'renderer/sheets': ['core', 'plain drawing'],
  'electron/cli': ['core', 'electron/contract', 'electron/services', 'electron/browser-host', 'renderer/sheets'],
  'electron/start': ['core', 'electron/contract', 'electron/services', 'electron/browser-host', 'electron/cli'],
  renderer: ['core', 'electron/contract', 'plain drawing', 'renderer/sheets'],
}

export interface Import {
  /** The importing file, from the project's top, with slashes. */
  from: string
  /** A package's name as written, or the imported file from the project's top. */
  to: string
  isPackage: boolean
  isTypeOnly: boolean
  /** Fetched or started by the program, when it wants it. */
  isLate: boolean
}

/** Every file below a folder of the project, from the project's top, with slashes. */
export const filesBelow = (folder: string): string[] =>
  readdirSync(path.join(root, folder), { recursive: true, withFileTypes: true })
    .filter(entry => entry.isFile())
    .map(entry => path.relative(root, path.join(entry.parentPath, entry.name)).split(path.sep).join('/'))

const specifiers =
  /\b(import|export)\s+(type\s)?[^'"`;]*?from\s*['"]([^'"]+)['"]|\bimport\s*(\(?)\s*['"]([^'"]+)['"]|\bnew URL\(\s*['"](\.[^'"]+)['"]/g

/** The imports written in one source text, with paths resolved as the text's place in the project has it. */
export const importsOf = (file: string, source: string): Import[] =>
  [...source.matchAll(specifiers)].map(([, , type, named, called, bare, url]) => {
    const written = (named ?? bare ?? url)!
    const isPackage = !written.startsWith('.')
    return {
      from: file,
      to: isPackage
        ? written
        : path.posix.normalize(path.posix.join(path.posix.dirname(file), written.replace(/\?.*$/, ''))),
      isPackage,
      isTypeOnly: type !== undefined,
      isLate: called === '(' || url !== undefined,
    }
  })

export const allImports = (): Import[] =>
  layers
    .flatMap(filesBelow)
    .filter(file => /\.tsx?$/.test(file))
    .flatMap(file => importsOf(file, readFileSync(path.join(root, file), 'utf8')))

/** The layer a file belongs to; a folder that is no layer (tests, seeds…) stands for itself. */
export const layerOf = (file: string): string =>
  plainDrawing.test(file)
    ? 'plain drawing'
    : (layers.find(layer => file.startsWith(`${layer}/`)) ?? file.split('/')[0]!)
