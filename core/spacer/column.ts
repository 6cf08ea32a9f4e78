/** A straight bar pushed at its ends. SI. */
export interface Column {
  readonly area: number
  /** Radius of gyration, m. */
  readonly gyration: number
  /** Effective length, m: the length between ends that turn freely; half of it between ends that cannot turn. */
  readonly length: number
  /** Yield strength, Pa. */
  readonly yieldStrength: number
  /** Modulus of elasticity, Pa. */
  readonly modulus: number
}

export interface Buckling {
  /** Load at which it gives way, N. */
  readonly load: number
  readonly by: 'Johnson' | 'Euler'
  /** Length over radius of gyration, and where the two laws meet. */
  readonly slenderness: number
  readonly transition: number
}

/**
 * Load at which a column gives way: J. B. Johnson's parabola A·Sy·(1 − Sy·(L/r)²/(4π²E)) for short ones, Euler's π²EA/(L/r)² for slender ones;
 * they meet at L/r = √(2π²E/Sy), at half the yield (R. L. Mott, Machine Elements in Mechanical Design, ch. 6; V. M. Faires, Design of Machine
 * Elements, ch. 7).
 */
export function buckling({ area, gyration, length, yieldStrength, modulus }: Column): Buckling {
  const slenderness = length / gyration
  const transition = Math.sqrt((2 * Math.PI ** 2 * modulus) / yieldStrength)
  const short = slenderness < transition
  const stress = short
    ? yieldStrength * (1 - (yieldStrength * slenderness ** 2) / (4 * Math.PI ** 2 * modulus))
    : (Math.PI ** 2 * modulus) / slenderness ** 2
  return { load: area * stress, by: short ? 'Johnson' : 'Euler', slenderness, transition }
}
