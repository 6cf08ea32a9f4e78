import { describe, expect, it } from 'vitest'
import { boreBand, outerBand, wallBand } from '../../core/spacer/tolerance.ts'
import { metalVolume, type TubeSize, tubeMass, tubeSection } from '../../core/spacer/tube.ts'
import { FOOT, INCH, POUND } from '../../core/units/constants.ts'
import { allClose, close } from '../close.ts'

const tube = (outer: number, wall: number): TubeSize => ({ outerDiameter: outer * INCH, wall: wall * INCH })

/** Outer diameter, wall, bore in; area in²; inertia in⁴; radius of gyration in; lb/ft = 10.69·(OD − t)·t (tube trade; recomputed). */
const SIZES = [
  [1, 0.12, 0.76, 0.33175, 0.032711, 0.31401, 1.1289],
  [1.25, 0.12, 1.01, 0.426, 0.068762, 0.40176, 1.4496],
  [1.5, 0.095, 1.31, 0.41932, 0.103943, 0.49788, 1.4268],
  [1.5, 0.12, 1.26, 0.52025, 0.124781, 0.48974, 1.7703],
  [1.5, 0.134, 1.232, 0.57505, 0.135418, 0.48527, 1.9567],
  [1.5, 0.188, 1.124, 0.77489, 0.170156, 0.4686, 2.6368],
  [1.5, 0.25, 1, 0.98175, 0.199418, 0.45069, 3.3406],
  [1.75, 0.12, 1.51, 0.6145, 0.205188, 0.57785, 2.091],
  [2, 0.12, 1.76, 0.70874, 0.314399, 0.66603, 2.4117],
  [2, 0.25, 1.5, 1.37445, 0.536893, 0.625, 4.6769],
] as const

describe('drawn-over-mandrel tube', () => {
  it.each(SIZES)('%s by %s in', (outer, wall, bore, area, inertia, gyration, weight) => {
    const section = tubeSection(tube(outer, wall))
    const got = [section.bore / INCH, section.area / INCH ** 2, section.inertia / INCH ** 4, section.gyration / INCH]
    allClose(got, [bore, area, inertia, gyration], { rel: 2e-5 })
    // The trade's factor and the density behind it agree to 2 in 10 000.
    close(tubeMass(tube(outer, wall), FOOT) / POUND, weight, { rel: 3e-4 })
  })

  it('an inch of 1.5 by 0.120 takes up 0.520 cu in of oil', () =>
    close(metalVolume(tube(1.5, 0.12), INCH) / INCH ** 3, 0.52025, { rel: 1e-5 }))
})

const inches = (band: { least: number; most: number } | null): number[] =>
  band === null ? [] : [band.least / INCH, band.most / INCH]

/** ASTM A513 Type 5: diameters by teamtubellc.com (DOM technical data), walls by boyersteel.com (ASTM A513 T-5 DOM). */
describe('tolerances of drawn-over-mandrel tube', () => {
  it.each([
    [0.5, 0.005],
    [1.625, 0.005],
    [1.75, 0.006],
    [2.125, 0.007],
    [2.5, 0.008],
    [3, 0.009],
  ])('%s in outside: plus %s, minus nothing', (outer, plus) =>
    allClose(inches(outerBand(tube(outer, 0.12))), [outer, outer + plus], { abs: 1e-9 }),
  )

  it.each([
    [0.75, 0.12, 0.003, 0.003],
    [0.75, 0.095, 0.002, 0.002],
    [1.5, 0.083, 0.002, 0.003],
    [1.5, 0.109, 0.002, 0.004],
    [1.5, 0.12, 0.002, 0.004],
    [1.5, 0.134, 0.002, 0.004],
    [2.5, 0.12, 0.003, 0.003],
    [4, 0.095, 0.004, 0.005],
  ])('%s by %s in: wall plus %s, minus %s', (outer, wall, plus, minus) =>
    allClose(inches(wallBand(tube(outer, wall))), [wall - minus, wall + plus], { abs: 1e-9 }),
  )

  it('a wall the table does not have is not guessed', () => {
    expect(wallBand(tube(1.5, 0.188))).toBeNull()
    expect(wallBand(tube(0.75, 0.134))).toBeNull()
    expect(outerBand(tube(0.25, 0.03))).toBeNull()
    expect(boreBand(tube(5.75, 0.25))).toBeNull()
  })

  it('1.5 by 0.120 in may come with 1.255 to 1.273 in of bore: minus 0.005 by its own tolerance, or 1.505 less two thin walls', () =>
    allClose(inches(boreBand(tube(1.5, 0.12))), [1.255, 1.273], { abs: 1e-9 }))

  it('a bore of another wall by its own tolerance alone', () =>
    allClose(inches(boreBand(tube(1.5, 0.188))), [1.119, 1.124], { abs: 1e-9 }))
})
