/** Makes something once for each object it belongs to, and gives the same ever after; it goes when the object goes. */
export function onceFor<O extends object, M>(make: (of: O) => M): (of: O) => M {
  const known = new WeakMap<O, M>()
  return of => {
    const before = known.get(of)
    if (before !== undefined) return before
    const made = make(of)
    known.set(of, made)
    return made
  }
}
