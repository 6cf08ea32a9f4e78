import { readFile } from 'node:fs/promises'
import path from 'node:path'
import { notYetOwn } from './release-values.ts'

/** Stops `npm run package` while what it would give to people names nobody. */
const config = process.argv[2] ?? path.join(import.meta.dirname, 'packaging/builder.yml')
const wrong = notYetOwn(await readFile(config, 'utf8'))
if (wrong.length > 0) {
  const lines = [
    'Nothing is packed for people yet: values in electron/packaging/builder.yml stand in for those of who gives it out.',
    ...wrong.map(sentence => `  ${sentence}`),
    'To try the packing without giving it to anybody: npx electron-builder --dir --config electron/packaging/builder.yml',
  ]
  process.stderr.write(`${lines.join('\n')}\n`)
  process.exitCode = 1
}
