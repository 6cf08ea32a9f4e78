/** Standard acceleration of gravity, m/s², exact (3rd CGPM, 1901). */
export const GRAVITY = 9.80665

/** Standard atmosphere, Pa, exact (10th CGPM, 1954). */
export const ATMOSPHERE = 101_325

/** The inch, foot, pound and hour in SI, exact by definition: NIST SP 811, appendix B. */
export const INCH = 0.0254
export const FOOT = 12 * INCH
export const POUND = 0.453_592_37
export const POUND_FORCE = POUND * GRAVITY
export const PSI = POUND_FORCE / INCH ** 2
export const MILE_PER_HOUR = 0.447_04
