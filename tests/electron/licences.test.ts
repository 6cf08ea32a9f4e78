import { mkdir, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { licencesOf, packageFolder } from '../../electron/licences.ts'
import { newFolder } from './folder.ts'

async function aPackage(about: object, files: Readonly<Record<string, string>>): Promise<string> {
  const folder = join(await newFolder(), 'node_modules', 'spring')
  await mkdir(folder, { recursive: true })
  await writeFile(join(folder, 'package.json'), JSON.stringify({ name: 'spring', version: '1.2.3', ...about }))
  for (const [name, text] of Object.entries(files)) await writeFile(join(folder, name), text)
  return folder
}

describe('licences of what is shipped', () => {
  it.each([
    ['/app/node_modules/react/index.js', '/app/node_modules/react'],
    ['\0/app/node_modules/react/index.js?commonjs', '/app/node_modules/react'],
    ['/app/node_modules/@scope/name/dist/a.js', '/app/node_modules/@scope/name'],
    ['/app/node_modules/a/node_modules/b/c.js', '/app/node_modules/a/node_modules/b'],
    ['/app/renderer/main.tsx', null],
  ])('%s is of %s', (module, folder) => expect(packageFolder(module)).toBe(folder))

  it('are what each package says of itself', async () => {
    const folder = await aPackage({ license: 'ISC' }, { 'LICENSE.md': ' May be used. \n' })
    expect(await licencesOf([folder, folder])).toEqual([
      { name: 'spring', version: '1.2.3', licence: 'ISC', text: 'May be used.' },
    ])
  })

  it.each([
    ['no name of one', {}, { LICENSE: 'May be used.' }],
    ['no file of one', { license: 'ISC' }, {}],
  ])('stop the build where there is %s', async (_what, about, files) => {
    const folder = await aPackage(about, files as Readonly<Record<string, string>>)
    await expect(licencesOf([folder])).rejects.toThrow('spring')
  })
})
