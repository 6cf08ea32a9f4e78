/** A window that was heard of has this long to begin to listen, ms. */
const timeToListen = 5000

/** Which windows are there. A window listens as long as it is; one that was loaded just now is about to. */
export function createWindows(now: () => number = Date.now) {
  const listening = new Map<string, number>()
  const heardFirst = new Map<string, number>()
  return {
    /** A window has asked for something. */
    heard(window: string): void {
      if (!heardFirst.has(window)) heardFirst.set(window, now())
    },
    listens(window: string): void {
      heardFirst.set(window, Number.NEGATIVE_INFINITY)
      listening.set(window, (listening.get(window) ?? 0) + 1)
    },
    /** Whether it has stopped altogether. */
    stops(window: string): boolean {
      const left = (listening.get(window) ?? 1) - 1
      if (left > 0) listening.set(window, left)
      else listening.delete(window)
      return left <= 0
    },
    isHere: (window: string): boolean =>
      listening.has(window) || now() - (heardFirst.get(window) ?? Number.NEGATIVE_INFINITY) < timeToListen,
  }
}

export type Windows = ReturnType<typeof createWindows>
