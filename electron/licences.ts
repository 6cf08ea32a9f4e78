import { existsSync } from 'node:fs'
import { readdir, readFile } from 'node:fs/promises'
import path from 'node:path'
import type { Plugin } from 'vite'
import type { Licence } from './contract/licence.ts'

/** The folder of the package a module is of; null for a module of our own. */
export function packageFolder(module: string): string | null {
  const found = /^(.*[/\\]node_modules[/\\](?:@[^/\\]+[/\\])?[^/\\]+)[/\\]/.exec(module.replace(/^\0/, ''))
  return found?.[1] ?? null
}

/** Notes every package that has a module in what is built with this plugin: no list kept by hand. */
export function packagesIn(folders: Set<string>): Plugin {
  return {
    name: 'packages-in',
    generateBundle: (_options, bundle) => {
      for (const chunk of Object.values(bundle)) {
        if (chunk.type !== 'chunk') continue
        for (const module of chunk.moduleIds) {
          const folder = packageFolder(module)
          if (folder !== null) folders.add(folder)
        }
      }
    },
  }
}

/** What each package says of itself. A package without a licence stops the build: what is shipped must be allowed to be. */
export async function licencesOf(folders: Iterable<string>): Promise<Licence[]> {
  const found = await Promise.all(
    [...folders].filter(folder => existsSync(path.join(folder, 'package.json'))).map(licenceIn),
  )
  const byName = new Map(found.map(licence => [`${licence.name} ${licence.version}`, licence]))
  return [...byName.values()].sort((a, b) => (a.name < b.name ? -1 : 1))
}

async function licenceIn(folder: string): Promise<Licence> {
  const { name, version, license } = JSON.parse(await readFile(path.join(folder, 'package.json'), 'utf8'))
  const files = await readdir(folder)
  const file = files.find(each => /^(licen[cs]e|copying)(\.(md|txt))?$/i.test(each))
  if (typeof license !== 'string' || file === undefined)
    throw new Error(
      `The package ${name} does not say under which licence it is given: leave it out, or ask its authors.`,
    )
  return { name, version, licence: license, text: (await readFile(path.join(folder, file), 'utf8')).trim() }
}
