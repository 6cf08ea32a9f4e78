/** Work that must be finished before the program ends. */
export function workUnderWay() {
  const busy = new Set<Promise<unknown>>()
  return {
    tracked<Input, Output>(work: (input: Input) => Promise<Output>): (input: Input) => Promise<Output> {
      return input => {
        const done = work(input)
        const watched = done.then(
          () => undefined,
          () => undefined,
        )
        busy.add(watched)
        void watched.then(() => busy.delete(watched))
        return done
      }
    },
    /** When none is left; its failures were told to those who asked for it. */
    async settled(): Promise<void> {
      while (busy.size > 0) await Promise.all(busy)
    },
  }
}
