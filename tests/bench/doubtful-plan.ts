import { otherAxle, startingPlan } from '../../core/plan/starting.ts'
import { INCH } from '../../core/units/constants.ts'

const started = startingPlan({
  title: 'Measured in a hurry',
  units: 'inch',
  axle: 'front',
  suspension: 'independent',
  cornerMass: 460,
  shockStroke: 12 * INCH,
  shaftShowing: 6.5 * INCH,
  ratio: { shock: 0.6, stop: 0.55 },
  springRates: [35_000, 52_000],
  stop: { stroke: 2.5 * INCH, gap: 2 * INCH },
})

/** Both axles, and a preload somebody has turned since, so that it does not rest just where the tape says. */
export const doubtful = {
  ...started,
  setups: started.setups.map(setup => {
    const axles = setup.axles.map(axle => {
      const { springs } = axle.corner
      const turned = { ...springs, preload: springs.preload - 0.25 * INCH }
      return { ...axle, corner: { ...axle.corner, springs: turned } }
    })
    return { ...setup, axles: [...axles, ...axles.map(otherAxle)] }
  }),
}
