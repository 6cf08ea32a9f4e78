import { expect, it } from 'vitest'
import { lowPass } from '../../core/runs/low-pass.ts'
import { close } from '../close.ts'

const step = 1e-3
const cutoff = 20
const wave = (frequency: number, count = 8000) =>
  Float64Array.from({ length: count }, (_, i) => Math.sin(2 * Math.PI * frequency * i * step))

/** Amplitude and phase of a frequency in the middle half, by least squares against sine and cosine over whole periods. */
function found(values: Float64Array, frequency: number): { amplitude: number; phase: number } {
  let [sine, cosine, count] = [0, 0, 0]
  for (let i = 2000; i < 6000; i += 1) {
    sine += values[i]! * Math.sin(2 * Math.PI * frequency * i * step)
    cosine += values[i]! * Math.cos(2 * Math.PI * frequency * i * step)
    count += 1
  }
  return { amplitude: (2 * Math.hypot(sine, cosine)) / count, phase: Math.atan2(cosine, sine) }
}

/** The squared Butterworth gain of two passes, 3 dB down at the cutoff, its frequencies bent as the bilinear transform bends them. */
const bent = (frequency: number) => Math.tan(Math.PI * frequency * step)
const gain = (frequency: number) => 1 / (1 + (Math.SQRT2 - 1) * (bent(frequency) / bent(cutoff)) ** 4)

it.each([1, 5, 10, 20, 40, 80])(
  'a wave of %d Hz comes through with the gain of the closed form, and not shifted (Butterworth, two passes; bilinear transform: Oppenheim and Schafer, ch. 7)',
  frequency => {
    const { amplitude, phase } = found(lowPass(wave(frequency), cutoff, step), frequency)
    close(amplitude, gain(frequency), { rel: 1e-6, abs: 1e-9 })
    close(phase, 0, { abs: 1e-6 })
  },
)

it('at its cutoff it is 3 dB down: 1/√2 of the amplitude (definition of the cutoff)', () =>
  close(found(lowPass(wave(cutoff), cutoff, step), cutoff).amplitude, Math.SQRT1_2, { rel: 1e-6 }))

it('a level and a slope stay what they are, to the ends', () => {
  const level = new Float64Array(500).fill(3)
  const slope = Float64Array.from({ length: 2000 }, (_, i) => 0.25 * i)
  const worst = (values: Float64Array) =>
    lowPass(values, cutoff, step).reduce((most, value, i) => Math.max(most, Math.abs(value - values[i]!)), 0)
  close(worst(level), 0, { abs: 1e-9 })
  // What is turned over about the ends begins with a level, which dies out before the ends.
  close(worst(slope), 0, { abs: 0.01 })
  expect(lowPass(Float64Array.of(4), cutoff, step)).toEqual(Float64Array.of(4))
})
