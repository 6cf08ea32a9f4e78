import { describe, expect, it } from 'vitest'
import { notePlace } from '../../../renderer/help/note-place.ts'

const note = { width: 330, height: 150 }
const window = { width: 1440, height: 900 }

describe('where a note of the look around stands', () => {
  it.each([
    ['right of a column', { left: 0, top: 52, right: 268, bottom: 900 }, { left: 282, top: 66 }],
    ['under a bar', { left: 0, top: 0, right: 1440, bottom: 52 }, { left: 480, top: 66 }],
    ['above a foot', { left: 268, top: 760, right: 1440, bottom: 900 }, { left: 268 + 1172 / 3, top: 596 }],
    [
      'in the corner of what fills the window',
      { left: 20, top: 52, right: 1440, bottom: 880 },
      { left: 1096, top: 716 },
    ],
  ])('%s', (_where, part, place) => {
    const got = notePlace(part, note, window)
    expect(got.left).toBeCloseTo(place.left, 6)
    expect(got.top).toBeCloseTo(place.top, 6)
  })

  it('never outside the window', () => {
    const part = { left: -500, top: 2000, right: 5000, bottom: 3000 }
    const { left, top } = notePlace(part, note, window)
    expect(left + note.width).toBeLessThanOrEqual(window.width)
    expect(top + note.height).toBeLessThanOrEqual(window.height)
  })
})
