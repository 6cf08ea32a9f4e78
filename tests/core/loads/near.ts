/** How far a figure is from what is wanted, relative to the larger of the two; 0 when both are 0. */
export function off(got: number, wanted: number): number {
  const size = Math.max(Math.abs(got), Math.abs(wanted))
  return size === 0 ? 0 : Math.abs(got - wanted) / size
}
