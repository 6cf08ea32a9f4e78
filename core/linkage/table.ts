import { pchip } from '../numerics/pchip.ts'
import type { TableLinkage } from '../plan/schema.ts'
import type { LinkageModel } from './linkage-model.ts'

/** Measured rows of wheel, shock and stop travel, joined by a curve that rises wherever they do; never continued past the first or last row. */
export function tableLinkage({ rows }: TableLinkage): LinkageModel {
  const wheels = rows.map(row => row.wheel)
  const shock = pchip(
    wheels,
    rows.map(row => row.shock),
  )
  const stop = pchip(
    wheels,
    rows.map(row => row.stop),
  )
  return {
    lowest: wheels[0]!,
    highest: wheels.at(-1)!,
    at: wheel => {
      const [ofShock, ofStop] = [shock.at(wheel), stop.at(wheel)]
      return { shock: ofShock.value, stop: ofStop.value, shockRatio: ofShock.slope, stopRatio: ofStop.slope }
    },
    ratioSlopes: (wheel, side) => ({ shock: shock.bend(wheel, side), stop: stop.bend(wheel, side) }),
    rises: true,
    knots: wheels,
    move: null,
  }
}
