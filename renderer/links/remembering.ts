import type { Link } from './link.ts'

/** A link that keeps what the host says before anyone listens, for those who then begin to listen together. */
export function remembering(link: Link): Link {
  const early: { name: string; payload: unknown }[] = []
  let stop: (() => void) | null = link.listen((name, payload) => early.push({ name, payload }))
  return {
    ...link,
    listen: hear => {
      if (stop !== null) {
        stop()
        stop = null
        queueMicrotask(() => early.splice(0))
      }
      for (const { name, payload } of early) hear(name, payload)
      return link.listen(hear)
    },
  }
}
