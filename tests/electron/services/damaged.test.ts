import { readdir, readFile, truncate, writeFile } from 'node:fs/promises'
import { basename, join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { readPlan } from '../../../core/plan/parse.ts'
import { type Desk, newDesk } from '../desk.ts'
import { planText } from '../plan.ts'

/** A plan torn in its middle, opened by a run that has nothing kept of it. */
async function torn(desk: Desk) {
  const text = planText('A plan')
  const file = await desk.put('Rear.stopgap', text.slice(0, text.indexOf('"tire"')))
  const services = desk.run()
  const opened = await services.handlers.openFile({ token: await services.tokenFor(file) })
  if (opened.kind !== 'failed' || opened.remains === undefined) throw new Error(JSON.stringify(opened))
  return { file, services, remains: opened.remains, reason: opened.reason }
}

describe('a damaged file', () => {
  it('is named, and what can be read of it is offered; the file stays as it is', async () => {
    const desk = await newDesk()
    const { file, services, remains, reason } = await torn(desk)
    expect(reason).toMatch(/^“Rear” could not be opened: its content is text that is not JSON/)
    const before = await readFile(file)
    const opened = await services.handlers.openFile({ token: remains })
    if (opened.kind !== 'document') throw new Error(opened.reason)
    expect(opened.document).toMatchObject({ token: null, name: 'Rear', savedText: null })
    expect(opened.report).toMatch(
      /^This is what can be read of “Rear”, in no file yet; the damaged file was left as it is\./,
    )
    expect(opened.report).toMatch(/marked as assumed: .*the tire \(“As found”, rear\)/)
    const read = readPlan(opened.document.text)
    const [axle] = read.ok ? read.plan.setups[0]!.axles : []
    expect(axle?.corner.cornerMass).toBe(420)
    expect(axle?.assumed).toContain('corner.tire.rate')
    expect(axle?.assumed).not.toContain('corner.cornerMass')
    expect(await readFile(file)).toEqual(before)
  })

  it('is opened so at the start too, when nothing better was kept', async () => {
    const desk = await newDesk()
    const { file } = await torn(desk)
    const { document, report } = await desk.run({ file }).handlers.start({})
    expect(document).toMatchObject({ token: null, name: 'Rear' })
    expect(report).toMatch(/^“Rear” could not be opened: .* This is what can be read of “Rear”/)
  })

  it('that is no text any more is read as far as it goes', async () => {
    const desk = await newDesk()
    const bytes = Buffer.from(planText('A plan'))
    bytes[bytes.indexOf('"stroke"') + 3] = 0xff
    const file = await desk.put('Rear.stopgap')
    await writeFile(file, bytes)
    const { report } = await desk.run({ file }).handlers.start({})
    expect(report).toMatch(/it is not text \(UTF-8\).* This is what can be read .*shock stroke/)
  })

  it.each([
    ['of a newer version', planText('A plan').replace('"version": 1', '"version": 2')],
    ['that is none', 'a letter'],
    ['of which nothing is left', ''],
  ])('a plan %s is refused, and nothing of it offered', async (_, text) => {
    const desk = await newDesk()
    const services = desk.run()
    const opened = await services.handlers.openFile({
      token: await services.tokenFor(await desk.put('Rear.stopgap', text)),
    })
    expect(opened).toMatchObject({ kind: 'failed', reason: expect.stringMatching(/^“Rear” could not be opened: /) })
    expect(opened).not.toHaveProperty('remains')
  })

  it('is kept beside the plan that takes its place, and the person is told', async () => {
    const desk = await newDesk()
    const file = await desk.put('Rear.stopgap')
    const services = desk.run({ file })
    const { document } = await services.handlers.start({})
    await truncate(file, 100)
    const damaged = await readFile(file)
    const request = { key: document.key, token: document.token!, text: planText('Mine'), basis: document.basis }
    expect(await services.handlers.save({ ...request, replace: false })).toMatchObject({ kind: 'changed' })
    const saved = await services.handlers.save({ ...request, replace: true })
    const aside = (await readdir(desk.home)).find(name => name !== basename(file))!
    expect(aside).toMatch(/^Rear\.stopgap\.damaged-\d+$/)
    expect(saved).toMatchObject({
      kind: 'saved',
      report: `What stood in “Rear” was no plan; it was kept beside it as “${aside}”.`,
    })
    expect(await readFile(`${desk.home}/${aside}`)).toEqual(damaged)
    expect(await readFile(file, 'utf8')).toBe(planText('Mine'))
  })
})

describe('a damaged copy of what was never saved', () => {
  it.each([
    ['cut in its history', (copy: string) => copy.slice(0, copy.indexOf('"history"') + 30), planText('Mine'), true],
    ['cut in its plan', (copy: string) => copy.slice(0, copy.indexOf('cornerMass')), planText('A plan'), false],
  ])('%s is kept under another name, and its plan is there where it is whole', async (_, spoil, shown, isRead) => {
    const desk = await newDesk()
    const file = await desk.put('Rear.stopgap')
    const services = desk.run({ file })
    const { key, token, name, basis } = (await services.handlers.start({})).document
    await services.handlers.keep({ key, token, name, basis, text: planText('Mine'), history: 'h'.repeat(100) })
    const kept = join(desk.data, 'kept')
    const [copy] = await readdir(kept)
    await writeFile(join(kept, copy!), spoil(await readFile(join(kept, copy!), 'utf8')))
    const { document, report } = await desk.run({ file }).handlers.start({})
    expect(document).toMatchObject({ text: shown, recovered: isRead, history: undefined })
    expect(report).toMatch(
      /^The kept copy of a plan was damaged\. It was kept as \S+\.damaged-\d+ in Stopgap’s own folder\./,
    )
    expect(report?.includes('could be read')).toBe(isRead)
    expect((await readdir(kept)).filter(each => each.includes('.damaged-'))).toHaveLength(1)
  })
})
