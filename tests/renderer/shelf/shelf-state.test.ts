import { expect, test } from 'vitest'
import { GENERIC_SHELF, type Shelf } from '../../../core/changes/shelf.ts'
import { together, withoutPart, withPart } from '../../../core/changes/shelf-parts.ts'
import { formatShelf } from '../../../core/plan/shelf-file.ts'
import { shelfOf } from '../../../renderer/state/shelf.ts'
import { someFiles } from '../some-files.ts'

const spring = { ...GENERIC_SHELF.springs[0]!, id: 'mine', name: 'Mine', generic: false }
const filled: Shelf = withPart(GENERIC_SHELF, 'springs', spring)

const settled = () => new Promise(resolve => setTimeout(resolve))

async function ready(text: string | null = null, report?: string) {
  const files = someFiles()
  files.host.answer({ shelf: () => ({ text, report }), keepShelf: () => ({ kind: 'kept' }) })
  const shelf = shelfOf(files)
  shelf.begin()
  expect(shelf.read().state).toBe('reading')
  await settled()
  const sent = () => files.host.asked.flatMap(({ name, request }) => (name === 'keepShelf' ? [request] : []))
  return { files, shelf, sent }
}

test('begins with the generic sizes, or with what was kept', async () => {
  const { shelf } = await ready()
  expect(shelf.read()).toEqual({ shelf: GENERIC_SHELF, state: 'ready', undo: null, redo: null })
  const { shelf: kept, files } = await ready(formatShelf(filled), 'The file was damaged.')
  expect(kept.read().shelf).toEqual(filled)
  expect(files.store.read().notices).toMatchObject([{ about: 'shelf', text: 'The file was damaged.' }])
})

test('every change is kept with the host, undone and made again', async () => {
  const { shelf, sent } = await ready()
  expect(shelf.change('spring added', filled)).toEqual([])
  expect(shelf.read()).toMatchObject({ undo: 'spring added', redo: null })
  shelf.change('nothing', filled)
  shelf.undo()
  expect(shelf.read()).toEqual({ shelf: GENERIC_SHELF, state: 'ready', undo: null, redo: 'spring added' })
  shelf.redo()
  shelf.undo()
  shelf.undo()
  await settled()
  expect(sent()).toEqual([filled, GENERIC_SHELF, filled, GENERIC_SHELF].map(each => ({ text: formatShelf(each) })))
  shelf.change('spring taken off', withoutPart(filled, 'springs', 'mine'))
  expect(shelf.read().redo).toBe('spring added')
})

test('what cannot be is refused at its path, and nothing is sent', async () => {
  const { shelf, sent } = await ready()
  const wrong = withPart(GENERIC_SHELF, 'springs', { ...spring, part: { ...spring.part, solidLength: 2 } })
  expect(shelf.change('spring', wrong)).toMatchObject([{ path: 'springs[0].part.solidLength' }])
  await settled()
  expect([shelf.read().shelf, sent()]).toEqual([GENERIC_SHELF, []])
})

test('one that could not be read is not written over, and can be asked for again', async () => {
  const files = someFiles()
  const shelf = shelfOf(files)
  shelf.begin()
  await settled()
  expect(shelf.read().state).toBe('unread')
  expect(shelf.change('spring added', filled)).toMatchObject([{ found: 'a shelf that is not read yet' }])
  expect(files.host.asked.map(({ name }) => name)).not.toContain('keepShelf')
  files.host.answer({ shelf: () => ({ text: formatShelf(filled) }) })
  shelf.begin()
  await settled()
  expect(shelf.read()).toMatchObject({ state: 'ready', shelf: filled })
})

test('one that cannot be kept says so, and says no more once it can', async () => {
  const { shelf, files } = await ready()
  files.host.answer({ keepShelf: () => ({ kind: 'failed', reason: 'The disk is full.' }) })
  shelf.change('spring added', filled)
  await settled()
  expect(files.store.read().notices).toMatchObject([{ about: 'shelf', text: 'The disk is full.' }])
  files.host.answer({ keepShelf: () => ({ kind: 'kept' }) })
  shelf.undo()
  await settled()
  expect(files.store.read().notices).toEqual([])
})

test('is one for a window', async () => {
  const { files, shelf } = await ready()
  expect(shelfOf(files)).toBe(shelf)
})

test('two shelves together: the same part is replaced where it stands, the others come first', () => {
  const renamed = { ...spring, name: 'Mine, measured' }
  const other = { ...spring, id: 'yours' }
  const both = together(filled, { stops: [], springs: [renamed, other], tubes: [] })
  expect(both.springs.slice(0, 2)).toEqual([other, renamed])
  expect(both.springs).toHaveLength(filled.springs.length + 1)
  expect([both.stops, both.tubes]).toEqual([filled.stops, filled.tubes])
})
