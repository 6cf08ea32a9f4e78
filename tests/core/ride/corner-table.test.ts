import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { cornerModel } from '../../../core/corner/corner.ts'
import { type CornerTable, cornerTable } from '../../../core/ride/corner-table.ts'
import type { Modes } from '../../../core/ride/modes.ts'
import { allClose, close } from '../../close.ts'
import { arbitraryCorner } from '../../laws/arbitrary-corner.ts'
import { plainCorner } from '../plain-corner.ts'

const WEIGHT = 3000

/** Looks at a wheel position in the region it is in, by itself held at the ends. */
function look(table: CornerTable, wheel: number, modes: Partial<Modes> = {}): void {
  table.wheel = wheel
  table.look({
    ...{ stop: 'clear', end: 'bump', endPushes: true, ground: true, bumping: true, region: table.regionOf(wheel) },
    ...modes,
  })
}

describe('a corner as a table', () => {
  /** Away from the dead points of an arm, where its ratio is infinite and no table follows it. */
  it('is the corner itself, anywhere in the travel', () => {
    fc.assert(
      fc.property(
        arbitraryCorner('ratio', 'table', 'axle'),
        fc.double({ min: 0, max: 1, noNaN: true }),
        (corner, share) => {
          const model = cornerModel(corner)
          const table = cornerTable(model, WEIGHT)
          const wheel = model.droop + share * (model.bump - model.droop)
          const { springs, gas } = model.forces(wheel, 'fast', 'below')
          const at = model.linkage.at(wheel)
          look(table, wheel)
          close(table.stop, at.stop, { abs: 2e-9 })
          if (model.bump - model.droop < 1e-3 || share < 1e-6 || share > 1 - 1e-6) return
          close(table.stopRatio, at.stopRatio, { abs: 1e-6 })
          close(table.shockRatio, at.shockRatio, { abs: 1e-6 })
          close(table.axial * table.shockRatio, springs + gas, { abs: 1e-5 * WEIGHT, rel: 1e-5 })
        },
      ),
      { numRuns: 200, seed: 3 },
    )
  })

  it('goes on past its ends as it stands there, the pad as it moved there', () => {
    const model = cornerModel(plainCorner())
    const table = cornerTable(model, WEIGHT)
    const at = (wheel: number): number[] => {
      look(table, wheel)
      return [table.axial, table.shockRatio, table.stopRatio, table.stop - wheel]
    }
    for (const end of [model.bump, model.droop]) {
      const [there, beyond] = [at(end), at(end + Math.sign(end) * 0.02)]
      allClose(beyond, there, { abs: 1e-6, rel: 1e-9 })
    }
  })

  it('of a corner without travel is there as well', () => {
    const model = cornerModel(plainCorner({ clearance: { bump: 0, droop: 0 } }))
    const table = cornerTable(model, WEIGHT)
    look(table, 0)
    expect([model.bump, model.droop]).toEqual([0, 0])
    close(table.axial, model.forces(0, 'fast').total, { rel: 1e-6 })
    close(table.shockRatio, 1, { rel: 1e-6 })
  })
})
