import { describe, expect, it } from 'vitest'
import { crossings, firstReaching, lookOver } from '../../../core/numerics/looks.ts'
import type { ValueAndSlope } from '../../../core/numerics/roots.ts'
import { allClose, close } from '../../close.ts'

/** A wave of 40 mm about a line: humps and hollows closer together than any linkage has. */
const wave = (x: number): ValueAndSlope => ({
  value: x + 0.05 * Math.sin((2 * Math.PI * x) / 0.04),
  slope: 1 + 2.5 * Math.PI * Math.cos((2 * Math.PI * x) / 0.04),
})
const hump = (top: number, at: number) => (x: number) => ({ value: top - (x - at) ** 2, slope: -2 * (x - at) })
const reached = (found: number | null): number => found ?? Number.NaN

describe('lookOver', () => {
  it('rises along its places and holds the ends and every turning point', () => {
    const { x, y } = lookOver(wave, -0.1, 0.1)
    expect([x[0], x.at(-1)]).toEqual([-0.1, 0.1])
    expect(x.every((place, i) => i === 0 || place > x[i - 1]!)).toBe(true)
    expect(y).toEqual(x.map(place => wave(place).value))
    const turns = x.filter(place => Math.abs(wave(place).slope) < 1e-9)
    const first = (0.04 * Math.acos(-1 / (2.5 * Math.PI))) / (2 * Math.PI)
    const wanted = [-2, -1, 0, 1, 2].flatMap(turn => [turn * 0.04 - first, turn * 0.04 + first])
    allClose(
      turns,
      wanted.filter(place => Math.abs(place) < 0.1),
      { abs: 1e-11 },
    )
  })

  it('looks every 10 mm at least, and at both ends of a stretch of any length', () => {
    const { x } = lookOver(place => ({ value: place, slope: 1 }), -0.123, 0.456)
    expect(Math.max(...x.slice(1).map((place, i) => place - x[i]!))).toBeLessThanOrEqual(0.01 + 1e-15)
    expect(lookOver(place => ({ value: place, slope: 1 }), 0, 1e-6).x).toEqual([0, 1e-6])
  })
})

describe('firstReaching', () => {
  const over = lookOver(wave, -1, 1)

  it('takes the first of several places, going up', () => {
    const target = 0.025
    const found = reached(firstReaching(over, target, 0, 1))
    close(wave(found).value, target, { abs: 1e-11 })
    for (let x = 0; x < found - 1e-9; x += 1e-4) expect(wave(x).value).toBeLessThan(target)
  })

  it('takes the first going down too, for a function that is to fall there', () => {
    const found = reached(firstReaching(over, -0.025, 0, -1, true))
    close(wave(found).value, -0.025, { abs: 1e-11 })
    for (let x = 0; x > found + 1e-9; x -= 1e-4) expect(wave(x).value).toBeGreaterThan(-0.025)
  })

  it('starts and ends anywhere, not only where it looked', () => {
    expect(reached(firstReaching(over, 0.8, 0.90123, 0.95))).toBe(0.90123)
    expect(
      firstReaching(
        lookOver(x => ({ value: x, slope: 1 }), 0, 1),
        0.5,
        0.123,
        0.4999,
      ),
    ).toBe(null)
    close(
      reached(
        firstReaching(
          lookOver(x => ({ value: x, slope: 1 }), 0, 1),
          0.5,
          0.123,
          0.5001,
        ),
      ),
      0.5,
      { abs: 1e-12 },
    )
  })

  it('takes the start when it is there already, and null when it never is', () => {
    expect(firstReaching(over, 0, 0, 1)).toBe(0)
    expect(firstReaching(over, -5, 0, 1)).toBe(0)
    expect(firstReaching(over, 5, 0, 1)).toBe(null)
    expect(firstReaching(over, 0, 0.5, 0.5)).toBe(0.5)
    expect(firstReaching(over, 5, 0.5, 0.5)).toBe(null)
  })

  it('does not step over a hump that only just reaches, between two looks', () => {
    const [top, at] = [0.3, 0.2537]
    const looks = lookOver(hump(top, at), 0, 1)
    close(reached(firstReaching(looks, top - 1e-12, 0, 1)), at, { abs: 2e-6 })
    expect(firstReaching(looks, top + 1e-12, 0, 1)).toBe(null)
    close(reached(firstReaching(looks, top - 1e-12, 1, 0)), at, { abs: 2e-6 })
  })
})

describe('crossings', () => {
  it('finds every place, up and down, in order and each once', () => {
    const over = lookOver(wave, -1, 1)
    const found = crossings(over, 0.001, -0.2, 0.2)
    let [count, last] = [0, wave(-0.2).value]
    for (let x = -0.2; x <= 0.2; x += 1e-5) {
      const { value } = wave(x)
      if (value < 0.001 !== last < 0.001) count += 1
      last = value
    }
    expect(count).toBeGreaterThan(2)
    expect(found.length).toBe(count)
    expect(found.every((place, i) => i === 0 || place - found[i - 1]! > 1e-6)).toBe(true)
    allClose(
      found.map(place => wave(place).value),
      found.map(() => 0.001),
      { abs: 1e-11 },
    )
  })

  it('takes a touch from below for coming and going, in one place', () => {
    expect(crossings(lookOver(hump(0.3, 0.25), 0, 1), 0.3, 0, 1)).toEqual([0.25, 0.25])
    expect(crossings(lookOver(hump(0.3, 0.25), 0, 1), 0.3 + 1e-12, 0, 1)).toEqual([])
  })

  it('is empty where the function stays on one side', () => {
    expect(crossings(lookOver(wave, -1, 1), 3, -1, 1)).toEqual([])
  })
})
