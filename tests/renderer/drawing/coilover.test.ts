import { describe, expect, it } from 'vitest'
import { cornerModel } from '../../../core/corner/corner.ts'
import { coilPitch } from '../../../renderer/charts/drawing/coil.ts'
import { type Figure, figureOf, type Station, stationAt } from '../../../renderer/charts/drawing/figure.ts'
import { minus, size } from '../../../renderer/charts/drawing/flat.ts'
import { close } from '../../close.ts'
import { positions } from './columns.ts'
import { CORNERS, type CornerName, namedAxle } from './corners.ts'

const EXACT = { abs: 1e-9 }
const names = Object.keys(CORNERS) as CornerName[]

function everywhere(name: CornerName, check: (figure: Figure, station: Station) => void): void {
  const axle = namedAxle(name)
  const figure = figureOf(axle, cornerModel(axle.corner))
  for (const wheel of positions(figure.model)) check(figure, stationAt(figure, wheel))
}

/** Length of a stretch along the shock as drawn, m. */
const drawn = ({ shockFrame }: Station, { from, to }: { from: number; to: number }): number =>
  size(minus(shockFrame(0, to), shockFrame(0, from)))

describe.each(names)('the coilover of %s', name => {
  it('shows as much shaft as the shock has left', () => {
    everywhere(name, ({ model }, station) => {
      const { shockLeft } = model.parts(station.wheel)
      close(drawn(station, station.coilover.shaft), shockLeft * station.shrink, EXACT, 'drawn shaft')
    })
  })

  it('has springs as long as the model says, stacked from the lower seat to the upper one', () => {
    everywhere(name, ({ model, coilover: build }, station) => {
      const { springs } = model.corner.springs
      const { compression } = { compression: model.parts(station.wheel).springs.map(spring => spring.compression) }
      springs.forEach((spring, i) => {
        const length = spring.freeLength - compression[i]!
        close(drawn(station, station.coilover.springs[i]!), length * station.shrink, EXACT, `spring ${i}`)
      })
      const stack = [...station.coilover.springs].reverse().flatMap((spring, i) => {
        const divider = [...station.coilover.dividers].reverse()[i]
        return divider === undefined ? [spring] : [spring, divider]
      })
      let at = build.lowerSeat
      for (const piece of stack) {
        close(piece.from, at, EXACT, 'where a piece begins')
        at = piece.to
      }
      const packed = compression.reduce((sum, value) => sum + value, 0)
      // A loose pack leaves room under the upper seat; a bound one cannot, the wheel stops there.
      if (packed > 1e-9) close(at, station.coilover.upperSeat, EXACT, 'top of the stack')
      else expect(at).toBeLessThanOrEqual(station.coilover.upperSeat + 1e-9)
    })
  })

  it('has its eyes where the linkage has them', () => {
    everywhere(name, ({ skeleton }, station) => {
      const between = size(minus(skeleton.upper, station.pose.lower))
      close(station.coilover.length * station.shrink, between, EXACT, 'eye to eye')
      close(station.coilover.length, skeleton.shockLength - modelShock(name, station.wheel), EXACT, 'true length')
    })
  })
})

const modelShock = (name: CornerName, wheel: number): number =>
  cornerModel(namedAxle(name).corner).linkage.at(wheel).shock

describe('what ends the travel touches', () => {
  const at = (name: CornerName, where: 'bump' | 'crossover') => {
    const axle = namedAxle(name)
    const figure = figureOf(axle, cornerModel(axle.corner))
    return { figure, station: stationAt(figure, figure.model[where]!) }
  }

  it('coils lie turn on turn at coil bind', () => {
    const { figure, station } = at('coilBind', 'bump')
    expect(figure.model.bumpLimitedBy).toBe('coil bind')
    const main = figure.coilover.wires.at(-1)!
    const pitch = coilPitch(station.coilover.springs.at(-1)!, main.turns, main.thickness)
    close(pitch, main.thickness, EXACT, 'pitch')
    const free = stationAt(figure, figure.model.droop).coilover.springs.at(-1)!
    expect(coilPitch(free, main.turns, main.thickness)).toBeGreaterThan(1.2 * main.thickness)
  })

  it('the shaft is gone when the shock is closed, and the body stands on the lower seat', () => {
    const { figure, station } = at('shockClosed', 'bump')
    expect(figure.model.bumpLimitedBy).toBe('shock closed')
    close(station.coilover.shaft.to, station.coilover.shaft.from, EXACT, 'shaft')
    close(station.coilover.body.from, figure.coilover.lowerSeat, EXACT, 'end of the body')
  })

  it('the divider meets the stop ring at crossover, not before', () => {
    const { figure, station } = at('trailing', 'crossover')
    const [divider] = station.coilover.dividers
    close(station.coilover.ring!.from, divider!.to, EXACT, 'ring on divider')
    const before = stationAt(figure, 0).coilover
    expect(before.ring!.from - before.dividers[0]!.to).toBeGreaterThan(0.005)
  })
})
