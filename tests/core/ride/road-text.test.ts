import { describe, expect, it } from 'vitest'
import { readRoad } from '../../../core/ride/road-text.ts'

describe('the text of a road', () => {
  it.each([
    ['distance (m),height (m)\n0,0\n1,0.1\n', [0, 1], [0, 0.1]],
    ['\uFEFFDistance (IN); Height (in)\r\n0;-1\r\n10;1e1\r\n\r\n', [0, 0.254], [-0.0254, 0.254]],
    ['distance (km)\theight (m)\n0\t0\n', null, 'line 1 has'],
    ['', null, 'line 1 has “”; it should be the head'],
    ['distance (m),height (m)\n0,0\n', null, 'it has 1 place'],
    ['distance (m),height (m)\n0,0\n0,1\n', null, 'line 3 has a distance of 0; it should be more than the 0 before it'],
    ['distance (m),height (m)\n0,0\n1,NaN\n', null, 'line 3 has “1,NaN”; it should be two numbers'],
    ['distance (m),height (m)\n0,0\n1,1e999\n', null, 'line 3 has “1,1e999”'],
    ['distance (m),height (m)\n0,0\n1,=1+1\n', null, 'line 3 has “1,=1+1”'],
    ['distance (m),height (m)\n0,0\n1,2,3\n', null, 'line 3 has “1,2,3”'],
  ] as const)('%j', (text, distance, told) => {
    const read = readRoad(text)
    if (distance === null) expect(read).toMatchObject({ ok: false, why: expect.stringContaining(told) })
    else expect(read).toEqual({ ok: true, profile: { distance, height: told } })
  })
})
