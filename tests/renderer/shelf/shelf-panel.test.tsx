// @vitest-environment happy-dom
import { act, useSyncExternalStore } from 'react'
import { afterEach, expect, test } from 'vitest'
import { GENERIC_SHELF } from '../../../core/changes/shelf.ts'
import { formatShelf } from '../../../core/plan/shelf-file.ts'
import { INCH } from '../../../core/units/constants.ts'
import { sayIn } from '../../../core/units/saying.ts'
import { bringShelf } from '../../../renderer/panels/shelf/bring.ts'
import { ShelfPanel } from '../../../renderer/panels/shelf/ShelfPanel.tsx'
import { type KeptShelf, shelfOf } from '../../../renderer/state/shelf.ts'
import { useFiles } from '../../../renderer/window-context.ts'
import { seed } from '../../seeds/seed.ts'
import { press, put, type Shown, show } from '../a-page.tsx'

const plan = seed('before-and-after.stopgap')
const { corner } = plan.setups[0]!.axles.find(({ id }) => id === 'rear')!
let shown: Shown | null = null
afterEach(() => shown?.close())

function Panel({ system }: { system: 'inch' | 'metric' }) {
  const kept = shelfOf(useFiles())
  const view = useSyncExternalStore(kept.subscribe, kept.read)
  return <ShelfPanel kept={kept} view={view} corner={corner} system={system} say={sayIn(system)} />
}

async function panel(system: 'inch' | 'metric' = 'inch') {
  const page = show(<Panel system={system} />, plan)
  shown = page
  page.files.host.answer({ shelf: () => ({ text: null }), keepShelf: () => ({ kind: 'kept' }) })
  const kept: KeptShelf = shelfOf(page.files)
  await act(async () => kept.begin())
  const click = (name: string) => {
    const button = [...page.page.querySelectorAll('button')].find(each => each.textContent === name)
    if (button === undefined) throw new Error(`There is no button “${name}”.`)
    act(() => button.click())
  }
  const input = (label: string) => {
    const found = [...page.page.querySelectorAll('label')].find(each => each.textContent === label)
    if (found === undefined) throw new Error(`There is no field “${label}”.`)
    return page.find<HTMLInputElement>(`[id="${found.htmlFor}"]`)
  }
  const enter = (label: string, text: string) => {
    put(input(label), text)
    press(input(label), 'Enter')
  }
  return { ...page, kept, click, input, enter }
}

test('empty, it says that the generic sizes stand in, and that they are assumed', async () => {
  const { page } = await panel()
  expect(page.textContent).toContain(
    'None of your own yet: changes are taken from the generic sizes, which are assumed.',
  )
  expect(page.textContent).toContain('9 generic sizes, used while there is nothing else')
})

test('the car’s own spring goes on it, is measured, named, taken off, and all of it is undone by the keys', async () => {
  const { kept, click, enter, page, find } = await panel()
  click('This car’s main spring')
  const main = corner.springs.springs.at(-1)!
  expect(kept.read().shelf.springs[0]).toMatchObject({ generic: false, part: main })
  enter('Free length', '15 1/2')
  enter('Name', 'Rack, left')
  expect(kept.read().shelf.springs[0]).toMatchObject({ name: 'Rack, left', part: { freeLength: 15.5 * INCH } })
  expect(page.textContent).toContain('not used: you have your own')
  click('Take it off the shelf')
  expect(kept.read().shelf).toEqual(GENERIC_SHELF)
  press(find('.shelf-panel button'), 'z', { ctrlKey: true })
  expect(kept.read().shelf.springs[0]).toMatchObject({ name: 'Rack, left' })
  for (let i = 0; i < 3; i++) press(find('.shelf-panel button'), 'z', { ctrlKey: true })
  expect(kept.read()).toMatchObject({ shelf: GENERIC_SHELF, undo: null })
  expect(press(find('.shelf-panel button'), 'y', { ctrlKey: true })).toBe(true)
  expect(kept.read().shelf.springs).toHaveLength(GENERIC_SHELF.springs.length + 1)
})

test('what cannot be is refused in the units on screen, and stays as it was', async () => {
  const { kept, click, enter, page } = await panel()
  click('This car’s stop')
  const before = kept.read().shelf
  const said = () => page.querySelector('.wrong')?.textContent
  enter('Stroke', '40')
  expect(said()).toMatch(/^It does not go with the gas volume, stop fully out: .* cu in\. Still using 3 1\/2 in/)
  enter('Stroke', '0')
  expect(said()).toMatch(/^Too small\. It takes more than 0 in\./)
  enter('Stroke', 'long')
  expect(said()).toContain('Still using 3 1/2 in')
  expect(kept.read().shelf).toBe(before)
})

test('what need not be known is left empty: a rating waits for the bore of the body', async () => {
  const { kept, click, enter, page } = await panel('metric')
  click('A hydraulic stop')
  enter('Rated pressure of the body', '100')
  expect(page.querySelector('.wrong')?.textContent).toContain('Enter the bore of the body first.')
  enter('Body bore', '50')
  enter('Rated pressure of the body', '100')
  const body = () => {
    const [first] = kept.read().shelf.stops
    return first?.part.kind === 'hydraulic' ? first.part.body : null
  }
  expect(body()).toEqual({ bore: 0.05, ratedPressure: 1e7 })
  enter('Rated pressure of the body', '')
  expect(body()).toEqual({ bore: 0.05 })
  enter('Body bore', '')
  expect(body()).toBeUndefined()
})

test('the curve of an elastomer is kept rising', async () => {
  const { kept, click, enter, page } = await panel('metric')
  click('An elastomer stop')
  click('Add a point')
  const curve = () => {
    const [first] = kept.read().shelf.stops
    return first?.part.kind === 'elastomer' ? first.part.curve.length : 0
  }
  expect(curve()).toBe(4)
  enter('Squeezed by', '45')
  expect(page.querySelector('.wrong')?.textContent).toMatch(/^That cannot be\. Right would be more than/)
  click('Take point 1 out')
  expect(curve()).toBe(3)
})

test('a step of the arrow keys is a mark of the tape', async () => {
  const { kept, click, input } = await panel()
  click('A tube')
  const before = kept.read().shelf.tubes[0]!.part.outerDiameter
  expect(press(input('Outer diameter'), 'ArrowUp')).toBe(true)
  expect(kept.read().shelf.tubes[0]!.part.outerDiameter).toBeCloseTo(before + INCH / 16, 12)
})

test('a file of a shelf is read; what is none is refused by name, place, found and wanted', async () => {
  const file = (content: BlobPart) => new File([content], 'Rack.json')
  expect(await bringShelf(file(formatShelf(GENERIC_SHELF)))).toEqual({ ok: true, shelf: GENERIC_SHELF })
  const wrong = JSON.parse(formatShelf(GENERIC_SHELF))
  wrong.tubes[1].part.wall = -1
  wrong.stops[0].part.maker = '=HYPERLINK("x")'
  expect(await bringShelf(file(JSON.stringify(wrong)))).toEqual({
    ok: false,
    why: '“Rack.json” could not be imported: stops[0].part.maker is an unknown key; it should be only the keys of the shelf file (and 1 more like this).',
  })
  expect(await bringShelf(file(new Uint8Array([0xff, 0xfe, 0])))).toMatchObject({
    why: expect.stringContaining('it is not text (UTF-8)'),
  })
  expect(await bringShelf(file('{"__proto__":{}}'))).toMatchObject({ ok: false })
  expect(await bringShelf(file(' '.repeat(9 * 1024 * 1024)))).toMatchObject({
    why: expect.stringContaining('it is larger than 8 MB'),
  })
})
