import { describe, expect, it } from 'vitest'
import { formatRecipes, parseRecipes, readRecipes } from '../../../core/plan/recipe-file.ts'
import { guessChannels } from '../../../core/runs/choose.ts'
import { recipeFor, recipeOf } from '../../../core/runs/recipe.ts'
import { detected } from '../runs/tables.ts'

const text = 'Time (ms),Front left (mm),Front right (V),Front wheel speed (km/h),Rear (mm)\n0,1,2,3,4\n1,1,2,3,4\n'
const { reading, columns, fingerprint } = detected(text)
const channels = guessChannels(columns, reading.time, ['front', 'rear'])
const recipe = recipeOf('Blue box', fingerprint, { ...reading, backward: 'goes on' }, [
  { ...channels[0]!, rideHeightAt: 3, calibration: { scale: 1e-3, offset: -0.04 } },
])

describe('a recipe', () => {
  it('begins from what the heads say', () =>
    expect(
      channels.map(({ column, axle, side, measures, calibration }) => [
        column,
        axle,
        side,
        measures,
        calibration.scale,
      ]),
    ).toEqual([
      [1, 'front', 'left', 'shaft', 1e-3],
      [2, 'front', 'right', 'shaft', 0],
      [4, 'rear', 'both', 'shaft', 1e-3],
    ]))

  it('is found again for a file of the same kind, and for no other', () => {
    const other = { ...recipe, name: 'Other', fingerprint: { ...fingerprint, delimiter: ';' as const } }
    const next = detected(text.replaceAll('1,1,2', '1,5,6'))
    expect(recipeFor([recipe, other], next.fingerprint)).toBe(recipe)
    expect(recipeFor([recipe], detected(text.replace('left', 'LEFT')).fingerprint)).toBeNull()
    expect(recipeFor([recipe], detected('no table').fingerprint)).toBeNull()
    expect(recipe.channels[0]!.rideHeightAt).toBeNull()
  })

  it('comes back from its file as it was', () =>
    expect(readRecipes(formatRecipes([recipe]))).toEqual({ ok: true, recipes: [recipe] }))

  it('that could not be used is refused at its path', () => {
    const wrong = (more: object) => {
      const read = parseRecipes({ format: 'stopgap-recipes', version: 1, recipes: [{ ...recipe, ...more }] })
      return read.ok ? [] : read.problems.map(({ path }) => path)
    }
    expect(wrong({})).toEqual([])
    expect(wrong({ reading: { ...reading, time: { kind: 'rate', rowsPerSecond: 0 } } })).toEqual([
      'recipes[0].reading.time.rowsPerSecond',
    ])
    expect(wrong({ reading: { ...reading, delimiter: 'x' } })).toEqual(['recipes[0].reading.delimiter'])
    expect(wrong({ more: 1 })).toEqual(['recipes[0].more'])
    expect(readRecipes('{')).toMatchObject({ ok: false, problems: [{ path: '' }] })
  })
})
