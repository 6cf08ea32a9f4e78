import { setTimeout as pause } from 'node:timers/promises'
import type { Marks } from './marks.ts'

/** How long somebody else may take, ms. */
const patience = 5000

/**
 * Work on the same thing, one after the other, by all Stopgaps that share the marks. After somebody else has taken too long it is done all the
 * same: what they do is then as good as hung, and each write is whole in itself.
 */
export function oneAtATime(marks: Marks) {
  const last = new Map<string, Promise<unknown>>()

  async function marked<T>(name: string, work: () => Promise<T>): Promise<T> {
    const until = Date.now() + patience
    while (!(await marks.take(name)) && Date.now() < until) await pause(20)
    try {
      return await work()
    } finally {
      await marks.drop(name)
    }
  }

  return <T>(name: string, work: () => Promise<T>): Promise<T> => {
    const before = last.get(name) ?? Promise.resolve()
    const done = before.then(() => marked(name, work))
    const settled = done.then(
      () => undefined,
      () => undefined,
    )
    last.set(name, settled)
    void settled.then(() => {
      if (last.get(name) === settled) last.delete(name)
    })
    return done
  }
}

export type OneAtATime = ReturnType<typeof oneAtATime>
