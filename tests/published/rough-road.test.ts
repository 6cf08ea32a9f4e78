import { describe, expect, it } from 'vitest'
import { ROUGHNESS, rough, roughLines } from '../../core/ride/rough.ts'
import { close } from '../close.ts'

/** ISO 8608:2016, annex C: Gd(n) = Gd(n₀)·(n/n₀)⁻², n₀ = 0.1 cycle/m; geometric means of the classes, 10⁻⁶ m³ (A to E as printed, F to H from memory). */
const MEANS = { A: 16, B: 64, C: 256, D: 1024, E: 4096, F: 16_384, G: 65_536, H: 262_144 } as const

type Class = keyof typeof MEANS

/** Standard deviation of height over 0.011 to 2.83 cycles/m at the mean of a class, mm: √(Gd(n₀)·n₀²·(1/n₁ − 1/n₂)). */
const DEVIATIONS = { A: 3.806, B: 7.613, C: 15.226, D: 30.451, E: 60.903 } as const

/** Power of a series at k whole waves over its length, for each k up to half its length (J. W. Cooley and J. W. Tukey, 1965). */
function powers(series: Float64Array): Float64Array {
  const n = series.length
  const re = series.slice()
  const im = new Float64Array(n)
  for (let i = 1, j = 0; i < n; i += 1) {
    let bit = n >> 1
    for (; j & bit; bit >>= 1) j ^= bit
    j ^= bit
    if (i < j) [re[i], re[j]] = [re[j]!, re[i]!]
  }
  for (let length = 2; length <= n; length *= 2)
    for (let start = 0; start < n; start += length)
      for (let k = 0; k < length / 2; k += 1) {
        const angle = (-2 * Math.PI * k) / length
        const [c, s] = [Math.cos(angle), Math.sin(angle)]
        const [a, b] = [start + k, start + k + length / 2]
        const [x, y] = [re[b]! * c - im[b]! * s, re[b]! * s + im[b]! * c]
        re[b] = re[a]! - x
        im[b] = im[a]! - y
        re[a]! += x
        im[a]! += y
      }
  return Float64Array.from({ length: n / 2 }, (_, k) => (2 * (re[k]! ** 2 + im[k]! ** 2)) / n ** 2)
}

/** Eight kilometres of a class, a place every quarter of a metre, the mean taken off. */
function road(isoClass: Class, seed: number): { series: Float64Array; length: number } {
  const count = 2 ** 15
  const spacing = 0.25
  const driven = rough({ id: '', name: '', kind: 'rough', isoClass, speed: 1, duration: 1e5, seed })
  const series = Float64Array.from({ length: count }, (_, i) => driven.height(i * spacing))
  const mean = series.reduce((sum, height) => sum + height, 0) / count
  return { series: series.map(height => height - mean), length: count * spacing }
}

describe('roads of the classes of ISO 8608', () => {
  it('are taken at the geometric mean of their class, not at its upper limit', () =>
    expect(
      Object.fromEntries(Object.entries(ROUGHNESS).map(([name, value]) => [name, Math.round(value * 1e6)])),
    ).toEqual(MEANS))

  it.each(Object.entries(DEVIATIONS))('class %s has the variance of its band', (isoClass, deviation) => {
    const variance = roughLines(isoClass as Class, 3).reduce((sum, { amplitude }) => sum + amplitude ** 2 / 2, 0)
    close(Math.sqrt(variance) * 1000, deviation, { rel: 2e-4 })
    const { series } = road(isoClass as Class, 3)
    const found = Math.sqrt(series.reduce((sum, height) => sum + height ** 2, 0) / series.length)
    // The longest waves pass only ninety times.
    close(found * 1000, deviation, { rel: 0.05 })
  })

  it('have the spectrum of their class, octave by octave', () => {
    const { series, length } = road('C', 9)
    // A window that ends at zero, so that waves that do not fit the length stay where they belong (J. von Hann).
    const count = series.length
    const windowed = series.map((height, i) => height * Math.sqrt(8 / 3) * Math.sin((Math.PI * i) / count) ** 2)
    const power = powers(windowed)
    for (let low = 0.022; low < 1; low *= 2) {
      const high = 2 * low
      let sum = 0
      for (let k = Math.ceil(low * length); k < high * length; k += 1) sum += power[k]!
      // Thirty lines an octave, each somewhere in its own thirtieth: those at the edges may fall on either side.
      close(sum, MEANS.C * 1e-6 * 0.01 * (1 / low - 1 / high), { rel: 0.1 }, `${low} to ${high} cycles/m`)
    }
  })

  it('are others with another seed, and the same with the same', () => {
    expect(roughLines('B', 4)).toEqual(roughLines('B', 4))
    expect(roughLines('B', 5)[7]!.phase).not.toBe(roughLines('B', 4)[7]!.phase)
  })
})
