import { describe, expect, it } from 'vitest'
import { type Buckling, buckling } from '../../core/spacer/column.ts'
import { arrestingLoad } from '../../core/spacer/strength.ts'
import { GRAVITY, INCH, PSI } from '../../core/units/constants.ts'
import { close } from '../close.ts'

/** Inches, psi and pounds as any consistent units go through: the formulas know none. */
const round = (diameter: number, length: number, yieldStrength: number, modulus = 30e6): Buckling =>
  buckling({ area: (Math.PI / 4) * diameter ** 2, gyration: diameter / 4, length, yieldStrength, modulus })

describe('V. M. Faires, Design of Machine Elements, problem 334: 10 kips with a factor of 3 on a round column', () => {
  it('of C1020, Sy 48 ksi, 25 in long: 1.096 in by Johnson', () => {
    const { load, by } = round(1.09593, 25, 48e3)
    close(load, 30e3, { rel: 2e-5 })
    expect(by).toBe('Johnson')
  })

  it('the same 50 in long: 1.507 in by Euler', () => {
    const { load, by } = round(1.50719, 50, 48e3)
    close(load, 30e3, { rel: 2e-5 })
    expect(by).toBe('Euler')
  })

  it('of AISI 8640, Sy 150 ksi, 25 in long: the laws meet at 62.83, and 1.0657 in by Euler', () => {
    const { load, by, transition } = round(1.0657, 25, 150e3)
    close(transition, 62.83, { abs: 0.005 })
    close(load, 30e3, { rel: 2e-4 })
    expect(by).toBe('Euler')
  })
})

describe('R. L. Mott, Machine Elements in Mechanical Design (from memory; recomputed)', () => {
  it('ex. 6-1: 1.25 in round, 54 in pinned, Sy 51 ksi: 172.8, 107.76, 12 169 lb', () => {
    const { load, by, slenderness, transition } = round(1.25, 54, 51e3)
    close(slenderness, 172.8, { abs: 0.05 })
    close(transition, 107.76, { abs: 0.005 })
    close(load, 12_169, { abs: 0.6 })
    expect(by).toBe('Euler')
  })

  it('ex. 6-2: 12 by 18 mm, 280 mm at K 0.8, Sy 290, E 207 000 MPa: 64.66, 118.7, 53.35 kN', () => {
    const { load, by, slenderness, transition } = buckling({
      area: 12 * 18,
      gyration: 12 / Math.sqrt(12),
      length: 0.8 * 280,
      yieldStrength: 290,
      modulus: 207e3,
    })
    close(slenderness, 64.66, { abs: 0.005 })
    close(transition, 118.7, { abs: 0.05 })
    close(load / 1000, 53.35, { abs: 0.01 })
    expect(by).toBe('Johnson')
  })
})

describe('other texts', () => {
  it('R. C. Hibbeler, Mechanics of Materials, ex. 13.1 (from memory; recomputed): tube of 3 and 2.75 in radius, 24 ft pinned, 64.5 kip', () => {
    const area = Math.PI * (3 ** 2 - 2.75 ** 2)
    const gyration = Math.sqrt(3 ** 2 + 2.75 ** 2) / 2
    const { load } = buckling({ area, gyration, length: 24 * 12, yieldStrength: 36, modulus: 29e3 })
    close(load, 64.5, { abs: 0.05 })
    close(load / area, 14.29, { abs: 0.005 })
  })

  it('E. P. Popov, Engineering Mechanics of Solids, ex. 11.2: 60 by 100 mm, E 200 GPa, reaches 250 MPa at 1539 mm: where the laws meet for twice that yield', () => {
    const { load, slenderness, transition } = buckling({
      area: 6000,
      gyration: 60 / Math.sqrt(12),
      length: 1539,
      yieldStrength: 500,
      modulus: 200e3,
    })
    close(slenderness, transition, { rel: 5e-4 })
    close(load / 6000, 250, { rel: 1e-3 })
  })

  it('a spacer of 1.5 by 0.120 in, 6 in long, Sy 60 ksi, E 29.7 million psi: 30 975.1 lb by Johnson (recomputed)', () => {
    const { load, by, slenderness } = buckling({
      area: 0.520248,
      gyration: 6 / 12.2513,
      length: 6,
      yieldStrength: 60e3,
      modulus: 29.7e6,
    })
    close(load, 30_975.1, { abs: 0.2 })
    close(slenderness, 12.2513, { rel: 1e-12 })
    expect(by).toBe('Johnson')
  })

  it('where the laws meet both give half the yield', () => {
    const meet = Math.sqrt(2 * Math.PI ** 2 * (29.7e6 / 60e3))
    for (const length of [meet * (1 - 1e-9), meet * (1 + 1e-9)])
      close(buckling({ area: 1, gyration: 1, length, yieldStrength: 60e3, modulus: 29.7e6 }).load, 30e3, { rel: 1e-8 })
  })
})

/** Stress in a hanging bar whose collar catches a falling weight, Pa. */
const caught = (mass: number, drop: number, diameter: number, length: number, modulus: number): number => {
  const area = (Math.PI / 4) * diameter ** 2
  const speed = Math.sqrt(2 * GRAVITY * drop)
  return arrestingLoad(mass * GRAVITY, speed, mass, (modulus * area) / length) / area
}

describe('a mass brought up short by an elastic bar', () => {
  it('10 kg falling 300 mm, bar of 25 mm and 2.6 m, E 200 GPa: 96.24 MPa (expertsmind.com, instantaneous stress, g 9.81)', () =>
    close(caught(10, 0.3, 0.025, 2.6, 200e9) / 1e6, 96.24, { rel: 5e-4 }))

  it('20 kg falling 150 mm, bar of 15 mm and 2 m, E 210 GPa: 188 MPa (J. M. Gere, Mechanics of Materials, ex. 2-16, from memory; recomputed)', () =>
    close(caught(20, 0.15, 0.015, 2, 210e9) / 1e6, 188, { abs: 0.5 }))

  it('500 lb falling 1 in, bar of 2 in and 10 in, E 30 million psi: 31 061.50 psi (machine-design text, ex. 7.1)', () =>
    close(caught(500 * 0.45359237, INCH, 2 * INCH, 10 * INCH, 30e6 * PSI) / PSI, 31_061.5, { rel: 1e-5 }))

  it('25 N falling 175.96 mm, bar of 10 mm and 1 m, E 200 GPa: 150 MPa (holooly.com, strength of materials, question 1.27)', () =>
    close(caught(25 / GRAVITY, 0.17596, 0.01, 1, 200e9) / 1e6, 150, { rel: 1e-4 }))

  it('let go at once without a fall strains it twice as much as resting', () =>
    expect(arrestingLoad(7, 0, 3, 9)).toBe(14))
})
