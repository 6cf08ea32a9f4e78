import { expect, it } from 'vitest'
import { axleBudget } from '../../../core/budget/budget.ts'
import { cornerModel } from '../../../core/corner/corner.ts'
import { ride } from '../../../core/ride/ride.ts'
import { rideAsRun } from '../../../core/runs/compare.ts'
import { runFigures } from '../../../core/runs/figures.ts'
import { runLabels } from '../../../renderer/charts/runs/run-labels.ts'
import { runScene } from '../../../renderer/charts/runs/run-scene.ts'
import { sampleAxle } from '../charts/sample-axles.ts'
import { measure, terrains } from '../terrain/rode.ts'

const model = cornerModel(sampleAxle.corner)
const budget = axleBudget(sampleAxle, { units: 'inch' }, model)
const ridden = ride(model, terrains.whoops)
if (!ridden.ok) throw new Error(ridden.reason)
const run = rideAsRun(ridden)
const figures = runFigures(model, run, [])
const view = {
  shown: { name: 'pit', budget, model, ride: figures, laid: { run, figures } },
  other: null,
  picked: { rideHeightAt: null, fullDroopAt: null },
  system: 'inch',
} as const

/** What stands beside the bars of shaft speeds, and the bars under it. */
function named(width: number, height: number) {
  const scene = runScene(view, { from: 0, to: 6 }, width, height, measure)
  const name = runLabels(scene, 'pit').labels.find(({ id }) => id === 'name-speeds')
  if (name === undefined) throw new Error('The bars have no name.')
  const { x, y, height: tall } = name.box
  const under = scene.shown!.speedBars.filter(({ from, to, share }) => {
    const [top, bottom] = [scene.speeds.y(to), scene.speeds.y(from)]
    return share > 0 && bottom > y && top < y + tall && scene.speedShares.x(share) > x
  })
  return { text: name.spans.map(({ text }) => text).join(''), under: under.length }
}

it('words stand beside the bars of shaft speeds where there is room, and over them on a low plate', () => {
  expect(named(1150, 360)).toEqual({ text: 'at each speed', under: 0 })
  for (const [width, height] of [
    [800, 260],
    [1500, 260],
  ] as const)
    expect([width, named(width, height).text]).toEqual([width, expect.stringContaining('at each')])
})
