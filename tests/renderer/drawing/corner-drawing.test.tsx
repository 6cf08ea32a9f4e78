// @vitest-environment happy-dom
import { act } from 'react'
import { createRoot, type Root } from 'react-dom/client'
import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { axleBudget } from '../../../core/budget/budget.ts'
import { cornerModel } from '../../../core/corner/corner.ts'
import { CornerDrawing } from '../../../renderer/charts/drawing/CornerDrawing.tsx'
import { columnFor } from './columns.ts'
import { CORNERS, type CornerName, namedAxle } from './corners.ts'
import { numbersIn } from './paths.ts'
import { wideFont } from './widths.ts'

Object.assign(globalThis, { IS_REACT_ACT_ENVIRONMENT: true })

let host: HTMLElement
let root: Root
beforeEach(() => {
  host = document.body.appendChild(document.createElement('div'))
  root = createRoot(host)
})
afterEach(() => {
  act(() => root.unmount())
  host.remove()
})

function prepared(name: CornerName, small = false, low = false) {
  const axle = namedAxle(name)
  const model = cornerModel(axle.corner)
  const budget = axleBudget(axle, { units: 'inch' }, model)
  const column = columnFor(model, small)
  const { x, width, head } = column
  const [height, zero, perMetre] = low
    ? [head + 110, head + 55, 0.2 * column.perMetre]
    : [column.height, column.zero, column.perMetre]
  const show = (wheel: number) =>
    act(() =>
      root.render(
        <svg>
          <title>Corner</title>
          <CornerDrawing
            axle={axle}
            model={model}
            budget={budget}
            other={{ name: 'Proposed', budget, model }}
            wheel={wheel}
            system="inch"
            x={x}
            width={width}
            head={head}
            height={height}
            axisY={at => zero - at * perMetre}
            small={small}
            measure={wideFont}
          />
        </svg>,
      ),
    )
  return { model, show }
}

const words = (): string[] => [...host.querySelectorAll('text')].map(text => text.textContent ?? '')
const paths = (): string[] => [...host.querySelectorAll('path')].map(path => path.getAttribute('d') ?? '')

describe.each(Object.keys(CORNERS) as CornerName[])('%s on the page', name => {
  it('is drawn in finite numbers, with its words and what it shows in one sentence', () => {
    const { model, show } = prepared(name)
    for (const wheel of [model.droop, 0, model.bump]) {
      show(wheel)
      expect(paths().length).toBeGreaterThan(15)
      expect(host.innerHTML).not.toMatch(/NaN|Infinity|undefined/)
    }
    expect(host.querySelector('[role=img]')?.getAttribute('aria-label')).toMatch(
      /^(Front|Rear) corner, wheel .+: .+ of shock shaft showing$/,
    )
    expect(words().some(text => text.includes('travel enlarged'))).toBe(true)
  })
})

it('what leans out of the view is said on a line of its own, however low the column is', () => {
  const leaning = (Object.keys(CORNERS) as CornerName[]).filter(name => {
    const { model, show } = prepared(name, false, true)
    show(model.bump)
    const note = [...host.querySelectorAll('text')].find(text => text.textContent?.startsWith('shock leans'))
    if (note === undefined) return false
    const below = Number(note.getAttribute('y')) + 3
    // The fan, which goes over to the axis at 380, is beside the words.
    const straight = paths().filter(d => /^[\d.,\sMLZz-]+$/.test(d) && !d.includes('L380 '))
    const highest = Math.min(...straight.flatMap(d => numbersIn(d).filter((_, i) => i % 2 === 1)))
    expect(highest, name).toBeGreaterThan(below)
    return true
  })
  expect(leaning.length).toBeGreaterThan(0)
})

describe('dragging the wheel', () => {
  it('leaves chassis, stop body and fan untouched, and moves the rest', () => {
    const { show } = prepared('trailing')
    show(0.02)
    const still = [...host.querySelectorAll('path.moves')]
    const before = { still: still.map(path => path.getAttribute('d')), all: paths() }
    show(0.09)
    expect([...host.querySelectorAll('path.moves')].every((path, i) => path === still[i])).toBe(true)
    expect(still.map(path => path.getAttribute('d'))).toEqual(before.still)
    const moved = paths().filter((d, i) => d !== before.all[i])
    expect(still.length).toBeGreaterThan(8)
    expect(moved.length).toBeGreaterThan(8)
  })

  it('tells the plate at which scale the hub is dragged', () => {
    const { model, show } = prepared('trailing')
    const hubAt = (wheel: number): number => {
      show(wheel)
      const d = host.querySelector('[data-wheel-hub] path')!.getAttribute('d')!
      return Number(/^M\S+ ([\d.-]+)/.exec(d)![1])
    }
    const [low, high] = [hubAt(0), hubAt(model.bump)]
    const told = Number(host.querySelector('[data-wheel-hub]')!.getAttribute('data-wheel-hub'))
    // Paths are written to a hundredth of a px.
    expect(Math.abs((low - high) / model.bump - told)).toBeLessThan(0.02 / model.bump)
  })
})

describe('a small column', () => {
  it('has neither names nor detail', () => {
    const { show } = prepared('trailing', true)
    show(0.05)
    expect(words().every(text => text.includes('travel enlarged'))).toBe(true)
    const large = prepared('trailing')
    large.show(0.05)
    expect(words()).toEqual(expect.arrayContaining(['tender', 'divider', 'main', 'stop', 'A']))
  })
})
