/**
 * Numbers as they are kept in a file. `steps`: each is a whole number of 10^−places, written as its step from the one before (zigzag, seven bits
 * a byte with the eighth set where more follow, the lowest first), plus one; 0 stands for a missing one. `float64`: as IEEE 754 has them,
 * the lowest byte first, for numbers that are no such decimals. Either way they come back to the last digit.
 */
export type Packing = { readonly as: 'steps'; readonly places: number } | { readonly as: 'float64' }

/** Most places after the point tried, and the largest whole number whose steps can still be told exactly. */
export const MOST_PLACES = 9
const LARGEST = 2 ** 50

function isDecimal(values: Float64Array, places: number): boolean {
  const size = 10 ** places
  return values.every(value => {
    const whole = Math.round(value * size)
    return Number.isNaN(value) || (Math.abs(whole) < LARGEST && whole / size === value)
  })
}

/** How a list is kept in the fewest bytes. Numbers are finite, or NaN where missing. */
export function packingOf(values: Float64Array): Packing {
  for (let places = 0; places <= MOST_PLACES; places += 1) if (isDecimal(values, places)) return { as: 'steps', places }
  return { as: 'float64' }
}

/** The bytes of a list kept in a way that fits it. */
export function packed(values: Float64Array, packing: Packing): Uint8Array<ArrayBuffer> {
  const bytes = new Uint8Array(8 * values.length)
  if (packing.as === 'float64') {
    const view = new DataView(bytes.buffer)
    for (const [i, value] of values.entries()) view.setFloat64(8 * i, value, true)
    return bytes
  }
  const size = 10 ** packing.places
  let [at, before] = [0, 0]
  for (const value of values) {
    let left = 0
    if (!Number.isNaN(value)) {
      const whole = Math.round(value * size)
      const step = whole - before
      left = (step >= 0 ? 2 * step : -2 * step - 1) + 1
      before = whole
    }
    for (; left >= 128; left = Math.floor(left / 128)) {
      bytes[at] = (left % 128) + 128
      at += 1
    }
    bytes[at] = left
    at += 1
  }
  return bytes.slice(0, at)
}

/** So many numbers back from their bytes; null where the bytes are not so many numbers. */
export function unpacked(bytes: Uint8Array, packing: Packing, count: number): Float64Array | null {
  const values = new Float64Array(count)
  if (packing.as === 'float64') {
    if (bytes.length !== 8 * count) return null
    const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength)
    for (let i = 0; i < count; i += 1) values[i] = view.getFloat64(8 * i, true)
    return values
  }
  const size = 10 ** packing.places
  let [at, before] = [0, 0]
  for (let i = 0; i < count; i += 1) {
    let [read, weight, more] = [0, 1, true]
    while (more) {
      const byte = bytes[at]
      if (byte === undefined || weight > LARGEST) return null
      at += 1
      more = byte >= 128
      read += (more ? byte - 128 : byte) * weight
      weight *= 128
    }
    if (read > 0) before += read % 2 === 1 ? (read - 1) / 2 : -read / 2
    values[i] = read === 0 ? Number.NaN : before / size
  }
  return at === bytes.length ? values : null
}
