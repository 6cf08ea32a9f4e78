// @vitest-environment happy-dom
import { act } from 'react'
import { afterEach, describe, expect, test } from 'vitest'
import { PSI } from '../../../core/units/constants.ts'
import { isOpen, toggled } from '../../../renderer/panels/measurements/folding.ts'
import { groups } from '../../../renderer/panels/measurements/groups.ts'
import * as key from '../../../renderer/panels/measurements/key-values.ts'
import { Measurements } from '../../../renderer/panels/measurements/Measurements.tsx'
import { putLinkage, putStop } from '../../../renderer/state/parts.ts'
import { shownAxle } from '../../../renderer/state/selectors.ts'
import { fold } from '../../../renderer/state/view.ts'
import { fieldsHere, leave, press, type Shown, show, type } from '../a-page.tsx'
import { aPlan } from '../a-plan.ts'
import { aStore } from '../some-files.ts'

await fieldsHere()

let shown: Shown
const open = () => {
  shown = show(<Measurements />)
  act(() => fold(shown.files.store, Object.fromEntries(groups.map(({ id }) => [id, true]))))
  return shown
}
afterEach(() => shown?.close())

const fields = () => [...shown.page.querySelectorAll<HTMLElement>('[data-field]')].map(input => input.dataset.field!)
const click = (label: string) =>
  act(() => {
    const button = [...shown.page.querySelectorAll('button')].find(({ textContent }) => textContent === label)
    if (button === undefined) throw new Error(`There is no button “${label}”.`)
    button.click()
  })

describe('the measurements', () => {
  test.each(['hydraulic', 'elastomer', 'none'] as const)('have every field of a plan with a %s stop once', stop => {
    open()
    act(() => void putStop(shown.files.store, stop))
    const names = fields()
    expect(new Set(names).size).toBe(names.length)
    expect(names.includes('corner.stop.gap')).toBe(stop !== 'none')
    expect(names.includes('corner.stop.charge')).toBe(stop === 'hydraulic')
    expect(names.includes('corner.stop.curve.1.force')).toBe(stop === 'elastomer')
  })

  test.each([
    ['ratio', 'corner.linkage.shock', 2],
    ['table', 'corner.linkage.rows.1.wheel', 15],
    ['arm', 'corner.linkage.pivot.1.2', 21],
    ['axle', 'corner.linkage.stopAxis.0', 12],
  ] as const)('have every number of a linkage by %s', (kind, one, count) => {
    open()
    act(() => void putLinkage(shown.files.store, kind))
    const names = fields().filter(name => name.startsWith('corner.linkage'))
    expect(names).toContain(one)
    expect(names).toHaveLength(count)
  })

  test('say how the field in use is measured, and mark it one way or the other', () => {
    open()
    act(() => shown.field('corner.stop.charge').focus())
    expect(shown.find('#how h4').textContent).toBe('How to measure the stop’s charge')
    click('Mark as measured')
    expect(shown.field('corner.stop.charge').classList.contains('assumed')).toBe(false)
    click('Mark as assumed')
    expect(shown.field('corner.stop.charge').classList.contains('assumed')).toBe(true)
  })

  test('tell what the other setup has, and give it the same', () => {
    open()
    type(shown.field('corner.stop.charge'), '175')
    click('Proposed has 150 psi: use this there')
    const [found, proposed] = shown.files.store.read().plan.setups
    expect(proposed!.axles[1]!.corner.stop).toEqual(found!.axles[1]!.corner.stop)
    expect(found!.axles[1]!.corner.stop).toMatchObject({ charge: 175 * PSI })
  })

  test('what is not in the plan any more is not measured', () => {
    open()
    act(() => shown.field('corner.stop.gap').focus())
    expect(shown.find('#how h4').textContent).toBe('How to measure the gap')
    act(() => void putStop(shown.files.store, 'none'))
    expect(shown.find('#how h4').textContent).toBe('How to measure')
  })

  test('what is added or taken away leaves the keyboard on what there is to enter next', async () => {
    open()
    const drawn = () => act(() => new Promise(resolve => requestAnimationFrame(() => resolve(undefined))))
    const at = () => (document.activeElement as HTMLElement).dataset.field ?? document.activeElement?.textContent
    click('Add a spring')
    await drawn()
    expect(at()).toBe('corner.springs.springs.0.rate')
    click('Cornering')
    await drawn()
    expect(at()).toBe('loads.0.lateral')
    click('Whoops')
    await drawn()
    expect(at()).toBe('terrains.0.spacing')
    act(() => shown.find('[aria-label="Remove Whoops"]').click())
    await drawn()
    expect(at()).toMatch(/^Terrains/)
  })

  test('a row more or less in a curve, by button and by key', () => {
    open()
    const rows = () => shownAxle(shown.files.store.read()).axle.corner.shock.compression
    const part = () => shown.find('#group-dampers .part')
    const add = () => act(() => part().querySelector<HTMLButtonElement>('button.step')!.click())
    add()
    expect(rows()).toHaveLength(2)
    add()
    expect(rows().map(({ velocity }) => velocity)).toEqual([0, 0.5, 1])
    press(shown.field('corner.shock.compression.0.velocity'), 'Enter', { ctrlKey: true })
    expect(rows().map(({ velocity }) => velocity)).toEqual([0, 0.25, 0.5, 1])
    press(shown.field('corner.shock.compression.2.velocity'), 'Delete', { ctrlKey: true })
    expect(rows().map(({ velocity }) => velocity)).toEqual([0, 0.25, 1])
  })

  test('the first row of a curve stays at rest: taking it out is refused in words', () => {
    open()
    act(() => shown.find('#group-dampers .part').querySelector<HTMLButtonElement>('button.step')!.click())
    press(shown.field('corner.shock.compression.0.velocity'), 'Delete', { ctrlKey: true })
    expect(shown.find('#group-dampers .trouble').textContent).toContain('a damper curve starts at rest')
  })

  test('a group with a refused entry cannot be folded away', () => {
    open()
    type(shown.field('corner.shock.stroke'), '0')
    leave(shown.field('corner.shock.stroke'))
    act(() => shown.find<HTMLButtonElement>('#group-shock h3 button').click())
    expect(shown.find('#group-shock').classList.contains('fold')).toBe(false)
    expect(shown.find('#group-shock .err').textContent).toContain('Too small.')
  })
})

