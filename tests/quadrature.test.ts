import { describe, expect, it } from 'vitest'
import { close } from './close.ts'
import { integrate } from './quadrature.ts'

/** The second method needs a check of its own: integrals known in closed form. */
describe('integrate', () => {
  it.each([
    ['a polynomial of degree 15, exactly', (x: number) => 16 * x ** 15, 0, 1, 1],
    ['sin x', Math.sin, 0, Math.PI, 2],
    ['√x, whose slope is endless at 0', Math.sqrt, 0, 1, 2 / 3],
    ['1/(1 + x²)', (x: number) => 1 / (1 + x ** 2), 0, 1, Math.PI / 4],
    ['eˣ', Math.exp, -2, 3, Math.exp(3) - Math.exp(-2)],
  ] as const)('%s', (_name, f, from, to, wanted) => close(integrate(f, from, to, []), wanted, { rel: 1e-11 }))

  it('breaks at the kinks it is told of, and passes over those outside', () => {
    const bent = (x: number): number => Math.abs(x - 0.3)
    close(integrate(bent, 0, 1, [-4, 0.3, 7]), 0.29, { rel: 1e-14 })
    const step = (x: number): number => (x < 0.3 ? 0 : 5)
    close(integrate(step, 0, 1, [0.3]), 3.5, { rel: 1e-14 })
  })

  it('turned about changes its sign, and over nothing is nothing', () => {
    expect(integrate(Math.exp, 3, -2, [])).toBe(-integrate(Math.exp, -2, 3, []))
    expect(integrate(Math.exp, 1, 1, [])).toBe(0)
  })
})
