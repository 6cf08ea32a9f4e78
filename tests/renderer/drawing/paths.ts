/** Every number in a path's text, in order; NaN where one is not a number. */
export const numbersIn = (d: string): number[] => {
  const words = d.match(/[^\sMLAazZ,]+/g) ?? []
  return words.map(Number)
}
