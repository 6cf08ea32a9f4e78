import { describe, expect, it } from 'vitest'
import { GENERIC_SHELF } from '../../../core/changes/shelf.ts'
import { formatShelf, parseShelf, readShelf } from '../../../core/plan/shelf-file.ts'

const generic = () => JSON.parse(formatShelf(GENERIC_SHELF))

const problems = (value: unknown) => {
  const parsed = parseShelf(value)
  return parsed.ok ? [] : parsed.problems
}

describe('a shelf file', () => {
  it('written is read back: the generic sizes, all marked so, each with an id of its own', () => {
    expect(readShelf(formatShelf(GENERIC_SHELF))).toEqual({ ok: true, shelf: GENERIC_SHELF })
    for (const parts of Object.values(GENERIC_SHELF)) {
      expect(parts.length).toBeGreaterThan(5)
      expect(parts.every((part: { generic: boolean }) => part.generic)).toBe(true)
    }
  })

  it('is refused at the path of what is wrong', () => {
    const shelf = generic()
    shelf.stops[0].part.stroke = 'long'
    shelf.springs[1].part.maker = 'somebody'
    expect(problems(shelf)).toEqual([
      { path: 'stops[0].part.stroke', found: '"long"', wanted: 'a number' },
      { path: 'springs[1].part.maker', found: 'an unknown key', wanted: 'only the keys of the shelf file' },
    ])
  })

  it('is refused where its parts contradict themselves', () => {
    const shelf = generic()
    shelf.stops[1].part.gasVolume = 1e-6
    shelf.springs[0].part.solidLength = 1
    shelf.tubes[2].part.wall = 0.1
    shelf.tubes[3].id = shelf.tubes[0].id
    expect(problems(shelf).map(({ path }) => path)).toEqual([
      'tubes[3].id',
      'stops[1].part.gasVolume',
      'springs[0].part.solidLength',
      'tubes[2].part.wall',
    ])
  })

  it('is not guessed from something else', () => {
    expect(problems({ ...generic(), version: 2 })).toMatchObject([{ path: 'version', wanted: '1' }])
    expect(problems(null)).toMatchObject([{ path: '' }])
    expect(readShelf('{').ok).toBe(false)
  })
})
