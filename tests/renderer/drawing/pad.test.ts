import { describe, expect, it } from 'vitest'
import { cornerModel } from '../../../core/corner/corner.ts'
import { type Figure, figureOf, type Station, stationAt } from '../../../renderer/charts/drawing/figure.ts'
import { dot, type Flat, minus, rightOf } from '../../../renderer/charts/drawing/flat.ts'
import { padLine } from '../../../renderer/charts/drawing/pad.ts'
import { close } from '../../close.ts'
import { CORNERS, type CornerName, namedAxle } from './corners.ts'

const EXACT = { abs: 1e-9 }
const names = (Object.keys(CORNERS) as CornerName[]).filter(name => CORNERS[name].stop !== null)

function of(name: CornerName): Figure {
  const axle = namedAxle(name)
  return figureOf(axle, cornerModel(axle.corner))
}

/** From the pad's face to the rounded face of the foot, square to the pad, in the drawing plane. */
function clearance({ stop }: Figure, station: Station): number {
  const { build, frame } = stop!
  const { stations, pad } = station.stop!
  const centre = frame(0, stations.face + build.dome)
  const [left, right] = [frame(-1, padLine(pad, -1)), frame(1, padLine(pad, 1))]
  const along = minus(right, left)
  const square: Flat = rightOf(along)
  return Math.abs(dot(minus(centre, left), square)) / Math.hypot(...along) - build.dome
}

describe.each(names)('pad and stop of %s', name => {
  const figure = of(name)
  const { model } = figure

  it('touch exactly at engagement', () => {
    const { engagement, droop, bump } = model
    if (engagement === null) expect(model.parts(bump).stopGap).toBeGreaterThan(0)
    else close(clearance(figure, stationAt(figure, Math.max(droop, engagement))), 0, EXACT, 'clearance')
  })

  it('stay together beyond it, and stand apart by the gap before it', () => {
    for (const share of [0, 0.2, 0.4, 0.6, 0.8, 1]) {
      const wheel = model.droop + share * (model.bump - model.droop)
      const station = stationAt(figure, wheel)
      const { stopGap } = model.parts(wheel)
      // A pad on the far side of its pivot runs past a closed stop in droop: the plan asks for what no stop can do.
      if (stopGap! < -figure.stop!.build.stroke) continue
      const gap = Math.max(0, stopGap!)
      close(clearance(figure, station), gap * Math.cos(station.stop!.pad.tilt), EXACT, `clearance at ${wheel}`)
    }
  })

  it('show as much of the stop as it has left', () => {
    for (const wheel of [model.droop, 0, model.bump]) {
      const { stations } = stationAt(figure, wheel).stop!
      close(stations.shaft.to - stations.shaft.from, model.parts(wheel).stopLeft!, EXACT, 'left')
    }
  })
})

describe('where the stop ends the travel', () => {
  it('its foot stands on its body', () => {
    const figure = of('trailing')
    expect(figure.model.bumpLimitedBy).toBe('stop closed')
    const { stations } = stationAt(figure, figure.model.bump).stop!
    close(
      stations.face + figure.stop!.build.footThickness,
      stations.top - figure.stop!.build.body,
      EXACT,
      'foot on body',
    )
  })

  it('an upright stop moves its pad as the arm moves it', () => {
    const figure = of('trailing')
    const { linkage } = figure.model.corner
    if (linkage.kind !== 'arm') throw new Error('the trailing corner is an arm')
    for (const wheel of [figure.model.droop, 0.1, figure.model.bump]) {
      const [x, , z] = figure.model.linkage.move!(linkage.stopPad, wheel)
      const { stations, pad } = stationAt(figure, wheel).stop!
      const at = figure.stop!.frame(pad.drift, stations.pad)
      close(at[0], -(x - linkage.wheel[0]), EXACT, 'across')
      close(at[1], z - linkage.wheel[2], EXACT, 'height')
    }
  })
})
