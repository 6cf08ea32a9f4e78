// @vitest-environment happy-dom
import { act } from 'react'
import { createRoot } from 'react-dom/client'
import { afterEach, expect, test, vi } from 'vitest'
import { setupLoads } from '../../../core/loads/ledger.ts'
import type { Load } from '../../../core/plan/schema.ts'
import { inside, overlap } from '../../../renderer/charts/placement/box.ts'
import { DemandControls } from '../../../renderer/charts/plate/columns/DemandControls.tsx'
import { rollLink } from '../../../renderer/charts/plate/demand-controls.ts'
import { demandsView } from '../../../renderer/charts/plate/demands.ts'
import { demandHeadLabels, headLabels } from '../../../renderer/charts/plate/labels/heads.ts'
import { placeLabels } from '../../../renderer/charts/plate/labels/place-labels.ts'
import { plainAxle, plainPlan } from '../../core/loads/plain-car.ts'
import { compiledCorner, evenFont } from '../charts/plate/arbitrary-view.ts'
import { plateScene } from '../charts/plate/whole-scene.ts'
import { sampleCorner } from '../charts/sample-axles.ts'

const crew: Load = { id: 'crew', name: 'Two people', kind: 'payload', masses: { front: 100 }, assumed: true }
const brake: Load = { id: 'brake', name: 'Hard stop', kind: 'braking', deceleration: 5 }

function sceneOf(loads: Load[], chosen?: string[], width = 1172, height = 704) {
  const plan = plainPlan([plainAxle({ rate: 20_000, weight: 4000 })], {}, loads)
  const demands = demandsView(setupLoads(plan, plan.setups[0]!, chosen).ledger[0]!, null)
  const view = { ...compiledCorner(sampleCorner, 'inch'), other: null, demands, system: 'inch' as const }
  return plateScene(view, width, height, evenFont(0.55))
}

const shown: (() => void)[] = []
afterEach(() => {
  for (const close of shown.splice(0)) close()
})

function controls(scene: ReturnType<typeof sceneOf>) {
  Object.assign(globalThis, { IS_REACT_ACT_ENVIRONMENT: true })
  const host = document.body.appendChild(document.createElement('div'))
  const root = createRoot(host)
  shown.push(() => {
    act(() => root.unmount())
    host.remove()
  })
  const actions = {
    ...{ count: vi.fn(), edit: vi.fn(), begin: vi.fn(), roll: vi.fn() },
    ...{ step: vi.fn(), stepped: vi.fn() },
  }
  const { offer } = placeLabels(scene, [], 0)
  act(() =>
    root.render(
      <svg aria-hidden="true">
        <DemandControls scene={scene} offer={offer} actions={actions} />
      </svg>,
    ),
  )
  const buttons = () => [...host.querySelectorAll<SVGGElement>('[role=button]')]
  const named = (name: RegExp) => {
    const found = buttons().find(each => name.test(each.getAttribute('aria-label') ?? ''))
    if (found === undefined) throw new Error(`No button is called ${name}.`)
    return found
  }
  const press = (name: RegExp, key?: string) =>
    act(() => {
      const event =
        key === undefined
          ? new MouseEvent('click', { bubbles: true })
          : new KeyboardEvent('keydown', { key, bubbles: true, cancelable: true })
      named(name).dispatchEvent(event)
    })
  return { actions, buttons, named, press }
}

test('every load is switched by its name and edited by its bar, by pointer and by key', () => {
  const { actions, buttons, named, press } = controls(sceneOf([crew, brake], ['crew']))
  expect(buttons().map(each => [each.getAttribute('aria-label'), each.getAttribute('aria-pressed')])).toEqual([
    ['Axle in roll', null],
    ['Count Two people among the demands', 'true'],
    [expect.stringMatching(/^Edit Two people .* inches, assumed$/), null],
    ['Count Hard stop among the demands', 'false'],
    ['Edit Hard stop: it needs two axles, not counted', null],
  ])
  expect(named(/^Count Two/).getAttribute('tabindex')).toBe('0')
  press(/^Count Two/)
  press(/^Count Hard/, ' ')
  press(/^Count Hard/, 'Tab')
  expect(actions.count.mock.calls).toEqual([
    ['crew', false],
    ['brake', true],
  ])
  press(/^Edit Hard/, 'Enter')
  expect(actions.edit.mock.calls).toEqual([['brake']])
  press(/^Axle in roll/)
  expect(actions.roll).toHaveBeenCalledTimes(1)
})

test('a bar is stepped by key and dragged up and down where it stands; a drag is no press', () => {
  const { actions, named, press } = controls(sceneOf([crew, brake]))
  const bar = named(/^Edit Two people/)
  expect(bar.getAttribute('aria-keyshortcuts')).toBe('ArrowUp ArrowDown PageUp PageDown')
  act(() => bar.focus())
  press(/^Edit Two people/, 'ArrowUp')
  press(/^Edit Two people/, 'PageDown')
  press(/^Count Two people/, 'ArrowUp')
  const [[, , , held]] = actions.step.mock.calls as [[string, number, boolean, string]]
  expect(actions.step.mock.calls).toEqual([
    ['crew', 1, false, held],
    ['crew', -1, true, held],
  ])
  bar.setPointerCapture = vi.fn()
  const pointer = (type: string, clientY: number) =>
    act(() => {
      const more = { bubbles: true, button: 0, buttons: 1, clientY, pointerId: 1, isPrimary: true }
      bar.dispatchEvent(new PointerEvent(type, more))
    })
  pointer('pointerdown', 100)
  pointer('pointermove', 89)
  pointer('pointermove', 97)
  pointer('pointerup', 97)
  act(() => void bar.dispatchEvent(new MouseEvent('click', { bubbles: true })))
  const dragged = actions.step.mock.calls.slice(2)
  expect(dragged.map(([, direction]) => direction)).toEqual([1, 1, -1])
  expect(new Set(dragged.map(([, , , gesture]) => gesture)).size).toBe(1)
  expect(dragged[0]![3]).not.toBe(held)
  expect(actions.edit).not.toHaveBeenCalled()
  expect(actions.stepped).toHaveBeenCalled()
  pointer('pointerdown', 100)
  pointer('pointerup', 100)
  press(/^Edit Two people/)
  expect(actions.edit.mock.calls).toEqual([['crew']])
})

test('without loads the column offers some', () => {
  const { actions, buttons, press } = controls(sceneOf([]))
  expect(buttons().map(each => each.getAttribute('aria-label'))).toEqual(['Begin with usual loads'])
  press(/^Begin/)
  expect(actions.begin).toHaveBeenCalledTimes(1)
})

test('the way to the axle in roll keeps to its column and clear of every other word, or stays away', () => {
  for (const width of [804, 900, 1172, 2400])
    for (const font of [0.42, 0.6, 0.78]) {
      const scene = { ...sceneOf([crew], undefined, width), measure: evenFont(font) }
      const link = rollLink(scene)
      if (link === null) continue
      const { column } = scene.demands!
      const words = { x: link.x - link.width, y: link.y - link.size, width: link.width, height: link.size + 3 }
      expect(inside(words, { x: column.x, y: 0, width: column.width, height: scene.frame.head })).toBe(true)
      expect([...headLabels(scene), ...demandHeadLabels(scene)].filter(({ box }) => overlap(box, words))).toEqual([])
      expect(scene.demands!.bars.filter(({ nameReach }) => overlap(nameReach, link.reach))).toEqual([])
    }
})
