/** A length as a tape measure shows it: whole inches and a reduced fraction of `denominator`. */
export interface Fraction {
  readonly negative: boolean
  readonly whole: number
  /** 0 when there is no fraction. */
  readonly numerator: number
  readonly denominator: number
}

/**
 * The nearest fraction of an inch.
 * @param inches any finite number of inches, signed
 * @param denominator the finest mark on the tape: 16 for sixteenths
 */
export function nearestFraction(inches: number, denominator = 16): Fraction {
  const marks = Math.round(Math.abs(inches) * denominator)
  let numerator = marks % denominator
  let reduced = denominator
  while (numerator !== 0 && numerator % 2 === 0 && reduced % 2 === 0) {
    numerator /= 2
    reduced /= 2
  }
  return {
    negative: inches < 0 && marks > 0,
    whole: Math.floor(marks / denominator),
    numerator,
    denominator: numerator === 0 ? 1 : reduced,
  }
}
