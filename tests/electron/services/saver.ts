import { createServices } from '../../../electron/services/services.ts'
import { numbered } from './numbered.ts'

/** Saves and keeps one plan after the other, as fast as it goes, until it is killed. Says each number once it is saved. */
const [home, data, demos, file, first] = process.argv.slice(2) as [string, string, string, string, string]

const { handlers, tokenFor } = createServices({
  host: 'browser',
  version: '0.0.0',
  data,
  home,
  demos,
  file: null,
  dialogs: null,
  tell: () => undefined,
})
const opened = await handlers.openFile({ token: await tokenFor(file) })
if (opened.kind !== 'document' || opened.document.token === null) throw new Error(JSON.stringify(opened))
const { key, token, name } = opened.document
let { basis } = opened.document
for (let n = Number(first); ; n += 1) {
  const text = numbered(n)
  await handlers.keep({ key, token, name, text, basis, history: 'h'.repeat(20_000) })
  const done = await handlers.save({ key, token, text, basis, replace: false })
  if (done.kind !== 'saved') throw new Error(JSON.stringify(done))
  basis = done.basis
  process.stdout.write(`${n}\n`)
}
