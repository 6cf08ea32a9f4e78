import fc from 'fast-check'
import { expect, it } from 'vitest'
import { measurementPaths } from '../../../core/plan/measurements.ts'
import type { Linkage } from '../../../core/plan/schema.ts'
import { measurementName } from '../../../core/tolerance/measurement-names.ts'
import { kindOf } from '../../../core/tolerance/usual.ts'
import { specOf } from '../../../renderer/fields/field-table.ts'
import { arbitraryLinkage } from '../../laws/arbitrary-linkage.ts'
import { wholePlan } from '../plan/whole-plan.ts'

const [axle] = wholePlan().setups[0]!.axles

/** What is measured of a linkage, as paths inside its axle. */
const measuredOf = (linkage: Linkage): string[] =>
  measurementPaths({ ...axle!, corner: { ...axle!.corner, linkage } }).filter(path =>
    path.startsWith('corner.linkage.'),
  )

it('every measurement of every kind of linkage can be off, has a name and a field', () => {
  const seen = new Set<string>()
  fc.assert(
    fc.property(arbitraryLinkage(), linkage => {
      const paths = measuredOf(linkage)
      expect(paths.length).toBeGreaterThan(0)
      for (const path of paths) {
        expect(kindOf(path), path).not.toBeNull()
        expect(measurementName(path)).not.toBe(path)
        expect(
          [path, `${path}.0`, `${path}.0.0`, `${path}.0.wheel`].some(each => specOf(each) !== null),
          path,
        ).toBe(true)
        seen.add(path)
      }
    }),
    { seed: 25, numRuns: 100 },
  )
  expect(seen.size).toBe(9)
})
