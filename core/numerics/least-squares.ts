/**
 * What is left of the squares of y when a line in all the columns of X, with a constant, has been taken out: normal equations by Cholesky
 * (G. H. Golub and C. F. Van Loan, Matrix Computations, §5.3). Good to about the square root of rounding, which is enough to tell shapes apart.
 * @param rows indices of the rows to look at, more than there are columns
 * @param x rows one after the other, each of `columns` numbers near 1 or below
 * @param y one for each row, finite
 * @returns sum of squares, in the unit of y squared, 0 or more
 */
export function squaresLeft(rows: ArrayLike<number>, x: Float64Array, columns: number, y: Float64Array): number {
  const size = columns + 1
  const count = rows.length
  let mean = 0
  for (let i = 0; i < count; i += 1) mean += y[rows[i]!]! / count
  const gram = new Float64Array(size * size)
  const against = new Float64Array(size)
  const row = new Float64Array(size)
  row[columns] = 1
  let squares = 0
  for (let i = 0; i < count; i += 1) {
    const at = rows[i]!
    for (let j = 0; j < columns; j += 1) row[j] = x[at * columns + j]!
    const value = y[at]! - mean
    squares += value * value
    for (let j = 0; j < size; j += 1) {
      const a = row[j]!
      against[j]! += a * value
      for (let k = 0; k <= j; k += 1) gram[j * size + k]! += a * row[k]!
    }
  }
  // A column that does not vary would have no inverse; this little of each does not change what is left.
  for (let j = 0; j < size; j += 1) gram[j * size + j]! += 1e-12 * count
  let taken = 0
  for (let j = 0; j < size; j += 1) {
    let pivot = gram[j * size + j]!
    let part = against[j]!
    for (let k = 0; k < j; k += 1) {
      pivot -= gram[j * size + k]! ** 2
      part -= gram[j * size + k]! * against[k]!
    }
    const root = Math.sqrt(pivot)
    gram[j * size + j] = root
    against[j] = part / root
    taken += against[j]! ** 2
    for (let i = j + 1; i < size; i += 1) {
      let below = gram[i * size + j]!
      for (let k = 0; k < j; k += 1) below -= gram[i * size + k]! * gram[j * size + k]!
      gram[i * size + j] = below / root
    }
  }
  return Math.max(0, squares - taken)
}
