import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { expect, it } from 'vitest'

const root = join(import.meta.dirname, '../..')

/** Words of programmers, and words that say nothing. What a person reads is in the words of the trade. */
const UNWANTED =
  /\b(undefined|null|NaN|exception|callback|payload|successful(ly)?|invalid|please|oops|sorry|click here|boolean|string|array|regex|timeout|backend|frontend|parameter|toggle|initiali[sz]e|utili[sz]e|e\.g\.|i\.e\.)(?![\w-])/i

const QUOTED = /'((?:[^'\\\n]|\\.)*)'|`((?:[^`\\]|\\.)*)`|>\s*([^<>{}=;]*?)\s*[<{]/g

/** What is between two marks of text may be program. */
const CODE = /\w[([]|\? ?(null|\()|\?[?.]|[),:]$|\n/

/** What looks like a sentence, or a part of one: it begins with a letter or a number put in, and has three words. */
function sentences(source: string): string[] {
  const code = source.replaceAll(/\/\*[\s\S]*?\*\/|^\s*\/\/.*$|^import .*$|throw new .*$/gm, '')
  return [...code.matchAll(QUOTED)]
    .map(([, ...groups]) => (groups.find(group => group !== undefined) ?? '').replaceAll(/\$\{[^{}]*\}/g, '0').trim())
    .filter(text => /^[A-Za-z“0]/.test(text) && /^[^=<>|]+ [^=<>|]+ [^=<>|]+$/.test(text) && !CODE.test(text))
}

const filesOf = (folder: string): string[] =>
  readdirSync(join(root, folder), { recursive: true, encoding: 'utf8' })
    .filter(file => /\.tsx?$/.test(file))
    .map(file => join(root, folder, file))

it('says what people say', () => {
  const said = [...filesOf('renderer'), ...filesOf('core')].flatMap(file =>
    sentences(readFileSync(file, 'utf8')).map(text => ({ file: file.slice(root.length + 1), text })),
  )
  expect(said.length).toBeGreaterThan(1000)
  expect(said.filter(({ text }) => UNWANTED.test(text))).toEqual([])
})

it('would notice what they do not', () => {
  for (const source of [
    "const told = 'Your plan was saved successfully.'",
    '<p>Please enter a number here</p>',
    'const told = `Invalid value in the field`',
  ])
    expect(sentences(source).filter(text => UNWANTED.test(text))).toHaveLength(1)
})