describe('folding', () => {
  const [ride, , shock] = groups
  const state = { folds: {}, narrow: false, refused: false }

  test('follows the room, then the person, and never hides an error', () => {
    expect(isOpen(shock!, state)).toBe(true)
    expect(isOpen(shock!, { ...state, narrow: true })).toBe(false)
    expect(isOpen(ride!, { ...state, narrow: true })).toBe(true)
    expect(isOpen(shock!, { ...state, narrow: true, folds: { shock: true } })).toBe(true)
    expect(isOpen(ride!, { ...state, folds: { 'ride-height': false } })).toBe(false)
    expect(isOpen(ride!, { ...state, folds: { 'ride-height': false }, refused: true })).toBe(true)
  })

  test('opening one folds those below it where there is little room', () => {
    expect(toggled(groups, 'shock', true, false)).toEqual({ shock: true })
    const narrow = toggled(groups, 'shock', true, true)
    expect(narrow.shock).toBe(true)
    expect(narrow.springs).toBe(false)
    expect('ride-height' in narrow).toBe(false)
    expect(toggled(groups, 'shock', false, true)).toEqual({ shock: false })
  })
})

test('a folded group says what matters of it', () => {
  const plan = aPlan()
  const { axle } = shownAxle(aStore(plan).read())
  const said = Object.fromEntries(groups.map(({ id, keyValues }) => [id, keyValues(axle, plan)]))
  expect(said).toMatchObject({
    'ride-height': 'gap 2 in',
    stop: 'hydraulic, 3 in',
    shock: '14 in, 150 psi',
    springs: '250 over 350 lb/in',
    weights: '1,200 lb corner',
    linkage: 'ratio 0.70 and 0.55',
    clearance: 'none',
    dampers: 'none',
    loads: 'none',
    notes: 'none',
  })
  expect(key.stop({ ...axle, corner: { ...axle.corner, stop: null } }, plan)).toBe('none')
})
