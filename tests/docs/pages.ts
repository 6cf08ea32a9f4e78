import { readFileSync } from 'node:fs'
import path from 'node:path'

export const root = path.join(import.meta.dirname, '../..')

/** The pages people read, from the project's top. */
const pageNames = ['README.md', 'DEVELOPERS.md', 'seeds/README.md']

export interface Page {
  readonly name: string
  /** Folder its links start from. */
  readonly folder: string
  readonly text: string
}

export const pages: readonly Page[] = pageNames.map(name => ({
  name,
  folder: path.join(root, path.dirname(name)),
  text: readFileSync(path.join(root, name), 'utf8'),
}))

const all = (text: string, pattern: RegExp): string[] => [...text.matchAll(pattern)].map(match => match[1]!)

/** Links and pictures that lead to a file of the project. */
export const linksOf = (text: string): string[] =>
  all(text, /\]\(([^)\s]+)\)/g).filter(link => !/^[a-z]+:|^#/.test(link))

/** Scripts that `npm` is told to run, by their names; `start` and `test` need no `run`. */
export const scriptsOf = (text: string): string[] => [
  ...all(text, /\bnpm (?:--silent )?run (?:--silent )?([\w:-]+)/g),
  ...all(text, /\bnpm (start|test)\b/g),
]

/** Everything that is called with npm, whatever it is. */
export const npmCallsOf = (text: string): string[] => all(text, /\bnpm (?!was\b|sets?\b)([a-z]+)\b/g)

/** Words between backquotes. */
export const quotedIn = (text: string): string[] => all(text, /`([^`\n]+)`/g)

/** Of those, what reads as a file or folder of the project: it starts with one of its top folders. */
export const pathsIn = (text: string): string[] =>
  quotedIn(text).filter(word => /^(core|electron|renderer|tests|seeds)(\/[\w./-]+)?$/.test(word) && word !== 'electron')

/** First cells of the table under a heading, with what is quoted in them. */
export function firstColumn(text: string, heading: string): string[] {
  const part = text.split(`## ${heading}\n`)[1]?.split('\n## ')[0] ?? ''
  return part
    .split('\n')
    .filter(line => line.startsWith('| `'))
    .flatMap(line => quotedIn(line.split('|')[1]!))
}
