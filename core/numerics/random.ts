/**
 * Numbers evenly spread over [0, 1) that a seed fixes for good: xoshiro128** 1.1 (D. Blackman and S. Vigna, Scrambled Linear Pseudorandom
 * Number Generators, ACM TOMS 47 (2021)), its state filled by splitmix32.
 * @param seed whole number from 0 to 2³² − 1
 */
export function seededRandom(seed: number): () => number {
  let mix = seed >>> 0
  const split = (): number => {
    mix = (mix + 0x9e3779b9) >>> 0
    let z = mix
    z = Math.imul(z ^ (z >>> 16), 0x85ebca6b)
    z = Math.imul(z ^ (z >>> 13), 0xc2b2ae35)
    return (z ^ (z >>> 16)) >>> 0
  }
  let [a, b, c, d] = [split(), split(), split(), split()]
  const turned = (value: number, by: number): number => (value << by) | (value >>> (32 - by))
  return () => {
    const result = Math.imul(turned(Math.imul(b, 5), 7), 9) >>> 0
    const t = b << 9
    c ^= a
    d ^= b
    b ^= c
    a ^= d
    c ^= t
    d = turned(d, 11)
    return result / 2 ** 32
  }
}
