import { describe, expect, it } from 'vitest'
import { cornerModel } from '../../core/corner/corner.ts'
import type { Point } from '../../core/plan/schema.ts'
import { INCH, POUND_FORCE } from '../../core/units/constants.ts'
import { close } from '../close.ts'
import { LB_IN, plainCorner } from '../core/plain-corner.ts'

/**
 * Wheel rate with a moving motion ratio, kw = k·MR² + F·dMR/dz (SAE J670 has the words, any vehicle dynamics text the equation; the numbers are
 * recomputed exactly). A trailing arm: pivot at the origin, wheel 20 in behind it, lower eye 14 in, upper eye 9 in behind and 16 in above,
 * 300 lb/in, 20 in free. Per angle: rise z, eye to eye s, MR, dMR/dz in 1/in, spring and wheel force in lb, then the three rates in lb/in.
 */
const ROWS = [
  [
    0, 0, 16.7630546142, 0.668135984625, 0.0078390064922, 971.083615728, 648.815907747, 133.921708185, 7.61233076816,
    141.534038953,
  ],
  [
    10, 3.47296355334, 14.38867828, 0.701186017589, 0.0112489578269, 1683.39651599, 1180.37409907, 147.498549379,
    18.9364564144, 166.435005793,
  ],
  [
    20, 6.84040286651, 11.9571081517, 0.744911512976, 0.0146581971449, 2412.86755448, 1797.37282062, 166.467948649,
    35.3682882981, 201.836236948,
  ],
] as const

const AT_RIDE = 16.7630546142
/** Shaft in at ride height, in. */
const SHAFT_IN = 3

const arm = (side: 1 | -1) => {
  const at = (x: number, z: number, y = 0): Point => [side * x * INCH, y * INCH, z * INCH]
  return cornerModel(
    plainCorner({
      linkage: {
        kind: 'arm',
        pivot: [at(0, 0, -6), at(0, 0, 6)],
        wheel: at(20, 0, 10),
        shockLower: at(14, 0),
        shockUpper: at(9, 16),
        stopPad: at(14, 0),
        stopAxis: [0, 0, 1],
      },
      shock: {
        stroke: 12 * INCH,
        showing: (12 - SHAFT_IN) * INCH,
        shaftDiameter: 0.02,
        gas: null,
        compression: [],
        rebound: [],
      },
      springs: {
        springs: [{ name: 'main', rate: 300 * LB_IN, freeLength: 20 * INCH, solidLength: 5 * INCH }],
        preload: (20 - AT_RIDE - SHAFT_IN) * INCH,
        crossover: null,
      },
    }),
  )
}

/** The figures have 12 digits; forces hang on the eye-to-eye length at ride height, given to 12 digits too. */
const DIGITS = { rel: 2e-11 }

describe.each([
  ['trailing', -1],
  ['leading', 1],
] as const)('wheel rate of a %s arm', (_name, side) => {
  const model = arm(side)
  it.each(ROWS)('at %s degrees', (degrees, z, s, ratio, ratioSlope, spring, wheel, springPart, slopePart, rate) => {
    const rise = 20 * INCH * Math.sin((degrees * Math.PI) / 180)
    close(rise / INCH, z, { rel: 1e-11 }, 'z')
    const position = model.linkage.at(rise)
    const total = model.forces(rise, 'slow').total
    const rated = model.wheelRate(rise, 'slow')
    close(AT_RIDE - position.shock / INCH, s, DIGITS, 's')
    close(position.shockRatio, ratio, DIGITS, 'MR')
    close(total / position.shockRatio / POUND_FORCE, spring, { rel: 1e-10 }, 'F')
    close(total / POUND_FORCE, wheel, { rel: 1e-10 }, 'Fw')
    close(300 * position.shockRatio ** 2, springPart, DIGITS, 'k·MR²')
    close(rated / LB_IN, rate, { rel: 1e-11 }, 'kw')
    close(rated / LB_IN - springPart, slopePart, { rel: 1e-9 }, 'F·dMR/dz')
    close((rated / LB_IN - springPart) / spring, ratioSlope, { rel: 1e-9 }, 'dMR/dz')
  })

  it('is the slope of the force at the wheel', () => {
    expect.assertions(3)
    for (const [degrees] of ROWS) {
      const rise = 20 * INCH * Math.sin((degrees * Math.PI) / 180)
      const h = 1e-4
      const [after, before] = [model.forces(rise + h, 'slow').total, model.forces(rise - h, 'slow').total]
      close(model.wheelRate(rise, 'slow'), (after - before) / (2 * h), { rel: 1e-6 })
    }
  })
})
